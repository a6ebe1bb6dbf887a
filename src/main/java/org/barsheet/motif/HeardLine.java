package org.barsheet.motif;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.score.Note;

/**
 * The top line of some notes of one part: at each onset the highest note, unless a higher one still
 * sounds.
 *
 * <p>Players overlap notes a little and leave gaps between them: up to a quarter of the shorter
 * note is touch, not music.
 */
public final class HeardLine {

  private static final int TOUCH = 4;

  /** Onsets and lengths as near as 1/96 of a quarter note to its 1/24 are meant to lie on it. */
  private static final int GRID = 24;

  private static final int NEAR_GRID = 96;

  private final int ticksPerQuarter;
  private final List<Note> top = new ArrayList<>();
  private final List<Note> rest = new ArrayList<>();

  /**
   * Follows the top line.
   *
   * @param notes in order of onset, at least one
   */
  public HeardLine(List<Note> notes, int ticksPerQuarter) {
    this.ticksPerQuarter = ticksPerQuarter;
    notes.forEach(this::add);
  }

  private void add(Note note) {
    if (top.isEmpty()) {
      top.add(note);
      return;
    }
    Note last = top.get(top.size() - 1);
    if (note.onTick() == last.onTick() && note.pitch() == last.pitch()) {
      return;
    }
    if (!together(last, note)) {
      top.add(note);
    } else if (note.pitch() <= last.pitch()) {
      rest.add(note);
    } else if (note.onTick() - last.onTick() <= ticksPerQuarter / GRID) {
      rest.add(top.set(top.size() - 1, note));
    } else {
      top.add(note);
      rest.add(last);
    }
  }

  /** Whether two notes sound at once by more than a player's touch. */
  private static boolean together(Note earlier, Note later) {
    long overlap = earlier.offTick() - later.onTick();
    return TOUCH * overlap > Math.min(earlier.lengthTicks(), later.lengthTicks())
        || earlier.onTick() == later.onTick();
  }

  /** Whether no two notes sounded at once. */
  public boolean isSingle() {
    return rest.isEmpty();
  }

  public List<Note> top() {
    return top;
  }

  /** The notes that sounded at the same time as others and are not the top line. */
  public List<Note> rest() {
    return rest;
  }

  /** The top line as a motif: from its first note, small gaps closed. */
  public List<MotifNote> notes() {
    List<MotifNote> notes = new ArrayList<>();
    long start = top.get(0).onTick();
    for (int i = 0; i < top.size(); i++) {
      Note note = top.get(i);
      long length = Math.max(1, note.lengthTicks());
      if (i + 1 < top.size()) {
        long step = Math.max(1, top.get(i + 1).onTick() - note.onTick());
        length = TOUCH * (step - length) <= step ? step : length;
      }
      notes.add(new MotifNote(quarters(note.onTick() - start), quarters(length), note.pitch()));
    }
    return notes;
  }

  private BigFraction quarters(long ticks) {
    long grid = Math.round((double) ticks * GRID / ticksPerQuarter);
    boolean near =
        Math.abs(grid * ticksPerQuarter - ticks * GRID) * NEAR_GRID < (long) ticksPerQuarter * GRID;
    return near && (grid > 0 || ticks == 0)
        ? BigFraction.of((int) grid, GRID)
        : BigFraction.of(ticks).divide(ticksPerQuarter);
  }
}
