package org.barsheet.timing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmClock;
import org.barsheet.plan.Film;
import org.barsheet.score.Bar;
import org.barsheet.score.TempoMap;

/**
 * Where everything lies in a sound file: a head of whole seconds with the pop and the count-in, the
 * film, a tail for the sound to die away. Sample positions are rounded once, from exact time.
 *
 * @param headSeconds whole seconds before film frame 0
 * @param lengthSamples of the whole file
 * @param clicks the count-in and every felt beat, in order
 */
public record SoundLayout(int headSeconds, long lengthSamples, List<Click> clicks) {

  /** Samples per second. */
  public static final int SAMPLE_RATE = 48_000;

  /** Bars counted in before the first full bar. */
  static final int COUNT_IN_BARS = 2;

  /** The head is at least this long. */
  static final int SHORTEST_HEAD_SECONDS = 8;

  private static final int TAIL_SECONDS = 2;

  public SoundLayout {
    clicks = List.copyOf(clicks);
  }

  /**
   * One click.
   *
   * @param at exact time in the film, negative before its first frame
   * @param downbeat whether it is the first beat of a bar
   * @param countIn whether it comes before the music
   */
  public record Click(Seconds at, boolean downbeat, boolean countIn) {}

  /** The layout of a film's sound. */
  public static SoundLayout of(TimingSheet timing) {
    List<Click> clicks = clicks(timing);
    Seconds pop = timing.plan().film().pop().orElse(Seconds.ZERO);
    int head =
        Math.max(
            Math.max(SHORTEST_HEAD_SECONDS, secondsBefore(clicks.get(0).at())),
            secondsBefore(Seconds.ZERO.minus(pop)));
    long tick = timing.music().score().endTick();
    Seconds filmEnd = timing.clock().rate().startOf(timing.lengthFrames());
    Seconds lastNote = timing.clock().filmTime(timing.music().tempo().secondsAt(tick));
    Seconds end = filmEnd.compareTo(lastNote) >= 0 ? filmEnd : lastNote;
    long length = samples(end.plus(Seconds.of(head + TAIL_SECONDS)));
    return new SoundLayout(head, length, clicks);
  }

  /** Whole seconds, rounded up, from an instant to film frame 0; 0 for instants after it. */
  private static int secondsBefore(Seconds instant) {
    BigFraction before = instant.value().negate();
    BigInteger[] parts = before.getNumerator().divideAndRemainder(before.getDenominator());
    return Math.max(0, parts[0].intValueExact() + parts[1].signum());
  }

  private static List<Click> clicks(TimingSheet timing) {
    List<Bar> bars = timing.music().bars().bars();
    boolean pickup =
        bars.size() > 1 && bars.get(0).number() < timing.plan().music().tempo().firstBar();
    int full = pickup ? 1 : 0;
    List<Click> clicks = new ArrayList<>(beforeFirstFullBar(timing, bars.get(0), bars.get(full)));
    for (Bar bar : bars.subList(full, bars.size())) {
      for (long tick : bar.beatTicks()) {
        boolean downbeat = tick == bar.startTick();
        clicks.add(new Click(filmTime(timing, BigFraction.of(tick)), downbeat, false));
      }
    }
    return clicks;
  }

  /**
   * Whole beats counted back from the first full bar; those before the pickup are the count-in, so
   * a pickup takes its beats away from it.
   */
  private static List<Click> beforeFirstFullBar(TimingSheet timing, Bar first, Bar full) {
    int beatsInBar = full.beatTicks().size();
    long beat = beatsInBar > 1 ? full.beatTicks().get(1) - full.startTick() : full.lengthTicks();
    List<Click> clicks = new ArrayList<>();
    for (int back = COUNT_IN_BARS * beatsInBar; back >= 1; back--) {
      long tick = full.startTick() - back * beat;
      boolean countIn = tick < first.startTick();
      Seconds at = filmTime(timing, BigFraction.of(tick));
      clicks.add(new Click(at, back % beatsInBar == 0, countIn));
    }
    return clicks;
  }

  private static Seconds filmTime(TimingSheet timing, BigFraction tick) {
    FilmClock clock = timing.clock();
    TempoMap tempo = timing.music().tempo();
    return clock.filmTime(tempo.secondsAt(tick));
  }

  /** The sample of the file nearest to an instant of the film. */
  public long sampleAt(Seconds inFilm) {
    return samples(inFilm.plus(Seconds.of(headSeconds)));
  }

  /** Samples before film frame 0. */
  public long headSamples() {
    return (long) headSeconds * SAMPLE_RATE;
  }

  /** Samples from midnight of the timecode's day to the first sample of the file. */
  public long samplesSinceMidnight(Film film) {
    FrameRate rate = film.rate();
    long filmStart = samples(rate.startOf(film.firstFrame().frame()));
    return Math.floorMod(filmStart - headSamples(), samples(rate.startOf(rate.framesPerDay())));
  }

  /** Samples in a time, rounded once; a tie goes to the later. */
  public static long samples(Seconds time) {
    BigFraction doubled = time.value().multiply(2L * SAMPLE_RATE).add(1);
    BigInteger bottom = doubled.getDenominator().shiftLeft(1);
    BigInteger[] parts = doubled.getNumerator().divideAndRemainder(bottom);
    return parts[0].longValueExact() - (parts[1].signum() < 0 ? 1 : 0);
  }
}
