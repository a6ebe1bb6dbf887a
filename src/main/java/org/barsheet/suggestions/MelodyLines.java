package org.barsheet.suggestions;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.motif.HeardLine;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;

/**
 * The top lines of all pitched parts one after another, each step between two notes as a number:
 * the interval in scale steps and the time from onset to onset. The same number is the same step.
 */
final class MelodyLines {

  /** Scale steps of 0 to 11 semitones, one each: a sixth from 8 on. */
  private static final int[] STEPS = {0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};

  private static final int GRID = 24;
  private static final int LONGEST_STEP_QUARTERS = 4;

  private final List<Note> notes = new ArrayList<>();
  private final long[] steps;
  private final int[] reach;
  private final boolean[] afterRest;
  private final Leading leading;

  MelodyLines(Score score) {
    leading = new Leading(score);
    List<List<Note>> byPart = score.notesByPart();
    for (Part part : score.parts()) {
      List<Note> own = byPart.get(part.index());
      if (!part.drums() && !own.isEmpty()) {
        notes.addAll(new HeardLine(own, score.ticksPerQuarter()).top());
      }
    }
    steps = new long[notes.size()];
    reach = new int[notes.size()];
    afterRest = new boolean[notes.size()];
    if (afterRest.length > 0) {
      afterRest[0] = true;
    }
    for (int i = notes.size() - 2; i >= 0; i--) {
      fill(i, score.ticksPerQuarter());
    }
  }

  private void fill(int i, int ticksPerQuarter) {
    Note from = notes.get(i);
    Note to = notes.get(i + 1);
    long time = to.onTick() - from.onTick();
    long silence = to.onTick() - from.offTick();
    afterRest[i + 1] = from.part() != to.part() || 4 * silence >= ticksPerQuarter;
    boolean joined =
        from.part() == to.part()
            && silence < ticksPerQuarter
            && time <= (long) LONGEST_STEP_QUARTERS * ticksPerQuarter;
    reach[i] = joined ? reach[i + 1] + 1 : 0;
    int interval = to.pitch() - from.pitch();
    int size = Math.abs(interval);
    int step = Integer.signum(interval) * (STEPS[size % 12] + 7 * (size / 12));
    steps[i] = (GRID * time + ticksPerQuarter / 2) / ticksPerQuarter * 256 + step;
  }

  /** How many notes there are in all lines. */
  int size() {
    return steps.length;
  }

  Note note(int index) {
    return notes.get(index);
  }

  /** The step that follows a note. */
  long step(int index) {
    return steps[index];
  }

  /** Whether a rest or nothing stands before a note. */
  boolean isAfterRest(int index) {
    return afterRest[index];
  }

  /** The share of notes from one on that are in the lead. */
  double onTop(int index, int notes) {
    int top = 0;
    for (int i = index; i < index + notes; i++) {
      top += leading.isOnTop(this.notes.get(i)) ? 1 : 0;
    }
    return top / (double) notes;
  }

  /** Whether all steps from a note on take the same time. */
  boolean isEven(int index, int count) {
    for (int i = index + 1; i < index + count; i++) {
      if (steps[i] >> 8 != steps[index] >> 8 && Math.abs((steps[i] - steps[index]) >> 8) > 1) {
        return false;
      }
    }
    return true;
  }

  /** How much the part of a note is one to lead. */
  double part(int index) {
    return leading.part(notes.get(index).part());
  }

  /** How many steps follow a note before its line breaks. */
  int reach(int index) {
    return reach[index];
  }
}
