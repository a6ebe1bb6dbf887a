package org.barsheet.score;

import org.barsheet.clock.FrameRate;

/** What the file's ticks count, from its header (Standard MIDI File 1.0). */
public sealed interface Division {

  /**
   * Ticks of a quarter note; tempo events say how long that lasts.
   *
   * @param ticks ticks per quarter note, 1 to 32767
   */
  record PerQuarter(int ticks) implements Division {}

  /**
   * Ticks of real time; tempo events have no effect.
   *
   * @param rate frames per second: 24, 25, 29.97 drop-frame or 30
   * @param ticks ticks per frame, 1 to 255
   */
  record PerFrame(FrameRate rate, int ticks) implements Division {}
}
