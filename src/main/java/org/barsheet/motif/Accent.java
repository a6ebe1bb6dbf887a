package org.barsheet.motif;

/**
 * The note of a motif that the photograph must land on.
 *
 * @param note 1 for the first note, 2 for the second …, 0 for the last
 */
public record Accent(int note) {

  public static final Accent FIRST = new Accent(1);
  public static final Accent LAST = new Accent(0);

  public Accent {
    if (note < 0) {
      throw new IllegalArgumentException("no note number: " + note);
    }
  }

  /** Index, from 0, in a motif of this many notes; a number past the end means the last note. */
  public int indexIn(int notes) {
    return note == 0 ? notes - 1 : Math.min(note, notes) - 1;
  }

  /** {@code first}, {@code last} or {@code note 3}: what a plan reads. */
  @Override
  public String toString() {
    return note == 0 ? "last" : note == 1 ? "first" : "note " + note;
  }
}
