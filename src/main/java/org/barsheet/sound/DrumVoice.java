package org.barsheet.sound;

/** A stroke on a drum, from its beginning to its end; it takes no notice of the note's length. */
final class DrumVoice implements SoundingNote {

  private final float[] sound;
  private final float leftGain;
  private final float rightGain;
  private int at;

  DrumVoice(float[] sound, double strength, double pan) {
    this.sound = sound;
    this.leftGain = (float) (strength * StrictMath.sqrt((1 - pan) / 2));
    this.rightGain = (float) (strength * StrictMath.sqrt((1 + pan) / 2));
  }

  @Override
  public void hush() {
    at = sound.length;
  }

  @Override
  public boolean addTo(float[] left, float[] right, int from, int to) {
    for (int i = from; i < to && at < sound.length; i++, at++) {
      left[i] += sound[at] * leftGain;
      right[i] += sound[at] * rightGain;
    }
    return at < sound.length;
  }
}
