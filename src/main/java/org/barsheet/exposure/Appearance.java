package org.barsheet.exposure;

import java.util.OptionalLong;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.timing.FilmClock;

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

  /**
   * The frame of the performer's clip, from 0, that belongs on a film frame: the clap's frame and
   * the time since the clap at the clip's own rate, to the nearest frame. Negative where the clip
   * would have to begin earlier than it does; empty where rate or clap are not known.
   */
  public OptionalLong clipFrameAt(FilmClock clock, long filmFrame) {
    if (performer.clipRate().isEmpty() || performer.clap().isEmpty()) {
      return OptionalLong.empty();
    }
    FrameRate clipRate = performer.clipRate().get();
    Performer.Clap clap = performer.clap().get();
    Seconds fromMusicStart =
        clock.rate().startOf(filmFrame).minus(clock.rate().startOf(clock.musicStartFrame()));
    Seconds sinceClap = fromMusicStart.minus(clap.at());
    return OptionalLong.of(clap.clipFrame() + clipRate.nearestFrame(sinceClap));
  }
}
