package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Division;
import org.barsheet.score.Meter;
import org.barsheet.score.Note;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/**
 * Freely played music as it might be written down: a felt beat is one note value, and every note
 * lies on the nearest of its divisions.
 */
public final class Quantised {

  /** Ticks to a felt beat: divides into halves, thirds, quarters, sixths and eighths. */
  private static final int BEAT = 480;

  /** Into how many a beat may be divided, and what that costs in shares of a beat. */
  private static final int[] DIVISIONS = {4, 3, 8, 6};

  private static final double[] COSTS = {0, 0.01, 0.03, 0.03};

  private final Music music;
  private final long[] beats;
  private final int[] divisions;

  private Quantised(Music music) {
    this.music = music;
    this.beats = music.beats().stream().mapToLong(Beat::tick).toArray();
    this.divisions = divisions();
  }

  /** Quantises music of two beats or more; a quarter note of the result is a felt beat. */
  public static Quantised of(Music music) {
    return new Quantised(music);
  }

  /** Whether music has beats enough to be quantised. */
  public static boolean isPossible(Music music) {
    return music.beats().size() > 1;
  }

  /** For each beat the division that its notes lie nearest to. */
  private int[] divisions() {
    TreeMap<Integer, List<Double>> offsets = new TreeMap<>();
    for (Note note : music.score().notes()) {
      double place = place(note.onTick());
      int beat = (int) Math.floor(place);
      offsets.computeIfAbsent(beat, b -> new ArrayList<>()).add(place - beat);
    }
    int[] chosen = new int[beats.length];
    Arrays.fill(chosen, DIVISIONS[0]);
    offsets.forEach(
        (beat, own) -> {
          if (beat >= 0 && beat < chosen.length) {
            chosen[beat] = division(own);
          }
        });
    return chosen;
  }

  private static int division(List<Double> offsets) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < DIVISIONS.length; i++) {
      double cost = COSTS[i];
      for (double offset : offsets) {
        double off = offset * DIVISIONS[i] - Math.round(offset * DIVISIONS[i]);
        cost += Math.abs(off) / DIVISIONS[i] / offsets.size();
      }
      if (cost < least) {
        least = cost;
        best = i;
      }
    }
    return DIVISIONS[best];
  }

  /** A tick in beats from the first one; beats before and after it are as long as the nearest. */
  private double place(long tick) {
    int next = Arrays.binarySearch(beats, tick);
    int before = next >= 0 ? next : -next - 2;
    int from = Math.max(0, Math.min(beats.length - 2, before));
    return from + (tick - beats[from]) / (double) (beats[from + 1] - beats[from]);
  }

  /**
   * The notes on the nearest divisions, none shorter than one, from the beat on which or before
   * which the first lies.
   */
  public Score score() {
    long start = start();
    List<Note> notes = new ArrayList<>();
    for (Note note : music.score().notes()) {
      long on = snapped(note.onTick()) - start;
      long least = BEAT / divisionAt((int) Math.floor(place(note.onTick())));
      long off = Math.max(on + least, snapped(note.offTick()) - start);
      notes.add(new Note(note.part(), note.pitch(), note.velocity(), on, off));
    }
    notes.sort(
        Comparator.comparingLong(Note::onTick)
            .thenComparingInt(Note::part)
            .thenComparingInt(Note::pitch));
    return score(notes);
  }

  /** One long bar at a constant tempo: what counts is where the notes lie among the beats. */
  private Score score(List<Note> notes) {
    long end = notes.stream().mapToLong(Note::offTick).max().orElse(BEAT);
    TempoMap tempo = TempoMap.of(BEAT, List.of(new TempoMap.Change(0, Seconds.of(1, 2))));
    Bar bar = Bar.counted(0, Meter.COMMON, 0, end, BEAT);
    return new Score(
        music.score().format(),
        new Division.PerQuarter(BEAT),
        BEAT,
        music.score().parts(),
        notes,
        List.of(),
        List.of(),
        tempo,
        0,
        0,
        new BarGrid(List.of(bar)),
        end,
        List.of());
  }

  /** Where the first note's beat begins, in quantised ticks from the first beat found. */
  private long start() {
    return music.score().notes().stream()
        .findFirst()
        .map(note -> Math.min(0, Math.floorDiv(snapped(note.onTick()), BEAT) * (long) BEAT))
        .orElse(0L);
  }

  private long snapped(long tick) {
    double place = place(tick);
    int beat = (int) Math.floor(place);
    int division = divisionAt(beat);
    return (long) beat * BEAT + Math.round((place - beat) * division) * (BEAT / division);
  }

  private int divisionAt(int beat) {
    return beat >= 0 && beat < divisions.length ? divisions[beat] : DIVISIONS[0];
  }

  /** The tick of the playing that stands where a tick of the quantised score does. */
  public long playedTick(long quantisedTick) {
    double place = (quantisedTick + start()) / (double) BEAT;
    int from = (int) Math.max(0, Math.min(beats.length - 2, Math.floor(place)));
    double tick = beats[from] + (place - from) * (beats[from + 1] - beats[from]);
    return Math.max(0, Math.round(tick));
  }
}
