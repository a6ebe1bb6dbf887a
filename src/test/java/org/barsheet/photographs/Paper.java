package org.barsheet.photographs;

import java.util.SplittableRandom;

/**
 * Paper with its grain and what is drawn on it, in linear light: a color for every place, in
 * hundredths of its width. Two styles have nothing in common but the colors.
 */
final class Paper {

  /** Pixels to a pixel of the photographs. */
  static final int FINER = 2;

  private final int width;
  private final int height;
  private final float[] red;
  private final float[] green;
  private final float[] blue;

  Paper(int width, int height, boolean otherStyle, long seed) {
    this.width = FINER * width;
    this.height = FINER * height;
    this.red = new float[this.width * this.height];
    this.green = new float[this.width * this.height];
    this.blue = new float[this.width * this.height];
    SplittableRandom random = new SplittableRandom(seed);
    if (otherStyle) {
      speckled(random);
    } else {
      grained(random);
    }
  }

  /** Washed color with soft grain of three sizes, and dark pen lines across it. */
  private void grained(SplittableRandom random) {
    float[] coarse = noise(random, 40);
    float[] middle = noise(random, 9);
    float[] fine = noise(random, 3);
    for (int i = 0; i < red.length; i++) {
      float grain = 1 + 0.16f * coarse[i] + 0.12f * middle[i] + 0.10f * fine[i];
      red[i] = 0.36f * grain;
      green[i] = 0.30f * grain;
      blue[i] = 0.22f * grain * (1 + 0.1f * middle[i]);
    }
    for (int line = 0; line < 40; line++) {
      stroke(random, 0.08f, 1 + random.nextDouble() * 1.6);
    }
  }

  /** Blocks of flat color with sharp borders, dots, and hatching. */
  private void speckled(SplittableRandom random) {
    java.util.Arrays.fill(red, 0.42f);
    java.util.Arrays.fill(green, 0.44f);
    java.util.Arrays.fill(blue, 0.40f);
    for (int block = 0; block < 60; block++) {
      int left = random.nextInt(width);
      int top = random.nextInt(height);
      int wide = 10 + random.nextInt(width / 6);
      int high = 10 + random.nextInt(height / 5);
      float r = 0.12f + 0.4f * (float) random.nextDouble();
      float g = r * (0.8f + 0.25f * (float) random.nextDouble());
      float b = r * (0.7f + 0.4f * (float) random.nextDouble());
      for (int y = top; y < Math.min(height, top + high); y++) {
        for (int x = left; x < Math.min(width, left + wide); x++) {
          set(y * width + x, r, g, b);
        }
      }
    }
    for (int dot = 0; dot < width * height / 180; dot++) {
      int at = random.nextInt(width * height);
      float shade = 0.55f + 0.8f * (float) random.nextDouble();
      for (int near : new int[] {at, at + 1, at + width, at + width + 1}) {
        if (near < red.length) {
          set(near, red[near] * shade, green[near] * shade, blue[near] * shade);
        }
      }
    }
    for (int line = 0; line < 25; line++) {
      stroke(random, 0.16f, 2);
    }
  }

  private void set(int at, float r, float g, float b) {
    red[at] = r;
    green[at] = g;
    blue[at] = b;
  }

  private void stroke(SplittableRandom random, float shade, double thick) {
    double x = random.nextDouble() * width;
    double y = random.nextDouble() * height;
    double angle = random.nextDouble() * 2 * Math.PI;
    double length = (0.1 + 0.4 * random.nextDouble()) * height;
    for (double way = 0; way < length; way += 0.5) {
      for (double side = -thick; side <= thick; side += 0.5) {
        int column = (int) (x + way * Math.cos(angle) - side * Math.sin(angle));
        int row = (int) (y + way * Math.sin(angle) + side * Math.cos(angle));
        if (column >= 0 && column < width && row >= 0 && row < height) {
          set(row * width + column, shade, shade, shade * 1.1f);
        }
      }
    }
  }

  /** Value noise between −1 and 1 with spots of a size. */
  private float[] noise(SplittableRandom random, int size) {
    int columns = width / size + 3;
    int rows = height / size + 3;
    float[] lattice = new float[columns * rows];
    for (int i = 0; i < lattice.length; i++) {
      lattice[i] = (float) (2 * random.nextDouble() - 1);
    }
    float[] values = new float[width * height];
    for (int y = 0; y < height; y++) {
      float v = (float) y / size;
      int row = (int) v;
      float down = smooth(v - row);
      for (int x = 0; x < width; x++) {
        float u = (float) x / size;
        int column = (int) u;
        float across = smooth(u - column);
        int at = row * columns + column;
        values[y * width + x] =
            (lattice[at] * (1 - across) + lattice[at + 1] * across) * (1 - down)
                + (lattice[at + columns] * (1 - across) + lattice[at + columns + 1] * across)
                    * down;
      }
    }
    return values;
  }

  private static float smooth(float t) {
    return t * t * (3 - 2 * t);
  }

  /** Adds the color at a place, in pixels of the photographs; the paper goes on past its edges. */
  void add(double x, double y, double share, double[] color) {
    double u = mirrored(x * FINER - 0.5, width - 1);
    double v = mirrored(y * FINER - 0.5, height - 1);
    int column = Math.min(width - 2, (int) u);
    int row = Math.min(height - 2, (int) v);
    double across = u - column;
    double down = v - row;
    int at = row * width + column;
    double a = (1 - across) * (1 - down) * share;
    double b = across * (1 - down) * share;
    double c = (1 - across) * down * share;
    double d = across * down * share;
    color[0] += a * red[at] + b * red[at + 1] + c * red[at + width] + d * red[at + width + 1];
    color[1] +=
        a * green[at] + b * green[at + 1] + c * green[at + width] + d * green[at + width + 1];
    color[2] += a * blue[at] + b * blue[at + 1] + c * blue[at + width] + d * blue[at + width + 1];
  }

  private static double mirrored(double value, double most) {
    double folded = Math.abs(value) % (2 * most);
    return folded > most ? 2 * most - folded : folded;
  }
}
