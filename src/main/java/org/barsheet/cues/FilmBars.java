package org.barsheet.cues;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FramesPerBeat;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.Section;
import org.barsheet.score.Bar;

/** Lays the bars of the music on the film. */
public final class FilmBars {

  private FilmBars() {}

  /** Every bar with its frames and its tempo. */
  public static List<FilmBar> of(Music music, FilmClock clock) {
    List<FilmBar> bars = new ArrayList<>();
    for (Section section : Section.of(music)) {
      music.bars().bars().subList(section.first().index(), section.last().index() + 1).stream()
          .map(bar -> of(bar, section.drift(music, bar), music, clock))
          .forEach(bars::add);
    }
    return bars;
  }

  private static FilmBar of(Bar bar, Seconds drift, Music music, FilmClock clock) {
    Seconds start = music.tempo().secondsAt(bar.startTick());
    Seconds end = music.tempo().secondsAt(bar.endTick());
    long startFrame = clock.frameAt(start);
    long endFrame = clock.frameAt(end);
    Seconds beat = firstBeat(bar, music);
    return new FilmBar(
        bar,
        start,
        end.minus(start),
        drift,
        startFrame,
        endFrame - startFrame,
        FramesPerBeat.nearest(clock.rate(), beat),
        new Seconds(BigFraction.of(60).divide(beat.value())).toDecimal(3));
  }

  /** How long the bar's first felt beat lasts; a bar of a part of a beat is measured by itself. */
  private static Seconds firstBeat(Bar bar, Music music) {
    long end = bar.beatTicks().size() > 1 ? bar.beatTicks().get(1) : bar.endTick();
    Seconds start = music.tempo().secondsAt(bar.startTick());
    Seconds length = music.tempo().secondsAt(end).minus(start);
    if (bar.beatTicks().size() > 1) {
      return length;
    }
    BigFraction felt = bar.meter().feltBeatQuarters().multiply(music.score().ticksPerQuarter());
    BigFraction share = BigFraction.of(end - bar.startTick()).divide(felt);
    return share.compareTo(BigFraction.ONE) < 0
        ? new Seconds(length.value().divide(share))
        : length;
  }
}
