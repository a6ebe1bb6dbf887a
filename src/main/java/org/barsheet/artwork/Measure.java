package org.barsheet.artwork;

import java.util.List;
import java.util.OptionalDouble;
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

/** How far a movement goes, in the unit a hand sets it by and at the size of its model. */
public sealed interface Measure {

  /** "deg", "mm" or "%", or the plan's own word. */
  String unit();

  /** The amount when the movement is done, in its unit. */
  double whole();

  /**
   * The amount at a photograph.
   *
   * @param photograph from 0, the model at rest
   * @param progress share of the movement done, 0 to 1
   * @param evenIn what that share is a share of
   */
  double amount(int photograph, double progress, EvenIn evenIn);

  /** Way of the free edge between two amounts in millimeters, where something has an edge. */
  OptionalDouble edgeStep(double from, double to);

  /** Height of the free edge above the table in millimeters, where it leaves the table. */
  OptionalDouble height(double amount);

  /** Share of the hole that is uncovered at an amount, seen from straight above, 0 to 1. */
  double uncovered(double amount);

  /** The measure of an opening, at the size of its model. */
  static Measure of(Opening opening, Artwork artwork) {
    double enlarged = artwork.model(opening.model()).map(Artwork.Model::enlarged).orElse(1.0);
    double square = artwork.squareMillimeters() * enlarged;
    double width = opening.rect().width() * square;
    double height = opening.rect().height() * square;
    if (opening.motion() instanceof Hinged hinged) {
      double flap = isAcross(hinged.hinge()) ? width : height;
      return new Turn(hinged.degrees(), new HingeGeometry(flap));
    }
    if (opening.motion() instanceof Slides slides) {
      double hole = isAcross(slides.toward()) ? width : height;
      return new Slide(slides.millimeters() > 0 ? slides.millimeters() : hole, hole);
    }
    if (opening.motion() instanceof LiftsOff lifts) {
      return new Lift(lifts.millimeters());
    }
    if (opening.motion() instanceof Brightens brightens) {
      return new Light(brightens.percent());
    }
    if (opening.motion() instanceof Iris iris) {
      return new Widening(width * iris.percent() / 100, width);
    }
    Values values = (Values) opening.motion();
    return new Listed(values.values(), values.unit());
  }

  private static boolean isAcross(Side side) {
    return side == Side.LEFT || side == Side.RIGHT;
  }

  /**
   * A flap on a hinge.
   *
   * @param whole how far it opens in degrees
   * @param hinge its geometry
   */
  record Turn(double whole, HingeGeometry hinge) implements Measure {
    @Override
    public String unit() {
      return "deg";
    }

    @Override
    public double amount(int photograph, double progress, EvenIn evenIn) {
      return evenIn == EvenIn.ANGLE
          ? whole * progress
          : HingeGeometry.angleAtShare(progress, whole);
    }

    @Override
    public OptionalDouble edgeStep(double from, double to) {
      return OptionalDouble.of(hinge.edgeStep(from, to));
    }

    @Override
    public OptionalDouble height(double amount) {
      return OptionalDouble.of(hinge.height(amount));
    }

    @Override
    public double uncovered(double amount) {
      return HingeGeometry.uncovered(amount);
    }
  }

  /**
   * A shutter that slides on the table.
   *
   * @param whole how far it goes in millimeters
   * @param hole size of the hole in that direction in millimeters
   */
  record Slide(double whole, double hole) implements Measure {
    @Override
    public String unit() {
      return "mm";
    }

    @Override
    public double amount(int photograph, double progress, EvenIn evenIn) {
      return whole * progress;
    }

    @Override
    public OptionalDouble edgeStep(double from, double to) {
      return OptionalDouble.of(Math.abs(to - from));
    }

    @Override
    public OptionalDouble height(double amount) {
      return OptionalDouble.empty();
    }

    @Override
    public double uncovered(double amount) {
      return Math.min(1, amount / hole);
    }
  }

  /**
   * A piece lifted straight up and then taken away: seen from straight above it covers its hole
   * until the last photograph.
   *
   * @param whole how high in millimeters
   */
  record Lift(double whole) implements Measure {
    @Override
    public String unit() {
      return "mm";
    }

    @Override
    public double amount(int photograph, double progress, EvenIn evenIn) {
      return whole * progress;
    }

    @Override
    public OptionalDouble edgeStep(double from, double to) {
      return OptionalDouble.of(Math.abs(to - from));
    }

    @Override
    public OptionalDouble height(double amount) {
      return OptionalDouble.of(amount);
    }

    @Override
    public double uncovered(double amount) {
      return amount >= whole ? 1 : 0;
    }
  }

  /**
   * A lamp that brightens; what it shows counts as uncovered by the share of its full light.
   *
   * @param whole percent of its full light when it is done
   */
  record Light(double whole) implements Measure {
    @Override
    public String unit() {
      return "%";
    }

    @Override
    public double amount(int photograph, double progress, EvenIn evenIn) {
      return whole * progress;
    }

    @Override
    public OptionalDouble edgeStep(double from, double to) {
      return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble height(double amount) {
      return OptionalDouble.empty();
    }

    @Override
    public double uncovered(double amount) {
      return amount / 100;
    }
  }

  /**
   * A hole that grows from its middle.
   *
   * @param whole its width in millimeters when the movement is done
   * @param full its full width in millimeters
   */
  record Widening(double whole, double full) implements Measure {
    @Override
    public String unit() {
      return "mm";
    }

    /** The hole's area grows with the square of its width. */
    @Override
    public double amount(int photograph, double progress, EvenIn evenIn) {
      return whole * (evenIn == EvenIn.ANGLE ? progress : StrictMath.sqrt(progress));
    }

    /** Either edge goes half of what the width grows by. */
    @Override
    public OptionalDouble edgeStep(double from, double to) {
      return OptionalDouble.of(Math.abs(to - from) / 2);
    }

    @Override
    public OptionalDouble height(double amount) {
      return OptionalDouble.empty();
    }

    @Override
    public double uncovered(double amount) {
      return Math.min(1, (amount / full) * (amount / full));
    }
  }

  /**
   * A value of its own for each photograph; what it uncovers is not known and counts as the share
   * of the largest value.
   *
   * @param values of photographs 1, 2 …; the last one stands for photographs past it
   * @param unit the plan's word
   */
  record Listed(List<Double> values, String unit) implements Measure {
    public Listed {
      values = List.copyOf(values);
    }

    @Override
    public double whole() {
      return values.get(values.size() - 1);
    }

    @Override
    public double amount(int photograph, double progress, EvenIn evenIn) {
      return photograph == 0 ? 0 : values.get(Math.min(photograph, values.size()) - 1);
    }

    @Override
    public OptionalDouble edgeStep(double from, double to) {
      return unit.equals("mm") ? OptionalDouble.of(Math.abs(to - from)) : OptionalDouble.empty();
    }

    @Override
    public OptionalDouble height(double amount) {
      return OptionalDouble.empty();
    }

    @Override
    public double uncovered(double amount) {
      double largest = values.stream().mapToDouble(Math::abs).max().orElse(0);
      return largest == 0 ? 0 : Math.abs(amount) / largest;
    }
  }
}
