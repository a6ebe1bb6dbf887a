package org.barsheet.pixels;

import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * By how much an image is shifted against another one: the peak of the inverse transform of their
 * cross-power spectrum (Kuglin and Hines, The phase correlation image alignment method, 1975), to a
 * part of a pixel by a parabola through the peak and its neighbors (Tian and Huhns, Algorithms for
 * subpixel registration, 1986). {@link BlockMatch} goes on from there.
 */
public final class PhaseCorrelation {

  /** Waves weaker than this share of the mean wave are noise, and count by their strength. */
  private static final double WEAK = 0.02;

  private static final double TINY = 1e-9;

  /**
   * A shift.
   *
   * @param across pixels to the right
   * @param down pixels down
   * @param strength of the peak, 0 to 1; 1 where the images are the same but for the shift
   */
  public record Shift(double across, double down, double strength) {}

  private PhaseCorrelation() {}

  /**
   * How far {@code other} is shifted against {@code one}.
   *
   * @param one its width and height are powers of two
   * @param other of the same size
   */
  public static Shift shift(Plane one, Plane other) {
    int width = one.width();
    int height = one.height();
    double[][][] first = spectrum(one);
    double[][][] second = spectrum(other);
    double weak = WEAK * mean(first, second);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double real = second[y][0][x] * first[y][0][x] + second[y][1][x] * first[y][1][x];
        double imaginary = second[y][1][x] * first[y][0][x] - second[y][0][x] * first[y][1][x];
        double size = Math.hypot(real, imaginary) + weak + TINY;
        first[y][0][x] = real / size;
        first[y][1][x] = imaginary / size;
      }
    }
    transform(first, TransformType.INVERSE);
    return peak(first, width, height);
  }

  private static double mean(double[][][] first, double[][][] second) {
    double sum = 0;
    for (int y = 0; y < first.length; y++) {
      for (int x = 0; x < first[y][0].length; x++) {
        sum +=
            Math.hypot(first[y][0][x], first[y][1][x])
                * Math.hypot(second[y][0][x], second[y][1][x]);
      }
    }
    return sum / ((double) first.length * first[0][0].length);
  }

  private static Shift peak(double[][][] surface, int width, int height) {
    int bestX = 0;
    int bestY = 0;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        if (surface[y][0][x] > surface[bestY][0][bestX]) {
          bestX = x;
          bestY = y;
        }
      }
    }
    double top = surface[bestY][0][bestX];
    double across =
        part(
            surface[bestY][0][Math.floorMod(bestX - 1, width)],
            top,
            surface[bestY][0][(bestX + 1) % width]);
    double down =
        part(
            surface[Math.floorMod(bestY - 1, height)][0][bestX],
            top,
            surface[(bestY + 1) % height][0][bestX]);
    return new Shift(
        signed(bestX, width) + across, signed(bestY, height) + down, Math.min(1, Math.max(0, top)));
  }

  private static int signed(int index, int size) {
    return index > size / 2 ? index - size : index;
  }

  /** Where the parabola through three values has its top. */
  private static double part(double before, double top, double after) {
    double bend = 2 * top - before - after;
    return bend <= 0 ? 0 : Math.max(-0.5, Math.min(0.5, (after - before) / (2 * bend)));
  }

  /** Rows of real and imaginary parts, of the image without its mean and faded to its edges. */
  private static double[][][] spectrum(Plane plane) {
    double mean = plane.mean();
    double[][][] rows = new double[plane.height()][2][plane.width()];
    for (int y = 0; y < plane.height(); y++) {
      double fadeDown = hann(y, plane.height());
      for (int x = 0; x < plane.width(); x++) {
        rows[y][0][x] = (plane.at(x, y) - mean) * fadeDown * hann(x, plane.width());
      }
    }
    transform(rows, TransformType.FORWARD);
    return rows;
  }

  private static double hann(int index, int size) {
    return 0.5 - 0.5 * Math.cos(2 * Math.PI * (index + 0.5) / size);
  }

  private static void transform(double[][][] rows, TransformType type) {
    for (double[][] row : rows) {
      FastFourierTransformer.transformInPlace(row, DftNormalization.STANDARD, type);
    }
    int height = rows.length;
    double[][] column = new double[2][height];
    for (int x = 0; x < rows[0][0].length; x++) {
      for (int y = 0; y < height; y++) {
        column[0][y] = rows[y][0][x];
        column[1][y] = rows[y][1][x];
      }
      FastFourierTransformer.transformInPlace(column, DftNormalization.STANDARD, type);
      for (int y = 0; y < height; y++) {
        rows[y][0][x] = column[0][y];
        rows[y][1][x] = column[1][y];
      }
    }
  }
}
