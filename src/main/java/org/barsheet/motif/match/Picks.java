package org.barsheet.motif.match;

import java.util.Arrays;

/** For each note of a pattern the note of the field that stands for it, or none. */
public final class Picks {

  public static final int NONE = -1;

  private final int[] notes;
  private final int present;

  public Picks(int[] notes) {
    this.notes = notes.clone();
    this.present = (int) Arrays.stream(notes).filter(note -> note != NONE).count();
  }

  public int size() {
    return notes.length;
  }

  /** The note of the field, or {@link #NONE}. */
  public int get(int i) {
    return notes[i];
  }

  public boolean has(int i) {
    return notes[i] != NONE;
  }

  /** The first note of the pattern that is there. */
  public int firstPresent() {
    int i = 0;
    while (!has(i)) {
      i++;
    }
    return i;
  }

  public int present() {
    return present;
  }
}
