package org.barsheet.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Form;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.SoundedNotes;
import org.barsheet.motif.Variation;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.TempoEvidence;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Division;
import org.barsheet.score.Mark;
import org.barsheet.score.Meter;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/**
 * Invented music for tests: bars at a tempo, marks, and returns of motifs where they are wanted.
 */
public final class MusicBuilder {

  /** Ticks to the quarter note. */
  public static final int QUARTER = 960;

  private final List<Bar> bars = new ArrayList<>();
  private final List<TempoMap.Change> tempo = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();
  private final List<Occurrence> occurrences = new ArrayList<>();
  private Meter meter = new Meter(4, 4);
  private long end;
  private int nextBar = 1;
  private TempoEvidence evidence =
      new TempoEvidence(1, TempoEvidence.Verdict.TRUE, "every onset is on the written grid");

  /** Quarter notes a minute from the next bar on. */
  public MusicBuilder tempo(long beatsPerMinute) {
    tempo.add(new TempoMap.Change(end, Seconds.of(60, beatsPerMinute)));
    return this;
  }

  public MusicBuilder meter(int numerator, int denominator) {
    meter = new Meter(numerator, denominator);
    return this;
  }

  /** A short bar 0 before bar 1, of so many beats of the meter. */
  public MusicBuilder pickup(int beats) {
    addBar(0, 1, beats);
    return this;
  }

  /** So many full bars. */
  public MusicBuilder bars(int count) {
    for (int i = 0; i < count; i++) {
      addBar(nextBar++, 1, meter.feltBeats());
    }
    return this;
  }

  /** Bars already there, played once more. */
  public MusicBuilder again(int from, int to) {
    for (int number = from; number <= to; number++) {
      addBar(number, 2, meter.feltBeats());
    }
    return this;
  }

  private void addBar(int number, int time, int beats) {
    long beat = ticks(meter.feltBeatQuarters());
    List<Long> starts = new ArrayList<>();
    for (int i = 0; i < beats; i++) {
      starts.add(end + i * beat);
    }
    bars.add(new Bar(bars.size(), number, time, meter, end, end + beats * beat, starts));
    end += beats * beat;
  }

  private static long ticks(BigFraction quarters) {
    return quarters.multiply(QUARTER).getNumerator().longValueExact();
  }

  /** The tick of a place in a bar played once. */
  public long tick(int bar, double beat) {
    Bar found = bars.stream().filter(b -> b.number() == bar).findFirst().orElseThrow();
    return found.startTick() + Math.round((beat - 1) * ticks(found.meter().feltBeatQuarters()));
  }

  public MusicBuilder mark(String text, int bar) {
    marks.add(new Mark(Mark.Kind.MARKER, tick(bar, 1), text));
    return this;
  }

  /** A note of the celesta (part 0) or the cello (part 1). */
  public MusicBuilder note(int part, int pitch, int bar, double beat, double quarters) {
    long on = tick(bar, beat);
    notes.add(new Note(part, pitch, 80, on, on + Math.round(quarters * QUARTER)));
    return this;
  }

  /** A certain return of a motif, five quarter notes long, its accent the last note. */
  public MusicBuilder motif(String name, int bar, double beat) {
    return motif(name, bar, beat, Certainty.CERTAIN, 1.0);
  }

  public MusicBuilder motif(String name, int bar, double beat, Certainty certainty, double score) {
    return motif(name, tick(bar, beat), 5, 4, certainty, score);
  }

  /** A certain return of so many quarter notes, its accent the last one. */
  public MusicBuilder longMotif(String name, int bar, int quarters) {
    return motif(name, tick(bar, 1), quarters, quarters - 1, Certainty.CERTAIN, 1.0);
  }

  /** A certain return whose accent is its first note. */
  public MusicBuilder motifOnFirst(String name, int bar, double beat) {
    return motif(name, tick(bar, beat), 5, 0, Certainty.CERTAIN, 1.0);
  }

  /** The return added last is played by these parts, in this form. */
  public MusicBuilder played(Form form, Integer... parts) {
    Occurrence last = occurrences.remove(occurrences.size() - 1);
    occurrences.add(
        new Occurrence(
            last.motif(),
            last.number(),
            last.notes(),
            List.of(parts),
            new Variation(List.of(form), 0, form.word()),
            last.score(),
            last.certainty()));
    return this;
  }

  private MusicBuilder motif(
      String name, long start, int count, int accent, Certainty certainty, double score) {
    List<Long> ticks = new ArrayList<>();
    List<Integer> pitches = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ticks.add(start + (long) i * QUARTER);
      pitches.add(72 + i);
    }
    occurrences.add(
        new Occurrence(
            name,
            1,
            new SoundedNotes(ticks, pitches, ticks.get(accent), start + (long) count * QUARTER),
            List.of(0),
            new Variation(List.of(Form.AS_GIVEN), 0, "as given"),
            score,
            certainty));
    return this;
  }

  public MusicBuilder evidence(TempoEvidence.Verdict verdict, String sentence) {
    evidence = new TempoEvidence(0, verdict, sentence);
    return this;
  }

  /** Returns of all motifs in order of time, each motif numbered from 1; possible ones are 0. */
  public List<Occurrence> occurrences() {
    List<Occurrence> inOrder = new ArrayList<>(occurrences);
    inOrder.sort(Comparator.comparingLong(Occurrence::startTick));
    List<Occurrence> numbered = new ArrayList<>();
    for (Occurrence o : inOrder) {
      long earlier =
          numbered.stream().filter(n -> n.motif().equals(o.motif()) && n.number() > 0).count();
      int number = o.certainty() == Certainty.POSSIBLE ? 0 : (int) earlier + 1;
      numbered.add(
          new Occurrence(
              o.motif(), number, o.notes(), o.parts(), o.variation(), o.score(), o.certainty()));
    }
    return numbered;
  }

  public Music build() {
    if (tempo.isEmpty()) {
      tempo.add(new TempoMap.Change(0, Seconds.of(60, 96)));
    }
    TempoMap map = TempoMap.of(QUARTER, tempo);
    BarGrid grid = new BarGrid(bars);
    notes.sort(Comparator.comparingLong(Note::onTick).thenComparingInt(Note::part));
    List<Part> parts =
        List.of(
            new Part(0, "Celesta", "Celesta", 1, 1, false),
            new Part(1, "Cello", "Cello", 2, 2, false));
    Score score =
        new Score(
            1,
            new Division.PerQuarter(QUARTER),
            QUARTER,
            parts,
            notes,
            marks,
            List.of(),
            map,
            tempo.size(),
            1,
            grid,
            end,
            List.of());
    return new Music(score, map, grid, Music.Source.WRITTEN, evidence, "the written tempo is used");
  }
}
