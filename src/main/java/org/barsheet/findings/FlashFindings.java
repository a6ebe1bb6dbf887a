package org.barsheet.findings;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.barsheet.artwork.FrameRect;
import org.barsheet.artwork.Framing;
import org.barsheet.cues.MusicRuler;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.findings.FlashRule.Change;
import org.barsheet.findings.FlashRule.Stretch;
import org.barsheet.findings.FlashRule.Verdict;
import org.barsheet.input.Prose;
import org.barsheet.plan.Film;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** Openings, closings and lamps of the whole film against the published limit for flashes. */
public final class FlashFindings {

  private static final String ANALYZE =
      "have the finished film tested; brightness isn't known here";

  private final TimingSheet timing;
  private final Film film;
  private final MusicRuler ruler;
  private final List<Change> changes;
  private final Findings findings = new Findings();

  public FlashFindings(TimingSheet timing, MusicRuler ruler, List<PlannedReveal> reveals) {
    this.timing = timing;
    this.film = timing.plan().film();
    this.ruler = ruler;
    this.changes =
        reveals.stream()
            .flatMap(this::changes)
            .sorted(Comparator.comparingLong(Change::frame).thenComparing(Change::part))
            .toList();
  }

  /** A finding for each stretch that comes too fast; else one that says how fast the film is. */
  public List<Finding> all() {
    FlashRule rule = new FlashRule(changes, film.rate());
    List<Stretch> stretches = rule.stretches();
    stretches.forEach(this::add);
    if (stretches.isEmpty() && rule.most() > 1) {
      String sentence =
          "no second has more than "
              + rule.most()
              + " openings or closings (lamps count); four of either would reach the limit of three"
              + " flashes a second (WCAG 2.3.1)";
      findings.add(Severity.REMARK, Concerns.DIRECTOR, "", sentence, ANALYZE);
    }
    return findings.worstFirst();
  }

  /** Every stretch that comes too fast. */
  List<Stretch> stretches() {
    return new FlashRule(changes, film.rate()).stretches();
  }

  /** Every frame on which a reveal begins to open or to close. */
  private Stream<Change> changes(PlannedReveal reveal) {
    Shot shot = timing.shots().get(reveal.shot());
    Optional<Framing> framing = Framing.of(timing, shot);
    return Arrays.stream(Way.values())
        .flatMap(
            way -> reveal.turns(way).stream().map(frame -> change(reveal, way, frame, framing)));
  }

  private Change change(PlannedReveal reveal, Way way, long frame, Optional<Framing> framing) {
    double area =
        framing
            .map(seen -> seen.inFrame(reveal.opening().rect(), frame))
            .map(this::share)
            .orElse(1.0);
    return new Change(frame, way == Way.OPENS, reveal.opening().name(), area);
  }

  private double share(FrameRect rect) {
    FrameRect seen = rect.within(film.width(), film.height());
    return seen.width() * seen.height() / ((double) film.width() * film.height());
  }

  private void add(Stretch stretch) {
    boolean over = stretch.verdict() == Verdict.OVER;
    boolean warns = over && !stretch.isSmall();
    findings.add(
        new Finding(
            warns ? Severity.WARNING : Severity.REMARK,
            Concerns.DIRECTOR,
            panelAt(stretch.worstFrame()),
            ruler.locateFrame(stretch.worstFrame()).toString(),
            OptionalLong.of(stretch.worstFrame()),
            sentence(stretch, over),
            "spread them; " + ANALYZE));
  }

  private static String sentence(Stretch stretch, boolean over) {
    String area = String.format(Locale.ROOT, "%.1f %%", 100 * stretch.worstArea());
    String limit = String.format(Locale.ROOT, "%.1f %%", 100 * FlashRule.SMALL_AREA);
    return counted(stretch)
        + " in "
        + Prose.count(stretch.lastFrame() - stretch.firstFrame(), "frame")
        + ", "
        + stretch.worstCount()
        + (over ? " in less than a second: more than" : " in a second: at the limit of")
        + " three flashes a second (WCAG 2.3.1); they cover up to "
        + area
        + " of the frame, "
        + (stretch.isSmall() ? "less" : "more")
        + " than the "
        + limit
        + " where faster flashing is allowed";
  }

  private static String counted(Stretch stretch) {
    String brighter = Prose.count(stretch.brighter(), "opening");
    String darker = Prose.count(stretch.darker(), "closing");
    return stretch.darker() == 0
        ? brighter
        : stretch.brighter() == 0 ? darker : brighter + " and " + darker;
  }

  private String panelAt(long frame) {
    return timing.shotAt(frame).map(shot -> shot.panel().name()).orElse("");
  }
}
