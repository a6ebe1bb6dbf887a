package org.barsheet.findings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.barsheet.artwork.Framing;
import org.barsheet.artwork.Measure;
import org.barsheet.artwork.Optics;
import org.barsheet.artwork.PictureRect;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Film;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Rect;
import org.barsheet.shooting.CameraView;
import org.barsheet.shooting.SetUp;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** Reveals that the camera sees badly: cut off, tiny, blown up, or looming towards the lens. */
public final class RevealFramingFindings {

  /** An opening whose shorter side is less of the picture's height than this is hard to see. */
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
    for (SetUp setUp : shooting.setUps()) {
      setUp.view().ifPresent(view -> addView(setUp, view));
    }
    return findings.worstFirst();
  }

  private void add(PlannedReveal reveal, Shot shot, Framing framing) {
    Rect rect = reveal.opening().rect();
    double share = 1;
    double most = 0;
    double shorter = Double.POSITIVE_INFINITY;
    for (long frame = reveal.firstGapFrame(); frame <= reveal.fullyOpenFrame(); frame++) {
      PictureRect seen = framing.inPicture(rect, frame);
      double here = seen.shareWithin(film.width(), film.height());
      share = Math.min(share, here);
      most = Math.max(most, here);
      shorter = Math.min(shorter, Math.min(seen.wide(), seen.high()));
    }
    String name = reveal.opening().name();
    if (share < 1 - ROUNDING) {
      addCut(shot, name, share, most);
    }
    if (shorter < TINY * film.height()) {
      String sentence =
          name
              + " is only "
              + Math.round(shorter)
              + " pixels of the picture across as it moves: hard to see";
      findings.add(Severity.NOTE, Concerns.DIRECTOR, shot, sentence, "take a narrower field");
    }
  }

  private void addCut(Shot shot, String name, double least, double most) {
    String sentence =
        most == 0
            ? name + " moves outside the picture"
            : least == 0
                ? name + " goes out of the picture as it moves"
                : "the picture cuts off part of "
                    + name
                    + " as it moves: "
                    + percent(least)
                    + " is seen";
    findings.add(
        least == 0 ? Severity.WARNING : Severity.NOTE,
        Concerns.DIRECTOR,
        shot,
        sentence,
        "move or widen the field of panel " + shot.panel().name());
  }

  private void addView(SetUp setUp, CameraView view) {
    double enlargement = view.enlargement().orElse(0);
    if (enlargement > 1 + ROUNDING) {
      findings.add(
          Severity.WARNING,
          Concerns.ANIMATOR,
          "",
          "set-up "
              + setUp.number()
              + ", "
              + setUp.name()
              + ": its narrowest panel blows the camera's picture up to "
              + percent(enlargement),
          "take those pictures from nearer, or with a camera of more pixels");
    }
    Optional<Optics> optics = plan.workshop().camera().map(camera -> new Optics(camera, film));
    optics.ifPresent(o -> setUp.runs().forEach(run -> addLooming(run, view, o)));
  }

  /** A flap comes nearer to the lens as it rises; one that would meet it is told elsewhere. */
  private void addLooming(SetUp.Run run, CameraView view, Optics optics) {
    double height = run.movement().highest();
    boolean turns = run.movement().measure() instanceof Measure.Turn;
    if (!turns || height >= optics.distance(view.millimetresWide())) {
      return;
    }
    double larger = optics.looming(view.millimetresWide(), height) - 1;
    if (larger > LOOMS) {
      findings.add(
          Severity.NOTE,
          Concerns.ANIMATOR,
          run.movement().openings().get(0),
          run.movement().name()
              + " looms: at its highest its free edge looks "
              + percent(larger)
              + " larger than its hinge (thin lens, nominal)",
          "a longer lens from further away makes it less");
    }
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }
}
