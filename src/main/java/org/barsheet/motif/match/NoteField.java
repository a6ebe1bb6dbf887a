package org.barsheet.motif.match;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.barsheet.notation.WrittenMusic;
import org.barsheet.notation.WrittenNote;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/**
 * All pitched notes of a score in order of onset, a unison of several parts once. Ticks are those
 * of the notes as written.
 *
 * <p>Parts are kept as bits of a long, so in a score of more than 64 parts two that lie 64 apart
 * count as one while lines are followed; which parts play a return is read from the score again.
 */
public final class NoteField {

  private static final Comparator<WrittenNote> BY_PLACE =
      Comparator.comparing(
              WrittenNote::written,
              Comparator.comparingLong(Note::onTick).thenComparingInt(Note::pitch))
          .thenComparingLong(note -> note.played().onTick());

  private final long[] on;
  private final long[] length;
  private final long[] shortest;
  private final int[] pitch;
  private final long[] parts;
  private final List<WrittenNote> sources;
  private final int[] firstSource;
  private final long[] onsets;
  private final int[] first;
  private final boolean severalParts;
  private final PartRests rests;

  private NoteField(List<WrittenNote> notes) {
    int most = notes.size();
    sources = notes;
    firstSource = new int[most + 1];
    on = new long[most];
    length = new long[most];
    shortest = new long[most];
    pitch = new int[most];
    parts = new long[most];
    severalParts = notes.stream().mapToInt(note -> note.played().part()).distinct().count() > 1;
    int size = fill(notes);
    first = new int[size + 1];
    onsets = index(size);
    rests = severalParts ? PartRests.of(this) : PartRests.NONE;
  }

  /** The notes of a score where they are played. */
  public static NoteField of(Score score) {
    return of(score, score.notes().stream().map(note -> new WrittenNote(note, note)));
  }

  /** The notes of a score where they are written. */
  public static NoteField of(Score score, WrittenMusic written) {
    return of(score, written.notes().stream());
  }

  private static NoteField of(Score score, Stream<WrittenNote> notes) {
    return new NoteField(
        notes
            .filter(note -> !score.parts().get(note.written().part()).drums())
            .sorted(BY_PLACE)
            .toList());
  }

  /** Fills the columns and returns how many notes are left once unisons are one. */
  private int fill(List<WrittenNote> notes) {
    int last = -1;
    for (int source = 0; source < notes.size(); source++) {
      Note note = notes.get(source).written();
      boolean unison = last >= 0 && on[last] == note.onTick() && pitch[last] == note.pitch();
      if (!unison) {
        last++;
        on[last] = note.onTick();
        pitch[last] = note.pitch();
        shortest[last] = note.lengthTicks();
        firstSource[last] = source;
      }
      shortest[last] = Math.min(shortest[last], note.lengthTicks());
      length[last] = Math.max(length[last], note.lengthTicks());
      parts[last] |= 1L << note.part();
    }
    firstSource[last + 1] = notes.size();
    return last + 1;
  }

  private long[] index(int size) {
    long[] distinct = new long[size];
    int count = 0;
    for (int i = 0; i < size; i++) {
      if (i == 0 || on[i] != on[i - 1]) {
        first[count] = i;
        distinct[count] = on[i];
        count++;
      }
    }
    first[count] = size;
    return Arrays.copyOf(distinct, count);
  }

  /** How many notes there are. */
  public int size() {
    return first[onsets.length];
  }

  /** How many different onsets there are. */
  public int onsets() {
    return onsets.length;
  }

  public long onset(int index) {
    return onsets[index];
  }

  /** The first note at an onset; the notes up to that of the next onset begin together. */
  public int firstNoteAt(int onset) {
    return first[onset];
  }

  public long onTick(int note) {
    return on[note];
  }

  /** In a unison of several parts the longest; else its only length. */
  public long length(int note) {
    return length[note];
  }

  /** In a unison of several parts the shortest; else its only length. */
  long shortestLength(int note) {
    return shortest[note];
  }

  public int pitch(int note) {
    return pitch[note];
  }

  /** Whether one part plays both notes. */
  boolean sharePart(int note, int other) {
    return (parts[note] & parts[other]) != 0;
  }

  /** Whether one part rests as soon as another takes over from it, which rested until then. */
  boolean takesOver(int note, int other) {
    return rests.takesOver(note, other);
  }

  /** The notes of the score that this one stands for, more than one in a unison. */
  public List<WrittenNote> sources(int note) {
    return sources.subList(firstSource[note], firstSource[note + 1]);
  }

  /** Where a note is played, the earliest of a unison. */
  public long playedOn(int note) {
    return sources.get(firstSource[note]).played().onTick();
  }

  /** Where a note that is played ends, the last of a unison. */
  public long playedOff(int note) {
    return sources(note).stream().mapToLong(one -> one.played().offTick()).max().orElseThrow();
  }

  public boolean hasSeveralParts() {
    return severalParts;
  }

  /** The first onset at or after a tick; {@link #onsets()} if there is none. */
  public int onsetFrom(long tick) {
    int found = Arrays.binarySearch(onsets, tick);
    return found >= 0 ? found : -found - 1;
  }
}
