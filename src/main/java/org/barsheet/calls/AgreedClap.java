package org.barsheet.calls;

import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Film;
import org.barsheet.plan.Performer;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TimingSheet;

/** When a performer claps: as the plan says, or else on the pop, or else on the first click. */
public final class AgreedClap {

  private AgreedClap() {}

  /** The time in the film, from film frame 0; negative before it. */
  public static Seconds inFilm(TimingSheet timing, SoundLayout sound, Performer performer) {
    Film film = timing.plan().film();
    Seconds agreed = film.pop().map(Seconds.ZERO::minus).orElse(sound.clicks().get(0).at());
    FrameRate rate = timing.clock().rate();
    Seconds musicStart = rate.startOf(timing.clock().musicStartFrame());
    return performer.clap().map(clap -> clap.at().plus(musicStart)).orElse(agreed);
  }
}
