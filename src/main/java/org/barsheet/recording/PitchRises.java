package org.barsheet.recording;

/** How much each semitone gains, 200 times a second: the rise of its compressed power. */
public final class PitchRises {

  /** Frames a second; frame k is the moment {@code k ÷ 200} s. */
  public static final int RATE = 200;

  private static final double WINDOW_SECONDS = 0.085;
  private static final double COMPRESSION = 1000;

  /** Frames on each side between which a rise is measured. */
  private static final int SPAN = 2;

  private final float[][] rises;

  private PitchRises(float[][] rises) {
    this.rises = rises;
  }

  /** The rises of a sound. */
  public static PitchRises of(Sound sound) {
    int size = Integer.highestOneBit((int) (1.4 * WINDOW_SECONDS * sound.rate()));
    Spectra spectra = new Spectra(sound, size, RATE);
    Semitones semitones = new Semitones(size, sound.rate(), 0);
    float[][] power = new float[Semitones.COUNT][spectra.count()];
    float[] one = new float[Semitones.COUNT];
    float[] most = {1e-12f};
    spectra.forEach(
        (frame, bins) -> {
          semitones.of(bins, one);
          for (int k = 0; k < one.length; k++) {
            power[k][frame] = one[k];
            most[0] = Math.max(most[0], one[k]);
          }
        });
    for (float[] row : power) {
      rises(row, most[0]);
    }
    return new PitchRises(power);
  }

  private static void rises(float[] row, float most) {
    float[] level = new float[row.length];
    for (int i = 0; i < row.length; i++) {
      level[i] = (float) StrictMath.log1p(COMPRESSION * row[i] / most);
    }
    for (int i = 0; i < row.length; i++) {
      float after = level[Math.min(row.length - 1, i + SPAN)];
      row[i] = Math.max(0, after - level[Math.max(0, i - SPAN)]);
    }
  }

  public int frames() {
    return rises[0].length;
  }

  /** The rise at a MIDI key; 0 where it is too low or too high to be heard, or there's no frame. */
  public float rise(int key, int frame) {
    int row = key - Semitones.LOWEST;
    boolean heard = row >= 0 && row < rises.length && frame >= 0 && frame < rises[0].length;
    return heard ? rises[row][frame] : 0;
  }
}
