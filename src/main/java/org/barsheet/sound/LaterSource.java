package org.barsheet.sound;

/** A sound from one of its samples on; what comes before is made and let go. */
final class LaterSource implements SampleSource {

  private final SampleSource whole;
  private final long skipped;
  private boolean begun;

  LaterSource(SampleSource whole, long skipped) {
    this.whole = whole;
    this.skipped = skipped;
  }

  @Override
  public void addTo(float[] left, float[] right, long from, int length) {
    if (!begun) {
      begun = true;
      skip();
    }
    whole.addTo(left, right, skipped + from, length);
  }

  private void skip() {
    for (long at = 0; at < skipped; at += WaveFile.BLOCK) {
      int length = (int) Math.min(WaveFile.BLOCK, skipped - at);
      whole.addTo(new float[WaveFile.BLOCK], new float[WaveFile.BLOCK], at, length);
    }
  }
}
