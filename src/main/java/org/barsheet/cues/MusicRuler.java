package org.barsheet.cues;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Length;
import org.barsheet.plan.Length.Unit;
import org.barsheet.pulse.Music;
import org.barsheet.score.Bar;
import org.barsheet.score.BarBeat;

/**
 * Measures music against film: where a moment lies in bars, and where one ends up after so many
 * bars, beats, seconds or frames. All moments are exact seconds from tick 0 of the score.
 */
public final class MusicRuler {

  private final Music music;
  private final FilmClock clock;
  private final TickScale bars;
  private final TickScale felt;
  private final List<FilmBeat> beats;
  private final boolean pickup;

  public MusicRuler(Music music, FilmClock clock) {
    this.music = music;
    this.clock = clock;
    List<Bar> all = music.bars().bars();
    this.pickup = music.pickup() && all.size() > 1;
    this.bars = new TickScale(barTicks(all));
    this.felt = new TickScale(beatTicks(all));
    this.beats = beatsOf(all);
  }

  private static long[] barTicks(List<Bar> bars) {
    long[] ticks = new long[bars.size() + 1];
    for (int i = 0; i < bars.size(); i++) {
      ticks[i] = bars.get(i).startTick();
    }
    ticks[bars.size()] = bars.get(bars.size() - 1).endTick();
    return ticks;
  }

  private static long[] beatTicks(List<Bar> bars) {
    List<Long> ticks = new ArrayList<>();
    bars.forEach(bar -> ticks.addAll(bar.beatTicks()));
    ticks.add(bars.get(bars.size() - 1).endTick());
    return ticks.stream().mapToLong(Long::longValue).toArray();
  }

  private List<FilmBeat> beatsOf(List<Bar> bars) {
    List<FilmBeat> found = new ArrayList<>();
    for (Bar bar : bars) {
      for (int i = 0; i < bar.beatTicks().size(); i++) {
        Seconds at = music.tempo().secondsAt(bar.beatTicks().get(i));
        BarBeat place = new BarBeat(bar.number(), bar.time(), BigFraction.of(i + 1));
        found.add(new FilmBeat(at, clock.frameAt(at), place));
      }
    }
    return List.copyOf(found);
  }

  /** Every felt beat, in order. */
  public List<FilmBeat> beats() {
    return beats;
  }

  /** The latest felt beat whose frame is at or before a frame, if there is one in the film. */
  public Optional<FilmBeat> latestBeatAtOrBefore(long frame) {
    int next = firstBeatAfter(frame);
    return next == 0 || beats.get(next - 1).frame() < 0
        ? Optional.empty()
        : Optional.of(beats.get(next - 1));
  }

  /** The felt beats from one frame to another, both included. */
  public List<FilmBeat> beatsBetween(long first, long last) {
    return last < first
        ? List.of()
        : beats.subList(firstBeatAfter(first - 1), firstBeatAfter(last));
  }

  private int firstBeatAfter(long frame) {
    int low = 0;
    int high = beats.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (beats.get(middle).frame() <= frame) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Exact time of a tick. */
  public Seconds timeOf(long tick) {
    return music.tempo().secondsAt(tick);
  }

  /** The film frame of a moment. */
  public long frameAt(Seconds time) {
    return clock.frameAt(time);
  }

  /** The film frame of a tick. */
  public long frameOf(long tick) {
    return frameAt(timeOf(tick));
  }

  /** Whether a film frame lies before the one on which the music starts. */
  boolean isBeforeMusic(long frame) {
    return frame < clock.musicStartFrame();
  }

  /** A moment in bars; the music's start for moments before it. */
  public BarBeat locate(Seconds time) {
    return music.bars().locate(music.tempo().tickAt(later(time, clock.musicStart())));
  }

  /** A frame as a moment: on the beat exactly, where a felt beat falls on that frame. */
  public Seconds momentOf(long frame) {
    return latestBeatAtOrBefore(frame)
        .filter(beat -> beat.frame() == frame)
        .map(FilmBeat::at)
        .orElseGet(() -> clock.scoreTime(frame));
  }

  /** A frame in bars: on the beat, where a felt beat falls on that frame. */
  public BarBeat locateFrame(long frame) {
    return latestBeatAtOrBefore(frame)
        .filter(beat -> beat.frame() == frame)
        .map(FilmBeat::place)
        .orElseGet(() -> locate(clock.scoreTime(frame)));
  }

  /**
   * The moment so long after another one. Bars and beats count from the music's start for moments
   * before it, and bars from the first full bar for moments at or before a pickup.
   *
   * @param amount of the unit, negative to go back
   */
  public Seconds advance(Seconds from, Unit unit, BigFraction amount) {
    return switch (unit) {
      case SECONDS -> from.plus(new Seconds(amount));
      case FRAMES -> from.plus(clock.rate().frameDuration().times(amount));
      case BARS -> music.tempo().secondsAt(bars.tickAt(barPosition(from).add(amount)));
      case BEATS -> music.tempo().secondsAt(felt.tickAt(beatPosition(from).add(amount)));
    };
  }

  /** The film frame so long after a moment. */
  public long frameAfter(Seconds from, Unit unit, BigFraction amount) {
    return frameAt(advance(from, unit, amount));
  }

  /** How much of a unit lies between two moments, exactly; frames are whole. */
  public BigFraction between(Seconds from, Seconds to, Unit unit) {
    return switch (unit) {
      case SECONDS -> filmSeconds(to).minus(filmSeconds(from)).value();
      case FRAMES -> BigFraction.of(frameAt(to) - frameAt(from));
      case BARS -> barPosition(to).subtract(barPosition(from));
      case BEATS -> beatPosition(to).subtract(beatPosition(from));
    };
  }

  /** The least number of frames a length may take from a moment on. */
  long leastFrames(Seconds from, Length length) {
    return frameAfter(from, length.unit(), length.least()) - frameAt(from);
  }

  /** The greatest number of frames a length may take from a moment on. */
  long mostFrames(Seconds from, Length length) {
    return frameAfter(from, length.unit(), length.most()) - frameAt(from);
  }

  private Seconds filmSeconds(Seconds time) {
    return clock.rate().startOf(frameAt(time));
  }

  private BigFraction barPosition(Seconds time) {
    BigFraction position = bars.position(tickFromStart(time));
    boolean atPickup = pickup && position.signum() <= 0;
    return atPickup ? BigFraction.ONE : position;
  }

  private BigFraction beatPosition(Seconds time) {
    return felt.position(tickFromStart(time));
  }

  private BigFraction tickFromStart(Seconds time) {
    return music.tempo().tickAt(later(time, clock.musicStart()));
  }

  private static Seconds later(Seconds one, Seconds other) {
    return one.compareTo(other) >= 0 ? one : other;
  }
}
