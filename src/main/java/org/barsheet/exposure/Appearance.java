package org.barsheet.exposure;

import java.util.Optional;
import java.util.OptionalLong;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmClock;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;

/**
 * One performer seen in one opening in one shot.
 *
 * @param shot index of the shot
 * @param performer who
 * @param opening where
 * @param frames from the first gap (or the shot's start, if it stands open) to the shot's end
 * @param sounding share of those frames in which their part sounds, 0 to 1
 */
public record Appearance(
    int shot, Performer performer, Opening opening, FrameSpan frames, double sounding) {

  /** A clip is asked for so long before and after it is seen (common practice, no source). */
  public static final Seconds HANDLE = Seconds.of(2);

  /**
   * The frame of the performer's clip, from 0, that belongs on a film frame: the clap's frame and
   * the time since the clap at the clip's own rate, to the nearest frame. Negative where the clip
   * would have to begin earlier than it does; empty where rate or clap are not known.
   */
  public OptionalLong clipFrameAt(FilmClock clock, long filmFrame) {
    Optional<ClipClock> clip = ClipClock.of(performer, clock);
    return clip.isPresent()
        ? OptionalLong.of(clip.get().frameAt(filmFrame, Seconds.ZERO))
        : OptionalLong.empty();
  }

  /**
   * The frames of the performer's clip that are asked for: what is seen, with a handle on either
   * side. Its start is negative where the clip would have to begin earlier than it does; empty
   * where rate or clap are not known.
   */
  public Optional<FrameSpan> clipFramesAsked(FilmClock clock) {
    return ClipClock.of(performer, clock)
        .map(
            clip ->
                new FrameSpan(
                    clip.frameAt(frames.start(), Seconds.ZERO.minus(HANDLE)),
                    clip.frameAt(frames.endExclusive(), HANDLE)));
  }

  /** Ties a clip to the film by its clap. */
  private record ClipClock(FilmClock film, FrameRate rate, Performer.Clap clap) {

    static Optional<ClipClock> of(Performer performer, FilmClock film) {
      return performer
          .clipRate()
          .flatMap(rate -> performer.tie().map(tie -> new ClipClock(film, rate, tie)));
    }

    /** The clip's frame so long after a film frame begins. */
    long frameAt(long filmFrame, Seconds after) {
      Seconds musicStart = film.rate().startOf(film.musicStartFrame());
      Seconds sinceMusicStart = film.rate().startOf(filmFrame).plus(after).minus(musicStart);
      return clap.clipFrame() + rate.nearestFrame(sinceMusicStart.minus(clap.at()));
    }
  }
}
