package org.barsheet.artwork;

/**
 * A flap on a hinge, lying on the table at 0 degrees. All of it is plain trigonometry.
 *
 * @param flap from the hinge to the free edge in millimeters, more than 0
 */
public record HingeGeometry(double flap) {

  public HingeGeometry {
    if (!(flap > 0)) {
      throw new IllegalArgumentException("a flap has a length");
    }
  }

  /** Straight way of the free edge from one angle to another, in millimeters: 2·w·sin(Δθ/2). */
  public double edgeStep(double fromDegrees, double toDegrees) {
    double half = StrictMath.toRadians(Math.abs(toDegrees - fromDegrees)) / 2;
    return 2 * flap * StrictMath.sin(half);
  }

  /** Height of the free edge above the table in millimeters: w·sin θ. */
  public double height(double degrees) {
    return flap * StrictMath.sin(StrictMath.toRadians(degrees));
  }

  /**
   * How far a thread tied to the free edge has been pulled in through its guide, in millimeters:
   * L(0) − L(θ), where L = √((w·cos θ)² + (w·sin θ − b)²). It shrinks again past 90 degrees.
   *
   * @param guide height of the guide straight above the hinge in millimeters, b
   */
  public double pull(double degrees, double guide) {
    return threadLength(0, guide) - threadLength(degrees, guide);
  }

  private double threadLength(double degrees, double guide) {
    double angle = StrictMath.toRadians(degrees);
    double across = flap * StrictMath.cos(angle);
    double above = flap * StrictMath.sin(angle) - guide;
    return StrictMath.sqrt(across * across + above * above);
  }

  /**
   * Share of the hole uncovered, seen from straight above: 1 − cos θ, all of it from 90 degrees.
   */
  public static double uncovered(double degrees) {
    return Math.min(1, 1 - StrictMath.cos(StrictMath.toRadians(degrees)));
  }

  /**
   * The angle at which a share of the free edge's way has been gone, seen from straight above.
   *
   * @param share 0 to 1
   * @param lastDegrees the angle at which all of it has been gone, up to 180
   */
  public static double angleAtShare(double share, double lastDegrees) {
    double way = 1 - StrictMath.cos(StrictMath.toRadians(lastDegrees));
    return StrictMath.toDegrees(StrictMath.acos(1 - share * way));
  }
}
