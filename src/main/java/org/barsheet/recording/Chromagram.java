package org.barsheet.recording;

/**
 * What sounds and what begins in each of the twelve pitch classes, 50 times a second: chroma
 * features with decaying onset features (S. Ewert, M. Müller, P. Grosche, "High resolution audio
 * synchronization using chroma onset features", ICASSP 2009). Frame i is the moment {@code i ÷ 50}
 * s.
 */
public final class Chromagram {

  /** Frames a second. */
  public static final int RATE = 50;

  public static final int CLASSES = 12;

  private static final double COMPRESSION = 1000;
  private static final double LONG_WINDOW = 0.17;
  private static final double SHORT_WINDOW = 0.085;

  /** Frames in which an onset dies away. */
  private static final int DECAY = 10;

  private final float[][] chroma;
  private final float[][] onsets;

  /**
   * A chromagram of these rows.
   *
   * @param chroma a row of twelve a frame, from C on, of length 1
   * @param onsets a row of twelve a frame, 0 to 1
   */
  public Chromagram(float[][] chroma, float[][] onsets) {
    this.chroma = chroma;
    this.onsets = onsets;
  }

  public float[][] chroma() {
    return chroma;
  }

  public float[][] onsets() {
    return onsets;
  }

  /** The chromagram of a sound. */
  public static Chromagram of(Sound sound) {
    float[][] held = levels(sound, size(sound, LONG_WINDOW));
    float[][] chroma = new float[held.length][];
    for (int i = 0; i < chroma.length; i++) {
      chroma[i] = normal(folded(held[i]));
    }
    float[][] struck = levels(sound, size(sound, SHORT_WINDOW));
    float[][] rises = new float[struck.length][CLASSES];
    for (int i = 1; i < rises.length; i++) {
      float[] rise = new float[Semitones.COUNT];
      for (int k = 0; k < rise.length; k++) {
        rise[k] = Math.max(0, struck[i][k] - struck[i - 1][k]);
      }
      rises[i] = folded(rise);
    }
    return new Chromagram(chroma, dyingAway(localShare(rises)));
  }

  public int frames() {
    return chroma.length;
  }

  private static int size(Sound sound, double seconds) {
    return Integer.highestOneBit((int) (1.4 * seconds * sound.rate()));
  }

  /** Logarithmic power of every semitone in every frame. */
  private static float[][] levels(Sound sound, int size) {
    Spectra spectra = new Spectra(sound, size, RATE);
    Semitones semitones = new Semitones(size, sound.rate(), 0);
    float[][] levels = new float[spectra.count()][Semitones.COUNT];
    spectra.forEach((frame, bins) -> semitones.of(bins, levels[frame]));
    float most = 1e-12f;
    for (float[] level : levels) {
      for (float power : level) {
        most = Math.max(most, power);
      }
    }
    for (float[] level : levels) {
      for (int k = 0; k < level.length; k++) {
        level[k] = (float) StrictMath.log1p(COMPRESSION * level[k] / most);
      }
    }
    return levels;
  }

  private static float[] folded(float[] semitones) {
    float[] classes = new float[CLASSES];
    for (int k = 0; k < semitones.length; k++) {
      classes[(Semitones.LOWEST + k) % CLASSES] += semitones[k];
    }
    return classes;
  }

  /** The row at length 1; silence is alike in all classes. */
  public static float[] normal(float[] row) {
    double square = 0;
    for (float value : row) {
      square += value * value;
    }
    boolean silent = square < 1e-4;
    double length = Math.sqrt(square);
    float[] normal = new float[row.length];
    for (int k = 0; k < row.length; k++) {
      normal[k] = (float) (silent ? 1 / Math.sqrt(row.length) : row[k] / length);
    }
    return normal;
  }

  /** Each row as a share of the strongest within a second on each side. */
  public static float[][] localShare(float[][] rows) {
    float[] size = new float[rows.length];
    float overall = 0;
    for (int i = 0; i < rows.length; i++) {
      double square = 0;
      for (float value : rows[i]) {
        square += value * value;
      }
      size[i] = (float) Math.sqrt(square);
      overall = Math.max(overall, size[i]);
    }
    float[][] shares = new float[rows.length][CLASSES];
    for (int i = 0; i < rows.length; i++) {
      float most = overall / 50 + 1e-9f;
      for (int k = Math.max(0, i - RATE); k < Math.min(rows.length, i + RATE + 1); k++) {
        most = Math.max(most, size[k]);
      }
      for (int k = 0; k < CLASSES; k++) {
        shares[i][k] = rows[i][k] / most;
      }
    }
    return shares;
  }

  /** Every onset lasts for a few frames, ever weaker. */
  public static float[][] dyingAway(float[][] rows) {
    float[][] lasting = new float[rows.length][CLASSES];
    for (int i = 0; i < rows.length; i++) {
      for (int d = 0; d < DECAY && i + d < rows.length; d++) {
        float left = (float) Math.sqrt((DECAY - d) / (double) DECAY);
        for (int k = 0; k < CLASSES; k++) {
          lasting[i + d][k] = Math.max(lasting[i + d][k], left * rows[i][k]);
        }
      }
    }
    return lasting;
  }
}
