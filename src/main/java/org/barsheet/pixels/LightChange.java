package org.barsheet.pixels;

/**
 * How much brighter and of which color the still parts of a photograph are than in a first one.
 *
 * @param isKnown whether enough of them could be compared
 * @param stops brighter; 1 is twice the light, −1 half of it
 * @param redder stops by which red changed more than green
 * @param bluer stops by which blue changed more than green
 * @param level of the still parts in the middle, 0 to 255
 */
public record LightChange(
    boolean isKnown, double stops, double redder, double bluer, double level) {

  public static final LightChange NONE = new LightChange(false, 0, 0, 0, 0);

  /** What so many stops are in 8-bit levels, at the level of the still parts. */
  public double levels(double moreStops) {
    double linear = Reduced.linear((int) Math.round(level));
    return Reduced.level(linear * Math.pow(2, moreStops)) - level;
  }
}
