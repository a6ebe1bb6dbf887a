package org.barsheet.timing;

import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmClock;
import org.barsheet.plan.Recording;

/**
 * Where a recording of the music lies on an editor's timeline, which begins clips on whole frames.
 *
 * @param firstFrame the first film frame that begins no earlier than the recording; 0 where the
 *     recording begins before the film
 * @param firstSample of the recording to be heard on that frame, at {@link
 *     SoundLayout#SAMPLE_RATE}, rounded once
 */
public record RecordingSpan(long firstFrame, long firstSample) {

  /** The span of a recording in a film. */
  public static RecordingSpan of(Recording recording, FilmClock clock) {
    Seconds start = clock.startOf(recording);
    FrameRate rate = clock.rate();
    if (start.signum() <= 0) {
      return new RecordingSpan(0, SoundLayout.samples(Seconds.ZERO.minus(start)));
    }
    long showing = rate.frameShowing(start);
    long first = rate.startOf(showing).compareTo(start) < 0 ? showing + 1 : showing;
    return new RecordingSpan(first, SoundLayout.samples(rate.startOf(first).minus(start)));
  }
}
