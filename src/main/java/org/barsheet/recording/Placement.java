package org.barsheet.recording;

/**
 * Where a recording lies in another of the same music, or of a part of it, by their onsets.
 *
 * <pre>{@code
 * Placement place = Placement.of(SoundReader.read(clip), SoundReader.read(guide));
 * if (place.isSure()) {
 *   double inGuide = place.at(secondsOfClip);
 * }
 * }</pre>
 *
 * <p>To place many clips against one guide, make the guide's {@link OnsetBands#byPitch} once.
 *
 * @param start where its first sample lies in the other, in seconds; less than 0 where it begins
 *     earlier
 * @param drift in millionths: its second s lies at {@code start + s × (1 + drift ÷ 1,000,000)}
 *     seconds of the other; above 0 where its clock ran slow
 * @param confidence 0, a guess, to 1: how far the best place stands out from all others
 */
public record Placement(double start, double drift, double confidence) {

  /** Confidence from which a place is to be trusted. */
  private static final double SURE = 0.5;

  /** Places one sound in another. */
  public static Placement of(Sound clip, Sound other) {
    return of(OnsetBands.byPitch(clip), OnsetBands.byPitch(other));
  }

  /** Places one sound in another by their onsets. */
  public static Placement of(OnsetBands clip, OnsetBands other) {
    return new OnsetMatch(clip, other).placement();
  }

  /** Where a second of the recording lies in the other. */
  public double at(double seconds) {
    return start + seconds * (1 + drift / 1e6);
  }

  public boolean isSure() {
    return confidence >= SURE;
  }
}
