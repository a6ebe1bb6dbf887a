package org.barsheet.findings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.align.places.PhotographRun;
import org.barsheet.cues.FilmBar;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.exposure.Movements;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.exposure.PlannedReveal.Squeeze;
import org.barsheet.exposure.SqueezeWords;
import org.barsheet.input.Prose;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/**
 * What is doubtful about single reveals: squeezed ones, shared photographs, and the room they need.
 */
public final class RevealFindings {

  private final TimingSheet timing;
  private final Movements movements;
  private final List<PlannedReveal> reveals;
  private final Findings findings = new Findings();

  public RevealFindings(TimingSheet timing, Movements movements, List<PlannedReveal> reveals) {
    this.timing = timing;
    this.movements = movements;
    this.reveals = reveals;
  }

  /** All of them, worst first. */
  public List<Finding> all() {
    for (PlannedReveal reveal : reveals) {
      Shot shot = timing.shots().get(reveal.shot());
      reveal.squeeze().ifPresent(squeeze -> addSqueezed(shot, reveal, squeeze));
      addFasterOnly(shot, reveal);
      addResampled(shot, reveal);
      addClosing(shot, reveal);
    }
    addClashes();
    return findings.worstFirst();
  }

  private void addSqueezed(Shot shot, PlannedReveal reveal, Squeeze squeeze) {
    String sentence =
        reveal.opening().name()
            + " runs "
            + squeeze.sentence()
            + ": too few frames; at worst "
            + off(squeeze.errorAmount(), movements.of(reveal.reveal()));
    boolean early = missingBefore(shot, reveal) > 0;
    boolean late = missingAfter(shot, reveal) > 0;
    String remedy =
        (early ? "cut earlier, " : "")
            + (late ? "move the next panel, " : "")
            + (early == late ? "land elsewhere, " : "")
            + "or ask for fewer photographs";
    findings.add(Severity.WARNING, Concerns.ANIMATOR, shot, sentence, remedy);
  }

  /** Frames that the photographs as asked would begin before the cut; 0 or less if they fit. */
  private static long missingBefore(Shot shot, PlannedReveal reveal) {
    long before = PhotographRun.asAsked(reveal.reveal()).before();
    return shot.frames().start() - (reveal.landsFrame() - before);
  }

  /** Frames that the photographs as asked would end after the shot; 0 or less if they fit. */
  private static long missingAfter(Shot shot, PlannedReveal reveal) {
    long from = PhotographRun.asAsked(reveal.reveal()).from();
    return reveal.landsFrame() + from - shot.frames().endExclusive();
  }

  /** {@code 3.7° off the plan}, {@code 12.0 mm off the plan}. */
  private static String off(double amount, Movement movement) {
    String unit = movement.measure().unit();
    String sign = unit.equals("deg") ? "°" : " " + unit;
    return String.format(Locale.ROOT, "%.1f", amount) + sign + " off the plan";
  }

  /**
   * A movement is photographed once, at its longest; shorter reveals show some of its photographs.
   */
  private void addResampled(Shot shot, PlannedReveal reveal) {
    Movement movement = movements.of(reveal.reveal());
    int photographed = movement.photographs().size() - 1;
    int asked = reveal.reveal().photographs();
    if (photographed == asked) {
      return;
    }
    double worstAmount = 0;
    for (int step = 1; step <= asked; step++) {
      MovedPhotograph shown =
          movement.photographs().get(PhotographRun.photograph(photographed, asked, step));
      double wanted = movement.slow().progress((double) step / asked);
      double amount = movement.measure().amount(step, wanted, movement.evenIn());
      worstAmount = Math.max(worstAmount, Math.abs(shown.measures().amount() - amount));
    }
    String sentence =
        reveal.opening().name()
            + " shows "
            + asked
            + " of the "
            + photographed
            + " photographs of "
            + movement.name()
            + ", at worst "
            + off(worstAmount, movement);
    findings.add(Severity.REMARK, Concerns.ANIMATOR, shot, sentence, "");
    findings.alike(
        "reveals show only some of their movement's photographs",
        reveal.opening().name() + " in panel " + shot.panel().name());
  }

  private void addClosing(Shot shot, PlannedReveal reveal) {
    boolean closes = reveal.reveal().way() == Way.CLOSES;
    boolean shared =
        reveals.stream()
            .anyMatch(
                other ->
                    other.movement().equals(reveal.movement())
                        && other.reveal().way() == Way.OPENS);
    if (closes && !shared) {
      String sentence =
          reveal.opening().name()
              + " closes on a different curve than it opens: "
              + Prose.count(reveal.reveal().photographs(), "more photograph")
              + " to take";
      String remedy = "mirror the opening's slow setting to reuse its photographs";
      findings.add(Severity.REMARK, Concerns.ANIMATOR, shot, sentence, remedy);
    }
  }

  /** A reveal that would fit only with its photographs shown for fewer frames: what is missing. */
  private void addFasterOnly(Shot shot, PlannedReveal reveal) {
    PhotographRun asked = PhotographRun.asAsked(reveal.reveal());
    boolean faster =
        reveal.squeeze().filter(squeeze -> squeeze.photographs() == asked.shown()).isPresent();
    if (!faster || reveal.reveal().landsOn() instanceof Reveal.OnNotes) {
      return;
    }
    long missing =
        Math.max(0, missingBefore(shot, reveal)) + Math.max(0, missingAfter(shot, reveal));
    FilmBar bar = barAt(reveal.landsFrame());
    String sentence =
        reveal.opening().name()
            + " needs "
            + Prose.count(missing, "more frame")
            + " ("
            + bars(missing, bar)
            + ") to run "
            + SqueezeWords.on(asked.framesPerPhotograph());
    String remedy = "give it more music, or a slower tempo";
    findings.add(Severity.REMARK, Concerns.COMPOSER, shot, sentence, remedy);
  }

  /** {@code 0.32 bar}, {@code 1.6 bars}. */
  private String bars(long frames, FilmBar bar) {
    BigFraction share = timing.clock().rate().startOf(frames).dividedBy(bar.length());
    String amount =
        new BigDecimal(share.getNumerator())
            .divide(new BigDecimal(share.getDenominator()), 2, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString();
    return amount + (share.compareTo(BigFraction.ONE) > 0 ? " bars" : " bar");
  }

  private FilmBar barAt(long frame) {
    FilmBar found = timing.bars().get(0);
    for (FilmBar bar : timing.bars()) {
      if (bar.startFrame() <= frame) {
        found = bar;
      }
    }
    return found;
  }

  /** One opening cannot move in two ways at once. */
  private void addClashes() {
    List<PlannedReveal> seen = new ArrayList<>();
    for (PlannedReveal reveal : reveals) {
      for (PlannedReveal other : seen) {
        boolean same =
            other.shot() == reveal.shot()
                && other.opening().name().equals(reveal.opening().name())
                && other.layer() != reveal.layer();
        if (same) {
          findings.add(
              Severity.ERROR,
              Concerns.ANIMATOR,
              timing.shots().get(reveal.shot()),
              reveal.opening().name() + " has two movements at once",
              "end one before the other begins, or drop one");
        }
      }
      seen.add(reveal);
    }
  }
}
