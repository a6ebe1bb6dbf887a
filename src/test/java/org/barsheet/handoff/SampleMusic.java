package org.barsheet.handoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FramesPerBeat;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.cues.FilmClock;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Form;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.SoundedNotes;
import org.barsheet.motif.Variation;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Division;
import org.barsheet.score.Mark;
import org.barsheet.score.Meter;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/** The score of the sample film and its places in it. */
final class SampleMusic {

  private static final int QUARTER = 480;
  private static final int BARS = 8;

  private final FrameRate rate;
  private final String word;

  SampleMusic(FrameRate rate, String word) {
    this.rate = rate;
    this.word = word;
  }

  private String named(String plain) {
    return plain + word;
  }

  static long tickOfBar(int number) {
    return number == 0 ? 0 : QUARTER + (long) (number - 1) * 3 * QUARTER;
  }

  Score score() {
    Meter meter = new Meter(3, 4);
    List<Bar> bars = new ArrayList<>();
    bars.add(new Bar(0, 0, 1, meter, 0, QUARTER, List.of(0L)));
    for (int number = 1; number <= BARS; number++) {
      long start = tickOfBar(number);
      bars.add(
          new Bar(
              number,
              number,
              1,
              meter,
              start,
              start + 3L * QUARTER,
              List.of(start, start + QUARTER, start + 2L * QUARTER)));
    }
    TempoMap tempo =
        TempoMap.of(
            QUARTER,
            List.of(
                new TempoMap.Change(0, Seconds.of(5, 8)),
                new TempoMap.Change(tickOfBar(5), Seconds.of(3, 4))));
    return new Score(
        1,
        new Division.PerQuarter(QUARTER),
        QUARTER,
        List.of(
            new Part(0, named("Celesta"), "Celesta", 1, 1, false),
            new Part(1, named("Strings"), "String Ensemble 1", 2, 2, false),
            new Part(2, named("Drums"), "Drums", 3, 10, true)),
        notes(),
        List.of(new Mark(Mark.Kind.MARKER, tickOfBar(5), named("A"))),
        List.of(),
        tempo,
        2,
        1,
        new BarGrid(bars),
        tickOfBar(BARS + 1),
        List.of());
  }

  private static List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    notes.add(new Note(0, 79, 90, 0, QUARTER));
    for (int bar = 1; bar <= BARS; bar++) {
      long start = tickOfBar(bar);
      notes.add(new Note(0, 76, 100, start, start + QUARTER));
      notes.add(new Note(1, 48, 70, start, start + 3L * QUARTER));
      notes.add(new Note(1, 55, 70, start, start + 3L * QUARTER));
      notes.add(new Note(2, 36, 110, start, start + QUARTER / 4));
      notes.add(new Note(0, 79, 80, start + QUARTER, start + 2L * QUARTER));
      notes.add(new Note(0, 84, 96, start + 2L * QUARTER, start + 3L * QUARTER));
    }
    return notes;
  }

  List<FilmBar> filmBars(FilmClock clock) {
    Score score = score();
    List<FilmBar> bars = new ArrayList<>();
    for (Bar bar : score.bars().bars()) {
      Seconds start = score.tempo().secondsAt(bar.startTick());
      Seconds beat = score.tempo().perQuarterAt(bar.startTick());
      long frame = clock.frameAt(start);
      bars.add(
          new FilmBar(
              bar,
              start,
              score.tempo().secondsAt(bar.endTick()).minus(start),
              Seconds.ZERO,
              frame,
              clock.frameAt(score.tempo().secondsAt(bar.endTick())) - frame,
              FramesPerBeat.nearest(rate, beat),
              Seconds.of(60).times(beat.value().reciprocal()).toDecimal(3)));
    }
    return bars;
  }

  long lengthFrames(FilmClock clock) {
    return clock.frameAt(score().tempo().secondsAt(tickOfBar(BARS + 1)));
  }

  List<Cue> cues(FilmClock clock) {
    Score score = score();
    return List.of(
        cue(score, clock, "bar-1", Cue.Kind.BAR, "", 0, 1, Optional.empty()),
        glimmer(score, clock, 1, 3, Certainty.CERTAIN),
        cue(score, clock, named("mark-A"), Cue.Kind.MARK, named("A"), 0, 5, Optional.empty()),
        glimmer(score, clock, 2, 6, Certainty.LIKELY));
  }

  private Cue glimmer(Score score, FilmClock clock, int number, int bar, Certainty certainty) {
    long tick = tickOfBar(bar);
    Occurrence occurrence =
        new Occurrence(
            named("glimmer"),
            number,
            new SoundedNotes(
                List.of(tick, tick + QUARTER, tick + 2L * QUARTER),
                List.of(76, 79, 84),
                tick + 2L * QUARTER,
                tick + 3L * QUARTER),
            List.of(0, 1),
            new Variation(List.of(Form.TONAL, Form.AUGMENTED), 5, named("tonal, up a fourth")),
            0.9,
            certainty);
    return cue(
        score,
        clock,
        "glimmer-" + number,
        Cue.Kind.RETURN,
        named("glimmer"),
        number,
        bar,
        Optional.of(occurrence));
  }

  private static Cue cue(
      Score score,
      FilmClock clock,
      String id,
      Cue.Kind kind,
      String name,
      int number,
      int bar,
      Optional<Occurrence> occurrence) {
    long tick = tickOfBar(bar);
    long accent = occurrence.map(one -> one.notes().accentTick()).orElse(tick);
    Seconds at = score.tempo().secondsAt(tick);
    Seconds accentAt = score.tempo().secondsAt(accent);
    return new Cue(
        id,
        kind,
        name,
        number,
        at,
        clock.frameAt(at),
        score.bars().locate(tick),
        accentAt,
        clock.frameAt(accentAt),
        score.bars().locate(accent),
        occurrence);
  }
}
