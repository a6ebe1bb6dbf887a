package org.barsheet.ticks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Rect;
import org.barsheet.shooting.CameraView;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.Setup.Plate;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.shooting.Step;
import org.barsheet.text.Sha256;

/**
 * What a photograph shows, whatever it is called: model and light, what the camera sees, the flap,
 * how far it is open and how everything else stands. Two photographs of one likeness are one
 * photograph, so that a tick finds its photograph again when names and numbers have changed.
 */
final class Likeness {

  private static final int DIGITS = 12;

  private final Plan plan;
  private final Map<String, String> likenesses = new LinkedHashMap<>();

  private Likeness(Plan plan) {
    this.plan = plan;
  }

  /** Every photograph in the order of work: name to likeness. */
  static Map<String, String> of(ShootingPlan shooting, Plan plan) {
    Likeness all = new Likeness(plan);
    for (Setup setup : shooting.setups()) {
      for (Step step : setup.steps()) {
        if (step.take() instanceof Setup.Run run) {
          all.add(setup, run);
        } else {
          all.put(step.take().name(), model(setup.model()) + all.standing(step.take().standing()));
        }
      }
    }
    return all.likenesses;
  }

  private void put(String photograph, String shown) {
    likenesses.put(photograph, Sha256.hex(shown).substring(0, DIGITS));
  }

  private void add(Setup setup, Setup.Run run) {
    Opening opening = plan.workshop().opening(run.movement().openings().get(0)).orElseThrow();
    boolean artwork = setup.model().enlarged() == 1;
    Rect hole = opening.rect();
    String shown =
        model(setup.model())
            + setup.view().map(view -> artwork ? text(view.field()) : seen(view, hole)).orElse("")
            + (artwork ? text(hole) : number(hole.width()) + number(hole.height()))
            + side(opening)
            + standing(run.standing());
    Movement movement = run.movement();
    for (MovedPhotograph photograph : movement.photographs()) {
      if (!photograph.isLikeBefore()) {
        put(photograph.photograph().name(), shown + "at " + photograph.measures().set());
      }
    }
    for (Plate plate : run.plates()) {
      if (plate.kind() != Plate.Kind.CLOSED) {
        put(plate.name(), shown + plate.kind() + number(movement.measure().whole()));
      }
    }
  }

  private static String model(Artwork.Model model) {
    return number(model.enlarged()) + model.light() + "/" + model.backing() + " ";
  }

  /** What the camera sees, about the hole: a larger model stands for several openings. */
  private static String seen(CameraView view, Rect about) {
    Rect field = view.field();
    return text(
        new Rect(
            field.left() - about.left(), field.top() - about.top(), field.width(), field.height()));
  }

  private static String side(Opening opening) {
    Opening.Motion motion = opening.motion();
    if (motion instanceof Opening.Hinged hinged) {
      return "hinge " + hinged.hinge() + " ";
    }
    return motion instanceof Opening.Slides slides
        ? "slides " + slides.toward() + " "
        : motion.getClass().getSimpleName() + " ";
  }

  /** By where they lie: openings may get other names. */
  private String standing(List<Setup.Standing> standing) {
    return standing.stream()
        .map(one -> hole(one) + number(one.open()))
        .sorted()
        .collect(Collectors.joining(";", "[", "]"));
  }

  private String hole(Setup.Standing one) {
    return plan.workshop().opening(one.opening()).map(Opening::rect).map(Likeness::text).orElse("");
  }

  private static String text(Rect rect) {
    return number(rect.left()) + number(rect.top()) + number(rect.width()) + number(rect.height());
  }

  private static String number(double number) {
    return String.format(Locale.ROOT, "%.4f ", number);
  }
}
