package org.barsheet.calls;

import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Performer;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.SoundLayout.Click;
import org.barsheet.timing.TimingSheet;

/**
 * When a performer claps: as the plan says, or else on the pop, or else on the first click. Who
 * hears something at that moment can clap with it.
 */
public final class AgreedClap {

  private final TimingSheet timing;
  private final Optional<Seconds> pop;
  private final List<Click> countIn;

  public AgreedClap(TimingSheet timing, SoundLayout sound) {
    this.timing = timing;
    this.pop = timing.plan().film().pop().map(Seconds.ZERO::minus);
    this.countIn = sound.clicks().stream().filter(Click::countIn).toList();
  }

  /** The time in the film, from film frame 0; negative before it. */
  public static Seconds inFilm(TimingSheet timing, SoundLayout sound, Performer performer) {
    AgreedClap agreed = new AgreedClap(timing, sound);
    return performer
        .clap()
        .map(clap -> clap.at().plus(agreed.musicStart()))
        .or(() -> agreed.pop)
        .orElse(sound.clicks().get(0).at());
  }

  private Seconds musicStart() {
    return timing.clock().rate().startOf(timing.clock().musicStartFrame());
  }

  /** {@code the beep} or {@code click 2 of the count-in}: what sounds within half a frame of it. */
  public Optional<String> with(Seconds inFilm) {
    if (pop.isPresent() && isHeardAt(pop.get(), inFilm)) {
      return Optional.of("the beep");
    }
    return countIn.stream()
        .filter(click -> isHeardAt(click.at(), inFilm))
        .findFirst()
        .map(this::named);
  }

  private boolean isHeardAt(Seconds sound, Seconds inFilm) {
    FrameRate rate = timing.clock().rate();
    Seconds apart = sound.minus(inFilm);
    Seconds either = apart.signum() < 0 ? Seconds.ZERO.minus(apart) : apart;
    return either.plus(either).compareTo(rate.frameDuration()) <= 0;
  }

  private String named(Click click) {
    return "click " + (countIn.indexOf(click) + 1) + " of the count-in";
  }

  /** The click of the count-in nearest to a moment; none where there is no count-in. */
  public Optional<Nearest> nearest(Seconds inFilm) {
    Optional<Click> nearest = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Click click : countIn) {
      double apart = Math.abs(click.at().minus(inFilm).toDouble());
      if (apart < least) {
        least = apart;
        nearest = Optional.of(click);
      }
    }
    return nearest.map(click -> new Nearest(named(click), click.at().minus(musicStart())));
  }

  /**
   * A click to clap with instead.
   *
   * @param name {@code click 2 of the count-in}
   * @param fromMusicStart when it sounds, from the music's start
   */
  public record Nearest(String name, Seconds fromMusicStart) {}
}
