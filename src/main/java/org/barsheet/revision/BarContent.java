package org.barsheet.revision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What sounds in one bar, whoever plays it: a bar keeps its content when parts change hands, names
 * or order.
 */
final class BarContent {

  /** How far two bars can be alike: thousandths. */
  static final int ALIKE = 1000;

  /** A bar in which nothing begins says little about where it stood. */
  private static final int BOTH_EMPTY = 600;

  /** The same music in another key, or an octave apart. */
  private static final int TRANSPOSED = 850;

  /** Only a bar that has most of its onsets is worth looking at in another key. */
  private static final int WORTH_SHIFTING = 600;

  private static final int PITCHES = 256;
  private static final int DRUM = 128;

  private final long length;

  /** Onset times {@link #PITCHES} and pitch, ascending, each once; a drum's pitch lies higher. */
  private final long[] notes;

  private final long[] onsets;
  private final int hash;

  private BarContent(long length, long[] notes) {
    this.length = length;
    this.notes = notes;
    this.onsets =
        Arrays.stream(notes).map(note -> Math.floorDiv(note, PITCHES)).distinct().toArray();
    this.hash = 31 * Arrays.hashCode(notes) + Long.hashCode(length);
  }

  /** The contents of every bar. */
  static List<BarContent> of(ScoreNotes score) {
    List<BarContent> contents = new ArrayList<>();
    for (int i = 0; i < score.bars().size(); i++) {
      contents.add(new BarContent(score.bars().get(i).length(), notes(score, i, 0)));
    }
    return contents;
  }

  /** The notes of a bar of all parts, each moved later by a number of units. */
  static long[] notes(ScoreNotes score, int bar, long later) {
    return score.parts().stream()
        .flatMapToLong(
            part ->
                part.bars().get(bar).stream().mapToLong(note -> code(note, later, part.drums())))
        .sorted()
        .distinct()
        .toArray();
  }

  private static long code(BarNote note, long later, boolean drum) {
    return (note.at() + later) * PITCHES + note.pitch() + (drum ? DRUM : 0);
  }

  boolean isEmpty() {
    return notes.length == 0;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BarContent content
        && content.hash == hash
        && content.length == length
        && Arrays.equals(content.notes, notes);
  }

  @Override
  public int hashCode() {
    return hash;
  }

  /** How much is the same, 0 to {@link #ALIKE}: the share of notes, in whatever key. */
  int likeness(BarContent other) {
    if (isEmpty() || other.isEmpty()) {
      return isEmpty() && other.isEmpty() ? BOTH_EMPTY : 0;
    }
    int same = share(common(notes, other.notes), notes.length, other.notes.length);
    int rhythm = share(common(onsets, other.onsets), onsets.length, other.onsets.length);
    if (same >= TRANSPOSED || rhythm < WORTH_SHIFTING) {
      return same;
    }
    int shifted = share(mostShifted(other), notes.length, other.notes.length);
    return Math.max(same, shifted * TRANSPOSED / ALIKE);
  }

  private static int share(int common, int one, int other) {
    return 2 * common * ALIKE / (one + other);
  }

  private static int common(long[] one, long[] other) {
    int common = 0;
    for (int i = 0, j = 0; i < one.length && j < other.length; ) {
      if (one[i] == other[j]) {
        common++;
        i++;
        j++;
      } else if (one[i] < other[j]) {
        i++;
      } else {
        j++;
      }
    }
    return common;
  }

  /** The most notes that are the same when all are moved up or down alike. */
  private int mostShifted(BarContent other) {
    int[] shifts = new int[2 * PITCHES];
    for (int i = 0, j = 0; i < notes.length && j < other.notes.length; ) {
      long mine = Math.floorDiv(notes[i], PITCHES);
      long theirs = Math.floorDiv(other.notes[j], PITCHES);
      if (mine < theirs) {
        i++;
      } else {
        for (int k = j;
            mine == theirs
                && k < other.notes.length
                && Math.floorDiv(other.notes[k], PITCHES) == mine;
            k++) {
          shifts[(int) (other.notes[k] - notes[i]) + PITCHES]++;
        }
        if (mine == theirs) {
          i++;
        } else {
          j++;
        }
      }
    }
    return Arrays.stream(shifts).max().orElse(0);
  }
}
