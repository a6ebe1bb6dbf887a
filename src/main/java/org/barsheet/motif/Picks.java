package org.barsheet.motif;

import java.util.Arrays;

/** For each note of a pattern the note of the field that stands for it, or none. */
final class Picks {

  static final int NONE = -1;

  private final int[] notes;
  private final int present;

  Picks(int[] notes) {
    this.notes = notes.clone();
    this.present = (int) Arrays.stream(notes).filter(note -> note != NONE).count();
  }

  int size() {
    return notes.length;
  }

  /** The note of the field, or {@link #NONE}. */
  int get(int i) {
    return notes[i];
  }

  boolean has(int i) {
    return notes[i] != NONE;
  }

  /** The first note of the pattern that is there. */
  int firstPresent() {
    int i = 0;
    while (!has(i)) {
      i++;
    }
    return i;
  }

  int present() {
    return present;
  }
}
