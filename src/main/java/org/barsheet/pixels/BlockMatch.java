package org.barsheet.pixels;

import java.util.Optional;

/**
 * One block of a first photograph, found again in others to a small part of a pixel by least
 * squares of gray levels (Lucas and Kanade, An iterative image registration technique, 1981; the
 * gradients are the first block's, as Baker and Matthews put it in 2004). A change of light makes
 * no difference: levels are compared after their mean and their spread.
 */
final class BlockMatch {

  private static final int ROUNDS = 14;
  private static final double SETTLED = 0.003;

  /** Farther than this from where it was looked for, in pixels, it is not followed. */
  private static final double REACH = 4;

  /** Less alike than this, it is something else: a hand, a cable. */
  private static final double ALIKE = 0.6;

  private static final int FRAME = 6;

  private final int left;
  private final int top;
  private final Plane first;
  private final double mean;
  private final double spread;
  private final double xx;
  private final double xy;
  private final double yy;

  /** Where a block lies and how far it is shifted, all in pixels. */
  record Found(double x, double y, double across, double down) {}

  BlockMatch(ColorImage image, int left, int top, int size) {
    this.left = left;
    this.top = top;
    this.first = image.luma(left, top, size, size);
    this.mean = first.mean();
    double squares = 0;
    double sumXx = 0;
    double sumXy = 0;
    double sumYy = 0;
    for (int y = 1; y < size - 1; y++) {
      for (int x = 1; x < size - 1; x++) {
        double level = first.at(x, y) - mean;
        squares += level * level;
        sumXx += gradientX(x, y) * gradientX(x, y);
        sumXy += gradientX(x, y) * gradientY(x, y);
        sumYy += gradientY(x, y) * gradientY(x, y);
      }
    }
    this.spread = Math.sqrt(squares);
    this.xx = sumXx;
    this.xy = sumXy;
    this.yy = sumYy;
  }

  private double gradientX(int x, int y) {
    return (first.at(x + 1, y) - first.at(x - 1, y)) / 2;
  }

  private double gradientY(int x, int y) {
    return (first.at(x, y + 1) - first.at(x, y - 1)) / 2;
  }

  /** How well it can be placed in its weaker direction: the smaller eigenvalue, for each pixel. */
  double texture() {
    double middle = (xx + yy) / 2;
    double apart = Math.hypot((xx - yy) / 2, xy);
    return (middle - apart) / ((double) first.width() * first.height());
  }

  double middleX() {
    return left + first.width() / 2.0;
  }

  double middleY() {
    return top + first.height() / 2.0;
  }

  /**
   * Energy of its detail: the mean square of the second differences, over the mean level squared.
   */
  static double detail(Plane block) {
    double sum = 0;
    for (int y = 1; y < block.height() - 1; y++) {
      for (int x = 1; x < block.width() - 1; x++) {
        double second =
            4 * block.at(x, y)
                - block.at(x - 1, y)
                - block.at(x + 1, y)
                - block.at(x, y - 1)
                - block.at(x, y + 1);
        sum += second * second;
      }
    }
    double mean = Math.max(1, block.mean());
    return sum / ((block.width() - 2.0) * (block.height() - 2.0)) / (mean * mean);
  }

  /** Its detail in the first photograph. */
  double detail() {
    return detail(first);
  }

  /** Its detail in another photograph, where it was found there. */
  double detailIn(ColorImage image, Found found) {
    return detail(
        image.luma(
            left + (int) Math.round(found.across()),
            top + (int) Math.round(found.down()),
            first.width(),
            first.height()));
  }

  /**
   * Finds it in another photograph.
   *
   * @param across pixels it is expected to be further to the right
   * @param down pixels it is expected to be further down
   */
  Optional<Found> find(ColorImage image, double across, double down) {
    int size = first.width();
    int fromX = left + (int) Math.round(across) - FRAME;
    int fromY = top + (int) Math.round(down) - FRAME;
    Plane there = image.luma(fromX, fromY, size + 2 * FRAME, size + 2 * FRAME);
    double x = across;
    double y = down;
    double alike = 0;
    for (int round = 0; round < ROUNDS; round++) {
      Step step = step(there, left + x - fromX, top + y - fromY);
      x -= step.across();
      y -= step.down();
      alike = step.alike();
      if (Math.hypot(x - across, y - down) > REACH) {
        return Optional.empty();
      }
      if (Math.hypot(step.across(), step.down()) < SETTLED) {
        break;
      }
    }
    return alike < ALIKE ? Optional.empty() : Optional.of(new Found(middleX(), middleY(), x, y));
  }

  /** By how much it is shifted against its place moved by whole pixels. */
  PhaseCorrelation.Shift roughly(ColorImage image, double across, double down) {
    int size = first.width();
    return PhaseCorrelation.shift(
        first,
        image.luma(left + (int) Math.round(across), top + (int) Math.round(down), size, size));
  }

  private record Step(double across, double down, double alike) {}

  private Step step(Plane there, double offsetX, double offsetY) {
    int size = first.width();
    float[] shifted = Interpolation.shifted(there, offsetX, offsetY, size);
    double sum = 0;
    int count = 0;
    for (int y = 1; y < size - 1; y++) {
      for (int x = 1; x < size - 1; x++) {
        sum += shifted[y * size + x];
        count++;
      }
    }
    double otherMean = sum / count;
    double squares = 0;
    double product = 0;
    double byX = 0;
    double byY = 0;
    double firstByX = 0;
    double firstByY = 0;
    for (int y = 1; y < size - 1; y++) {
      for (int x = 1; x < size - 1; x++) {
        double level = shifted[y * size + x] - otherMean;
        double own = first.at(x, y) - mean;
        squares += level * level;
        product += level * own;
        byX += gradientX(x, y) * level;
        byY += gradientY(x, y) * level;
        firstByX += gradientX(x, y) * own;
        firstByY += gradientY(x, y) * own;
      }
    }
    double gain = squares > 0 ? product / squares : 1;
    double ex = gain * byX - firstByX;
    double ey = gain * byY - firstByY;
    double det = xx * yy - xy * xy;
    if (!(det > 0)) {
      return new Step(0, 0, 0);
    }
    return new Step(
        (yy * ex - xy * ey) / det,
        (xx * ey - xy * ex) / det,
        squares > 0 ? product / (Math.sqrt(squares) * spread) : 0);
  }
}
