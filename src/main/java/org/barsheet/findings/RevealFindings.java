package org.barsheet.findings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.align.PhotographRun;
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
    Set<List<Object>> told = new HashSet<>();
    for (PlannedReveal reveal : reveals) {
      Shot shot = timing.shots().get(reveal.shot());
      reveal.squeeze().ifPresent(squeeze -> addSqueezed(shot, reveal, squeeze));
      addFasterOnly(shot, reveal);
      addResampled(shot, reveal);
      addClosing(shot, reveal);
      Reveal asked = reveal.reveal();
      String tempo = tempo(barAt(reveal.landsFrame()));
      if (told.add(List.of(asked.photographs(), asked.framesPerPhotograph(), tempo))) {
        addRoomNeeded(shot, reveal);
      }
    }
    addClashes();
    return findings.worstFirst();
  }

  private void addSqueezed(Shot shot, PlannedReveal reveal, Squeeze squeeze) {
    String sentence =
        reveal.opening().name()
            + " is shown "
            + squeeze.sentence()
            + ": the music leaves too few frames; it differs from what was asked by up to "
            + off(squeeze.errorPercent(), squeeze.errorAmount(), movements.of(reveal.reveal()));
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

  /** {@code 4.1 % of the movement, 3.7 deg}. */
  private static String off(double percent, double amount, Movement movement) {
    return String.format(
        Locale.ROOT,
        "%.1f %% of the movement, %.1f %s",
        percent,
        amount,
        movement.measure().unit());
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
    double worst = 0;
    double worstAmount = 0;
    for (int step = 1; step <= asked; step++) {
      MovedPhotograph shown =
          movement.photographs().get(PhotographRun.photograph(photographed, asked, step));
      double wanted = movement.slow().progress((double) step / asked);
      double amount = movement.measure().amount(step, wanted, movement.evenIn());
      worst = Math.max(worst, Math.abs(shown.progress() - wanted));
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
            + "; it differs from what was asked by up to "
            + off(100 * worst, worstAmount, movement);
    findings.add(Severity.REMARK, Concerns.ANIMATOR, shot, sentence, "");
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
              + " closes along another curve than it opens: "
              + Prose.count(reveal.reveal().photographs(), "photograph")
              + " to take besides";
      String remedy =
          "make it slow where the opening is slow, seen backwards, to use its photographs";
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
            + " fits "
            + SqueezeWords.on(reveal.squeeze().get().framesPerPhotograph())
            + ", not "
            + SqueezeWords.on(asked.framesPerPhotograph())
            + ": "
            + Prose.count(missing, "frame")
            + (missing == 1 ? " is" : " are")
            + " missing, "
            + bars(missing, bar)
            + tempo(bar);
    String remedy = "leave it that much more music, or a slower tempo";
    findings.add(Severity.REMARK, Concerns.COMPOSER, shot, sentence, remedy);
  }

  /** {@code 1.6 bars at }. */
  private String bars(long frames, FilmBar bar) {
    BigFraction share = timing.clock().rate().startOf(frames).dividedBy(bar.length());
    String amount =
        new BigDecimal(share.getNumerator())
            .divide(new BigDecimal(share.getDenominator()), 2, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString();
    return amount + (amount.equals("1") ? " bar at " : " bars at ");
  }

  private static String tempo(FilmBar bar) {
    return bar.beatsPerMinute().setScale(1, RoundingMode.HALF_UP).toPlainString() + " bpm";
  }

  /** How many bars a reveal of this size fills at the tempo where it lands. */
  private void addRoomNeeded(Shot shot, PlannedReveal reveal) {
    long frames = PhotographRun.asAsked(reveal.reveal()).frames();
    FilmBar bar = barAt(reveal.landsFrame());
    String sentence =
        Prose.count(reveal.reveal().photographs(), "photograph")
            + " "
            + SqueezeWords.on(reveal.reveal().framesPerPhotograph())
            + " fill "
            + Prose.count(frames, "frame")
            + ", "
            + bars(frames, bar)
            + tempo(bar);
    findings.add(Severity.REMARK, Concerns.COMPOSER, shot, sentence, "");
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
              reveal.opening().name() + " has two movements at the same time",
              "let one end before the other begins, or leave one out");
        }
      }
      seen.add(reveal);
    }
  }
}
