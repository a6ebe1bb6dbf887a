package org.barsheet.sound;

import org.barsheet.timing.SoundLayout;

/** A note of an instrument with pitch. */
final class ToneVoice implements SoundingNote {

  private static final float SILENT = 0.0003f;
  private static final double HUSH_SECONDS = 0.004;
  private static final float EDGE_SHARE = 0.4f;

  private final float[] body;
  private final float[] edge;
  private final float bodyStep;
  private final float edgeStep;
  private final float bodyFade;
  private final float edgeFade;
  private final float attackStep;
  private final float leftGain;
  private final float rightGain;
  private float releaseFade;
  private long samplesToEnd;
  private float bodyPhase;
  private float edgePhase;
  private float bodyStrength = 1 - EDGE_SHARE;
  private float edgeStrength = EDGE_SHARE;
  private float attack;
  private float release = 1;

  /**
   * A note about to begin.
   *
   * @param length samples to the note's end
   * @param strength 0 to 1
   * @param pan −1 left to 1 right
   */
  ToneVoice(Timbre timbre, Wavetables tables, int pitch, long length, double strength, double pan) {
    double hertz = 440 * StrictMath.pow(2, (pitch - 69) / 12.0);
    double edgeHertz = hertz * timbre.edgeRatio();
    this.body = tables.body(timbre, hertz);
    this.edge = tables.edge(timbre, edgeHertz);
    this.bodyStep = step(hertz);
    this.edgeStep = step(edgeHertz);
    this.bodyFade = fade(timbre.decay(pitch));
    this.edgeFade = fade(timbre.edgeDecay(pitch));
    this.attackStep = (float) (1 / (timbre.attack() * SoundLayout.SAMPLE_RATE));
    this.releaseFade = fade(timbre.release());
    this.samplesToEnd = length;
    this.leftGain = (float) (strength * StrictMath.sqrt((1 - pan) / 2));
    this.rightGain = (float) (strength * StrictMath.sqrt((1 + pan) / 2));
  }

  private static float step(double hertz) {
    return (float) (Math.min(hertz, 16_000) * Wavetables.SIZE / SoundLayout.SAMPLE_RATE);
  }

  /** What a strength is multiplied by each sample to fall to 1/e in a time; 1 for no time. */
  private static float fade(double seconds) {
    return seconds == 0 ? 1 : (float) StrictMath.exp(-1 / (seconds * SoundLayout.SAMPLE_RATE));
  }

  @Override
  public void hush() {
    samplesToEnd = 0;
    releaseFade = fade(HUSH_SECONDS);
  }

  /** Works on copies of its state: a loop over fields would take twice as long. */
  @Override
  public boolean addTo(float[] left, float[] right, int from, int to) {
    float bodyAt = bodyPhase;
    float edgeAt = edgePhase;
    float bodyNow = bodyStrength;
    float edgeNow = edgeStrength;
    float swell = attack;
    float end = release;
    long sounding = Math.min(to, from + Math.max(0, samplesToEnd));
    for (int i = from; i < to; i++) {
      float value = read(body, bodyAt) * bodyNow + read(edge, edgeAt) * edgeNow;
      value *= swell * end;
      left[i] += value * leftGain;
      right[i] += value * rightGain;
      bodyAt = wrapped(bodyAt + bodyStep);
      edgeAt = wrapped(edgeAt + edgeStep);
      bodyNow *= bodyFade;
      edgeNow *= edgeFade;
      swell = Math.min(1, swell + attackStep);
      end = i < sounding ? end : end * releaseFade;
    }
    bodyPhase = bodyAt;
    edgePhase = edgeAt;
    bodyStrength = bodyNow;
    edgeStrength = edgeNow;
    attack = swell;
    release = end;
    samplesToEnd -= to - from;
    return release > SILENT && bodyStrength + edgeStrength > SILENT;
  }

  private static float wrapped(float phase) {
    return phase >= Wavetables.SIZE ? phase - Wavetables.SIZE : phase;
  }

  private static float read(float[] table, float phase) {
    int index = (int) phase;
    float between = phase - index;
    return table[index] + (table[index + 1] - table[index]) * between;
  }
}
