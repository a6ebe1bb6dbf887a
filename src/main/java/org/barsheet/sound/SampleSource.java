package org.barsheet.sound;

/** A sound that is made block by block, in order. */
interface SampleSource {

  /**
   * Adds the next {@code length} samples to both channels, from index 0.
   *
   * @param from index in the file of the first of them
   */
  void addTo(float[] left, float[] right, long from, int length);
}
