package org.barsheet.demo;

import java.util.List;

/**
 * <i>Lamplighters' Quay</i>, the demo score: a paper harbour is lit lamp by lamp, goes dark, and is
 * lit all at once. D dorian fog, D major dusk, a ferry in B flat, D minor, the whole quay in D.
 */
public final class LamplightersQuay {

  private LamplightersQuay() {}

  /** Every return of glimmer and tide that was written on purpose, by motif, then in time order. */
  public static List<PlantedReturn> planted() {
    return compose().planted();
  }

  static Music compose() {
    Music music = new Music(bars());
    Fog.write(music);
    Dusk.write(music);
    Lamps.write(music);
    Ferry.write(music);
    LampsOut.write(music);
    AllTheLamps.write(music);
    Night.write(music);
    return music;
  }

  private static BarLines bars() {
    return new BarLines()
        .then(1, 1) // pickup
        .then(36, 4) // fog, dusk, lamps
        .then(20, 3) // the ferry's waltz
        .then(10, 4) // the lamps go out
        .then(1, 2) // a breath
        .then(20, 4); // all the lamps, night
  }
}
