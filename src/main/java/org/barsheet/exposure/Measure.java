package org.barsheet.exposure;

import java.util.List;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Brightens;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Iris;
import org.barsheet.plan.Opening.LiftsOff;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Slides;
import org.barsheet.plan.Opening.Values;
import org.barsheet.plan.Reveal.EvenIn;

/** How far a movement has gone, in the unit a hand sets it by. */
sealed interface Measure {

  /** "deg", "mm" or "%", or the plan's own word. */
  String unit();

  /**
   * The amount at a picture.
   *
   * @param picture from 0, the model at rest
   * @param progress share of the movement done, 0 to 1
   * @param evenIn what that share is a share of
   */
  double amount(int picture, double progress, EvenIn evenIn);

  /** The measure of an opening, at the size of its model. */
  static Measure of(Opening opening, Artwork artwork, double enlarged) {
    if (opening.motion() instanceof Hinged hinged) {
      return new Turn(hinged.hinge(), hinged.degrees());
    }
    if (opening.motion() instanceof Slides slides) {
      return new Straight(slide(slides, opening, artwork, enlarged), "mm");
    }
    if (opening.motion() instanceof LiftsOff lifts) {
      return new Straight(lifts.millimetres(), "mm");
    }
    if (opening.motion() instanceof Brightens brightens) {
      return new Straight(brightens.percent(), "%");
    }
    if (opening.motion() instanceof Iris iris) {
      return new Widening(iris.percent());
    }
    Values values = (Values) opening.motion();
    return new Listed(values.values(), values.unit());
  }

  private static double slide(Slides slides, Opening opening, Artwork artwork, double enlarged) {
    if (slides.millimetres() > 0) {
      return slides.millimetres();
    }
    boolean sideways = slides.towards() == Side.LEFT || slides.towards() == Side.RIGHT;
    double squares = sideways ? opening.rect().wide() : opening.rect().high();
    return squares * artwork.squareMillimetres() * enlarged;
  }

  /**
   * A flap on a hinge, seen from above.
   *
   * @param hinge the edge it turns about
   * @param degrees how far it opens
   */
  record Turn(Side hinge, double degrees) implements Measure {
    @Override
    public String unit() {
      return "deg";
    }

    /** Seen from above a flap at an angle θ uncovers 1 − cos θ of its hole (plain trigonometry). */
    @Override
    public double amount(int picture, double progress, EvenIn evenIn) {
      if (evenIn == EvenIn.ANGLE) {
        return degrees * progress;
      }
      double uncovered = 1 - StrictMath.cos(StrictMath.toRadians(degrees));
      return StrictMath.toDegrees(StrictMath.acos(1 - progress * uncovered));
    }
  }

  /**
   * A straight way, or a light.
   *
   * @param whole the amount when the movement is done
   * @param unit "mm" or "%"
   */
  record Straight(double whole, String unit) implements Measure {
    @Override
    public double amount(int picture, double progress, EvenIn evenIn) {
      return whole * progress;
    }
  }

  /**
   * A hole that grows from its middle.
   *
   * @param percent of its full width when the movement is done
   */
  record Widening(double percent) implements Measure {
    @Override
    public String unit() {
      return "%";
    }

    /** The hole's area grows with the square of its width. */
    @Override
    public double amount(int picture, double progress, EvenIn evenIn) {
      return percent * (evenIn == EvenIn.ANGLE ? progress : StrictMath.sqrt(progress));
    }
  }

  /**
   * A value of its own for each picture.
   *
   * @param values of pictures 1, 2 …; the last one stands for pictures past it
   * @param unit the plan's word
   */
  record Listed(List<Double> values, String unit) implements Measure {
    public Listed {
      values = List.copyOf(values);
    }

    @Override
    public double amount(int picture, double progress, EvenIn evenIn) {
      return picture == 0 ? 0 : values.get(Math.min(picture, values.size()) - 1);
    }
  }
}
