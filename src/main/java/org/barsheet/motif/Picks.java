package org.barsheet.motif;

/** For each note of a pattern the note of the field that stands for it, or none. */
final class Picks {

  static final int NONE = -1;

  private final int[] notes;

  Picks(int[] notes) {
    this.notes = notes.clone();
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
    int count = 0;
    for (int note : notes) {
      count += note == NONE ? 0 : 1;
    }
    return count;
  }
}
