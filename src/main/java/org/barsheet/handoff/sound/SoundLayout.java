package org.barsheet.handoff.sound;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.TempoMap;
import org.barsheet.timing.FilmClock;

/**
 * Where everything lies in a sound file: a head of whole seconds with the pop and the count-in, the
 * film, a tail for the sound to die away. Sample positions are rounded once, from exact time.
 *
 * @param clock ties the music to the film
 * @param headSamples samples before film frame 0
 * @param lengthSamples of the whole file
 * @param clicks the count-in and every felt beat, in order
 */
public record SoundLayout(
    FilmClock clock, long headSamples, long lengthSamples, List<Click> clicks) {

  /** Samples per second. */
  public static final int SAMPLE_RATE = 48_000;

  /** Bars counted in before the first note. */
  static final int COUNT_IN_BARS = 2;

  /** The pop sounds this many seconds before film frame 0 (common practice, no source). */
  static final int POP_SECONDS = 2;

  private static final int SHORTEST_HEAD_SECONDS = 8;
  private static final int TAIL_SECONDS = 2;

  public SoundLayout {
    clicks = List.copyOf(clicks);
  }

  /**
   * One click.
   *
   * @param at exact time in the film, negative before its first frame
   * @param downbeat whether it is the first beat of a bar
   * @param countIn whether it is counted in, before the first note
   */
  public record Click(Seconds at, boolean downbeat, boolean countIn) {}

  /** The layout of a film's sound. */
  public static SoundLayout of(FilmSheet sheet) {
    FilmClock clock = sheet.timing().clock();
    TempoMap tempo = sheet.timing().music().tempo();
    List<Click> clicks = clicks(clock, tempo, sheet.timing().music().bars());
    long headSeconds = headSeconds(clicks.get(0).at());
    Seconds filmEnd = clock.rate().startOf(sheet.timing().lengthFrames());
    Seconds lastNote = clock.filmTime(tempo.secondsAt(sheet.timing().music().score().endTick()));
    Seconds end = filmEnd.compareTo(lastNote) >= 0 ? filmEnd : lastNote;
    long length = nearestSample(end) + (headSeconds + TAIL_SECONDS) * SAMPLE_RATE;
    return new SoundLayout(clock, headSeconds * SAMPLE_RATE, length, clicks);
  }

  private static long headSeconds(Seconds firstClick) {
    BigFraction before = firstClick.value().negate();
    BigInteger[] parts = before.getNumerator().divideAndRemainder(before.getDenominator());
    long ceiling = parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
    return Math.max(SHORTEST_HEAD_SECONDS, ceiling);
  }

  private static List<Click> clicks(FilmClock clock, TempoMap tempo, BarGrid grid) {
    List<Click> clicks = new ArrayList<>();
    for (Bar bar : grid.bars()) {
      List<BigFraction> beats = bar.index() == 0 ? firstBarBeats(bar) : ticks(bar);
      for (BigFraction tick : beats) {
        boolean downbeat = tick.equals(BigFraction.of(bar.startTick())) && !isPickup(bar);
        clicks.add(new Click(clock.filmTime(tempo.secondsAt(tick)), downbeat, false));
      }
    }
    clicks.addAll(0, countIn(clock, tempo, grid.first()));
    return clicks;
  }

  private static List<BigFraction> ticks(Bar bar) {
    return bar.beatTicks().stream().map(BigFraction::of).toList();
  }

  /** Whether the first bar holds less than its meter says. */
  private static boolean isPickup(Bar bar) {
    return bar.index() == 0 && bar.lengthTicks() < fullLength(bar);
  }

  private static long beatLength(Bar bar) {
    return bar.beatTicks().size() > 1
        ? bar.beatTicks().get(1) - bar.beatTicks().get(0)
        : bar.lengthTicks();
  }
}
