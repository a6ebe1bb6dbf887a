package org.barsheet.sound;

/** One note while it sounds. */
interface SoundingNote {

  /**
   * Adds samples to both channels.
   *
   * @return whether it still sounds after them
   */
  boolean addTo(float[] left, float[] right, int from, int to);

  /** Lets it die away quickly, because another needs its place. */
  void hush();
}
