package org.barsheet.findings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.barsheet.artwork.FrameRect;
import org.barsheet.artwork.Framing;
import org.barsheet.artwork.Measure;
import org.barsheet.artwork.Optics;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Film;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Rect;
import org.barsheet.shooting.CameraView;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** Reveals that the camera sees badly: cut off, tiny, blown up, or looming toward the lens. */
public final class RevealFramingFindings {

  /** An opening whose shorter side is less of the frame's height than this is hard to see. */
  private static final double TINY = 0.05;

  /** A tip that looks larger than the flap by more than this share is told. */
  private static final double LOOMS = 0.1;

  /** Room for the rounding of binary fractions. */
  private static final double ROUNDING = 1e-9;

  private final TimingSheet timing;
  private final Plan plan;
  private final Film film;
  private final List<PlannedReveal> reveals;
  private final ShootingPlan shooting;
  private final Findings findings = new Findings();

  public RevealFramingFindings(
      TimingSheet timing, List<PlannedReveal> reveals, ShootingPlan shooting) {
    this.timing = timing;
    this.plan = timing.plan();
    this.film = plan.film();
    this.reveals = reveals;
    this.shooting = shooting;
  }

  /** All of them, worst first. */
  public List<Finding> all() {
    for (PlannedReveal reveal : reveals) {
      Shot shot = timing.shots().get(reveal.shot());
      Framing.of(timing, shot).ifPresent(framing -> add(reveal, shot, framing));
    }
    for (Setup setup : shooting.setups()) {
      setup.view().ifPresent(view -> addView(setup, view));
    }
    return findings.worstFirst();
  }

  private void add(PlannedReveal reveal, Shot shot, Framing framing) {
    Rect rect = reveal.opening().rect();
    double share = 1;
    double most = 0;
    double shorter = Double.POSITIVE_INFINITY;
    for (long frame = reveal.firstGapFrame(); frame <= reveal.fullyOpenFrame(); frame++) {
      FrameRect seen = framing.inFrame(rect, frame);
      double here = seen.shareWithin(film.width(), film.height());
      share = Math.min(share, here);
      most = Math.max(most, here);
      shorter = Math.min(shorter, Math.min(seen.width(), seen.height()));
    }
    String name = reveal.opening().name();
    if (share < 1 - ROUNDING) {
      addCut(shot, name, share, most);
    }
    if (shorter < TINY * film.height()) {
      String sentence =
          name + " is only " + Math.round(shorter) + " pixels across as it moves: hard to see";
      findings.add(Severity.REMARK, Concerns.DIRECTOR, shot, sentence, "use a narrower field");
    }
  }

  private void addCut(Shot shot, String name, double least, double most) {
    String sentence =
        most == 0
            ? name + " moves outside the frame"
            : least == 0
                ? name + " goes out of the frame as it moves"
                : "the frame cuts off part of "
                    + name
                    + " as it moves: "
                    + percent(least)
                    + " is seen";
    findings.add(
        least == 0 ? Severity.WARNING : Severity.REMARK,
        Concerns.DIRECTOR,
        shot,
        sentence,
        "move or widen the field of panel " + shot.panel().name());
  }

  private void addView(Setup setup, CameraView view) {
    double enlargement = view.enlargement().orElse(0);
    if (enlargement > 1 + ROUNDING) {
      findings.add(
          Severity.WARNING,
          Concerns.ANIMATOR,
          "",
          "setup "
              + setup.number()
              + ", "
              + setup.name()
              + ": its narrowest panel enlarges the camera's photograph to "
              + percent(enlargement),
          "take those photographs from closer, or with a camera that has more pixels");
    }
    Optional<Optics> optics = plan.workshop().camera().map(camera -> new Optics(camera, film));
    optics.ifPresent(o -> setup.runs().forEach(run -> addLooming(run, view, o)));
  }

  /** A flap comes nearer to the lens as it rises; one that would meet it is told elsewhere. */
  private void addLooming(Setup.Run run, CameraView view, Optics optics) {
    double height = run.movement().highest();
    boolean turns = run.movement().measure() instanceof Measure.Turn;
    if (!turns || height >= optics.distance(view.millimetersWide())) {
      return;
    }
    double larger = optics.looming(view.millimetersWide(), height) - 1;
    if (larger > LOOMS) {
      findings.add(
          Severity.REMARK,
          Concerns.ANIMATOR,
          run.movement().openings().get(0),
          "when fully raised, "
              + run.movement().name()
              + "'s edge looks "
              + percent(larger)
              + " larger than its hinge (estimate)",
          "a longer lens reduces this");
      findings.alike(
          "flaps look larger at the edge than at the hinge when fully raised (estimate)",
          run.movement().name() + " by " + percent(larger));
    }
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }
}
