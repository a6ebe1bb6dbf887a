package org.barsheet.pulse.steady;

import java.util.Arrays;
import org.barsheet.pulse.evidence.MeterPattern;
import org.barsheet.pulse.evidence.PlaceOdds;
import org.barsheet.pulse.evidence.Playing;

/**
 * Strokes on a regular grid of slots, the divisions of beats, and how well each slot does for each
 * place in a bar.
 */
public final class Slots {

  /** A stroke farther than this from a slot, in slots, lies on none however freely it is played. */
  private static final double NEAR = 0.12;

  /** How often something sounds on each place. */
  private static final double[] SOUNDING = {0.97, 0.93, 0.90, 0.70};

  private final double start;
  private final double step;
  private final double near;
  private final double[][] fits;
  private final boolean[] sounding;
  private double beside;
  private int strokesOn;

  /**
   * What is known of strokes.
   *
   * @param seconds when they sound, in order
   * @param odds of each, as {@link PlaceOdds} gives them
   * @param near how far from a place one may be that is meant there, in seconds
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared, never changed
  public record Strokes(double[] seconds, double[][] odds, double near) {

    /** The strokes of a playing. */
    public static Strokes of(Playing playing, double[][] odds, double near) {
      double[] seconds = playing.strokes().stream().mapToDouble(Playing.Stroke::seconds).toArray();
      return new Strokes(seconds, odds, near);
    }
  }

  /**
   * Puts strokes on a grid.
   *
   * @param step from one slot to the next
   * @param phase where one of the slots lies
   */
  Slots(Strokes strokes, double step, double phase) {
    double[] positions = strokes.seconds();
    this.near = Math.min(NEAR, strokes.near() / step);
    long first = Math.round((positions[0] - phase) / step);
    long last = Math.round((positions[positions.length - 1] - phase) / step);
    this.start = phase + first * step;
    this.step = step;
    this.fits = new double[SOUNDING.length][(int) (last - first) + 1];
    this.sounding = new boolean[fits[0].length];
    for (int place = 0; place < SOUNDING.length; place++) {
      Arrays.fill(fits[place], Math.log(1 - SOUNDING[place]));
    }
    for (int i = 0; i < positions.length; i++) {
      add((positions[i] - start) / step, strokes.odds()[i]);
    }
  }

  private void add(double at, double[] odds) {
    int slot = (int) Math.round(at);
    if (Math.abs(at - slot) > near) {
      beside += odds[MeterPattern.OTHER];
      return;
    }
    for (int place = 0; place < SOUNDING.length; place++) {
      double fit = odds[place] + Math.log(SOUNDING[place]);
      fits[place][slot] = sounding[slot] ? Math.max(fits[place][slot], fit) : fit;
    }
    sounding[slot] = true;
    strokesOn++;
  }

  /**
   * The last slot at or before the first stroke that lies so many slots, or a multiple of them,
   * from a position; 0 or less.
   */
  int slotAtOrBefore(double position, int slots) {
    long away = Math.round((position - start) / step);
    int past = Math.floorMod(away, slots);
    return past == 0 ? 0 : past - slots;
  }

  int count() {
    return sounding.length;
  }

  /** How well a slot does for a place; 0 for slots before the first stroke and after the last. */
  double fit(int slot, int place) {
    return slot < 0 || slot >= sounding.length ? 0 : fits[place][slot];
  }

  boolean isSounding(int slot) {
    return slot >= 0 && slot < sounding.length && sounding[slot];
  }

  /** How well the strokes beside the slots do for no place at all. */
  double beside() {
    return beside;
  }

  /** How many strokes lie on slots. */
  int strokesOn() {
    return strokesOn;
  }

  /** Where a slot lies, possibly before the first stroke. */
  double position(int slot) {
    return start + slot * step;
  }
}
