package org.barsheet.movie;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import org.barsheet.clock.FrameRate;

/**
 * Measures how a movie flashes, as WCAG 2.2 defines it (2.3.1 and the general and red flash
 * thresholds). A general flash is a pair of opposing changes of relative luminance of 10 % of the
 * maximum or more, the darker state below 0.80; a red flash a pair of opposing changes of (R − G −
 * B) × 320 by more than 20 with a saturated red, R / (R + G + B) of 0.8 or more, in one of the
 * states. No more than three may fall into a second where more than a quarter of a field of 10°
 * flashes: 341 by 256 pixels of 1024 by 768, a third of the frame's width and height. The movie is
 * measured in a grid of 48 by 27 parts, each by the mean of its pixels.
 *
 * <p>Parts that flash within one second are counted together wherever they lie in such a field. It
 * warns and never certifies: screens, rooms and eyes differ.
 */
final class FlashMeter {

  static final int COLUMNS = 48;
  static final int ROWS = 27;

  /** Flashes that may fall into a second. */
  static final int ALLOWED = 3;

  private static final double GENERAL = 0.1;
  private static final double DARK = 0.8;
  private static final double RED = 20.0 / 320;
  private static final double SATURATED = 0.8;

  /** A field of 10°, in parts of the grid, and how much of it may flash. */
  private static final int FIELD_COLUMNS = COLUMNS / 3;

  private static final int FIELD_ROWS = ROWS / 3;
  private static final double FLASHING = 0.25;

  private static final float[] LINEAR = linear();

  private final FrameRate rate;
  private final ChangeCounter[] general = new ChangeCounter[COLUMNS * ROWS];
  private final ChangeCounter[] red = new ChangeCounter[COLUMNS * ROWS];
  private FlashVerdict worst = FlashVerdict.CALM;

  FlashMeter(FrameRate rate) {
    this.rate = rate;
    for (int i = 0; i < general.length; i++) {
      general[i] = new ChangeCounter(GENERAL);
      red[i] = new ChangeCounter(RED);
    }
  }

  /** The value of a color in light (IEC 61966-2-1, as WCAG's relative luminance takes it). */
  private static float[] linear() {
    float[] linear = new float[256];
    for (int i = 0; i < linear.length; i++) {
      double share = i / 255.0;
      linear[i] =
          (float) (share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4));
    }
    return linear;
  }

  /**
   * Looks at the next frame.
   *
   * @param image of which the image is the upper part
   * @param height of the image in pixels
   */
  void look(BufferedImage image, int height, long frame) {
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        part(pixels, image.getWidth(), height, row, column, frame);
      }
    }
    judge(frame);
  }

  private void part(int[] pixels, int width, int height, int row, int column, long frame) {
    int left = column * width / COLUMNS;
    int right = Math.max(left + 1, (column + 1) * width / COLUMNS);
    int top = row * height / ROWS;
    int bottom = Math.max(top + 1, (row + 1) * height / ROWS);
    int across = Math.max(1, (right - left) / 5);
    int down = Math.max(1, (bottom - top) / 5);
    float r = 0;
    float g = 0;
    float b = 0;
    int count = 0;
    for (int y = top; y < bottom; y += down) {
      for (int x = left; x < right; x += across) {
        int pixel = pixels[y * width + x];
        r += LINEAR[pixel >> 16 & 0xFF];
        g += LINEAR[pixel >> 8 & 0xFF];
        b += LINEAR[pixel & 0xFF];
        count++;
      }
    }
    r /= count;
    g /= count;
    b /= count;
    int at = row * COLUMNS + column;
    general[at].look(0.2126 * r + 0.7152 * g + 0.0722 * b, DARK, frame);
    red[at].look(Math.max(0, r - g - b), redLimit(r, g, b), frame);
  }

  /**
   * A change of red counts where one of its states is a saturated red. Then the lower state may be
   * anything; where neither is, no state is low enough.
   */
  private static double redLimit(float r, float g, float b) {
    return r > 0 && r / (r + g + b) >= SATURATED ? Double.POSITIVE_INFINITY : 0;
  }

  private void judge(long frame) {
    judge(general, false, frame);
    judge(red, true, frame);
  }

  /** The largest part of any field that flashes more often than another kept so far. */
  private void judge(ChangeCounter[] counters, boolean isRed, long frame) {
    for (int flashes = ALLOWED + 1; flashes >= 1; flashes--) {
      if (flashes < Math.min(ALLOWED + 1, worst.flashes())) {
        return;
      }
      double share = largestShare(counters, flashes, frame);
      if (share >= FLASHING && worst.isLessThan(flashes, share)) {
        worst = new FlashVerdict(frame, flashes, share, isRed);
        return;
      }
    }
  }

  private double largestShare(ChangeCounter[] counters, int flashes, long frame) {
    int[][] sums = new int[ROWS + 1][COLUMNS + 1];
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        boolean counts = counters[row * COLUMNS + column].flashesInSecondTo(frame, rate) >= flashes;
        sums[row + 1][column + 1] =
            sums[row][column + 1] + sums[row + 1][column] - sums[row][column] + (counts ? 1 : 0);
      }
    }
    int most = 0;
    for (int row = FIELD_ROWS; row <= ROWS; row++) {
      for (int column = FIELD_COLUMNS; column <= COLUMNS; column++) {
        int within =
            sums[row][column]
                - sums[row - FIELD_ROWS][column]
                - sums[row][column - FIELD_COLUMNS]
                + sums[row - FIELD_ROWS][column - FIELD_COLUMNS];
        most = Math.max(most, within);
      }
    }
    return (double) most / (FIELD_ROWS * FIELD_COLUMNS);
  }

  /** The worst second of all frames looked at. */
  FlashVerdict worst() {
    return worst;
  }
}
