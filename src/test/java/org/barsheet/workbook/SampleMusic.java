package org.barsheet.workbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FramesPerBeat;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmBar;
import org.barsheet.cues.FilmClock;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.TempoEvidence;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Division;
import org.barsheet.score.Mark;
import org.barsheet.score.Meter;
import org.barsheet.score.Part;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/** Music for sample films: a pickup of one beat, then bars of 4/4, every ninth one of 3/4. */
final class SampleMusic {

  static final int TICKS_PER_QUARTER = 480;

  private SampleMusic() {}

  /** So many bars after the pickup, at so many bpm. */
  static Music of(int bars, int beatsPerMinute) {
    TempoMap tempo =
        TempoMap.of(
            TICKS_PER_QUARTER, List.of(new TempoMap.Change(0, Seconds.of(60, beatsPerMinute))));
    BarGrid grid = new BarGrid(bars(bars));
    List<Part> parts =
        List.of(
            new Part(0, "Celesta", "Celesta", 1, 1, false),
            new Part(1, "Flute", "Flute", 2, 2, false),
            new Part(2, "Cello", "Cello", 3, 3, false));
    Score score =
        new Score(
            1,
            new Division.PerQuarter(TICKS_PER_QUARTER),
            TICKS_PER_QUARTER,
            parts,
            List.of(),
            marks(grid),
            List.of(),
            tempo,
            1,
            1,
            grid,
            grid.last().endTick(),
            List.of());
    return new Music(
        score,
        tempo,
        grid,
        Music.Source.WRITTEN,
        new TempoEvidence(
            0.94,
            TempoEvidence.Verdict.TRUE,
            "97 of 100 onsets sit on the written grid, where chance would put 21"),
        "the written tempo and bars are used, because the notes sit on them");
  }

  private static List<Bar> bars(int count) {
    List<Bar> bars = new ArrayList<>();
    long tick = 0;
    for (int number = 0; number <= count; number++) {
      Meter meter = number % 9 == 8 ? new Meter(3, 4) : Meter.COMMON;
      int beats = number == 0 ? 1 : meter.feltBeats();
      long start = tick;
      List<Long> beatTicks =
          LongStream.range(0, beats).mapToObj(beat -> start + beat * TICKS_PER_QUARTER).toList();
      tick += (long) beats * TICKS_PER_QUARTER;
      bars.add(new Bar(number, number, 1, meter, start, tick, beatTicks));
    }
    return bars;
  }

  private static List<Mark> marks(BarGrid grid) {
    List<Mark> marks = new ArrayList<>();
    for (Bar bar : grid.bars()) {
      if (bar.number() % 8 == 1) {
        String letter = Character.toString('A' + bar.number() / 8 % 26);
        marks.add(new Mark(Mark.Kind.MARKER, bar.startTick(), letter));
      }
    }
    return marks;
  }

  static List<FilmBar> filmBars(Music music, FilmClock clock) {
    return music.bars().bars().stream().map(bar -> filmBar(music, clock, bar)).toList();
  }

  private static FilmBar filmBar(Music music, FilmClock clock, Bar bar) {
    Seconds start = music.tempo().secondsAt(bar.startTick());
    long from = clock.frameAt(start);
    long to = clock.frameAt(music.tempo().secondsAt(bar.endTick()));
    Seconds beat = music.tempo().perQuarterAt(bar.startTick());
    BigFraction perMinute = Seconds.of(60).dividedBy(beat);
    BigDecimal rounded =
        new BigDecimal(perMinute.getNumerator())
            .divide(new BigDecimal(perMinute.getDenominator()), 3, RoundingMode.HALF_UP);
    return new FilmBar(
        bar,
        start,
        music.tempo().secondsAt(bar.endTick()).minus(start),
        Seconds.ZERO,
        from,
        to - from,
        FramesPerBeat.nearest(clock.rate(), beat),
        rounded);
  }
}
