package org.barsheet.motif;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.score.Score;

/** Random counterpoint, random motifs, and motifs planted in it. */
public final class PlantedMotifs {

  private static final int[] SCALE = {0, 2, 4, 5, 7, 9, 11};
  private static final long EIGHTH = ScoreSketch.TICKS_PER_QUARTER / 2;
  private static final int EIGHTHS = 240;

  private final SplittableRandom random;
  private final List<List<long[]>> parts = new ArrayList<>();

  public PlantedMotifs(SplittableRandom random) {
    this.random = random;
    for (int part = 0; part < 3; part++) {
      parts.add(counterpoint(42 - 7 * part));
    }
  }

  /** A line that walks about a scale in eighths, quarters and halves. */
  private List<long[]> counterpoint(int middle) {
    List<long[]> line = new ArrayList<>();
    int step = middle;
    for (long at = 0; at < EIGHTHS; ) {
      step = Math.max(middle - 6, Math.min(middle + 6, step + random.nextInt(-3, 4)));
      long length = 1L << random.nextInt(3);
      line.add(new long[] {pitch(step), at * EIGHTH, (at + length) * EIGHTH});
      at += length;
    }
    return line;
  }

  private static int pitch(int step) {
    return SCALE[step % 7] + 12 * (step / 7);
  }

  /** A motif of 10 to 14 notes of several lengths. */
  public static List<MotifNote> motif(SplittableRandom random) {
    StringBuilder notes = new StringBuilder();
    int step = 35;
    for (int i = random.nextInt(10, 15); i > 0; i--) {
      step = Math.max(29, Math.min(41, step + random.nextInt(-4, 5)));
      String[] values = {"/16", "/8", "/8", "/4", "/4+8"};
      notes
          .append(Notes.name(pitch(step)))
          .append(values[random.nextInt(values.length)])
          .append(' ');
    }
    return Notes.parse(notes.toString());
  }

  /** Puts a line into one part, whose own notes give way, at an eighth note. */
  public long plant(int part, int eighth, List<MotifNote> line) {
    long start = eighth * EIGHTH;
    MotifNote last = line.get(line.size() - 1);
    long end = start + ticks(last.onset().add(last.length()));
    parts.get(part).removeIf(note -> note[2] > start && note[1] < end);
    for (MotifNote note : line) {
      long on = start + ticks(note.onset());
      parts.get(part).add(new long[] {note.pitch(), on, on + ticks(note.length())});
    }
    return start;
  }

  private static long ticks(BigFraction quarters) {
    return Math.round(quarters.doubleValue() * ScoreSketch.TICKS_PER_QUARTER);
  }

  /** The score with its parts in an order. */
  public Score score(int... order) {
    ScoreSketch sketch = new ScoreSketch();
    for (int part : order) {
      sketch.part("part " + part);
      parts.get(part).forEach(note -> sketch.note((int) note[0], note[1], note[2]));
    }
    return sketch.score();
  }

  /** All parts in one. */
  public Score merged() {
    ScoreSketch sketch = new ScoreSketch().part("all");
    for (List<long[]> part : parts) {
      part.forEach(note -> sketch.note((int) note[0], note[1], note[2]));
    }
    return sketch.score();
  }

  /** The score and a part of random notes more. */
  Score withMore() {
    parts.add(counterpoint(38));
    return score(0, 1, 2, 3);
  }
}
