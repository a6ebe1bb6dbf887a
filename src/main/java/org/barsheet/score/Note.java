package org.barsheet.score;

/**
 * One sounding note.
 *
 * @param part index of its part in {@link Score#parts}
 * @param pitch MIDI key, 0 to 127; middle C (C4) is 60
 * @param velocity 1 to 127
 * @param onTick where it begins
 * @param offTick where it ends, at least {@code onTick}
 */
public record Note(int part, int pitch, int velocity, long onTick, long offTick) {

  public Note {
    if (pitch < 0 || pitch > 127 || velocity < 1 || velocity > 127) {
      throw new IllegalArgumentException("no note: pitch " + pitch + ", velocity " + velocity);
    }
    if (onTick < 0 || offTick < onTick) {
      throw new IllegalArgumentException(
          "a note ends before it begins: " + onTick + ".." + offTick);
    }
  }

  public long lengthTicks() {
    return offTick - onTick;
  }
}
