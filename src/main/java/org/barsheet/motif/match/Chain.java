package org.barsheet.motif.match;

/**
 * A pattern laid over a score: which note of the field stands for which note of the pattern.
 *
 * @param pattern what was looked for
 * @param start tick where the pattern begins, also when its first note is missing
 * @param notes for each note of the pattern its note of the field
 * @param cost what the differences cost, in thousandths of a lost inner note
 */
public record Chain(Pattern pattern, long start, Picks notes, int cost) {

  /**
   * The same with every missing note filled in where the part that plays on has exactly one other
   * note at that moment: not lost but changed.
   */
  public Chain withChangedNotes(NoteField field, long tolerance) {
    int[] filled = new int[notes.size()];
    for (int i = 0; i < filled.length; i++) {
      filled[i] = notes.has(i) ? notes.get(i) : changedNote(field, i, tolerance);
    }
    return new Chain(pattern, start, new Picks(filled), cost);
  }

  private int changedNote(NoteField field, int i, long tolerance) {
    int neighbor = neighbor(i);
    long from = start + pattern.onset(i) - tolerance;
    int found = Picks.NONE;
    int onset = field.onsetFrom(from);
    for (; onset < field.onsets() && field.onset(onset) <= from + 2 * tolerance; onset++) {
      for (int note = field.firstNoteAt(onset); note < field.firstNoteAt(onset + 1); note++) {
        if (field.sharePart(note, neighbor)) {
          if (found != Picks.NONE) {
            return Picks.NONE;
          }
          found = note;
        }
      }
    }
    return found;
  }

  /** The note of the field nearest before, else after. */
  private int neighbor(int i) {
    for (int before = i - 1; before >= 0; before--) {
      if (notes.has(before)) {
        return notes.get(before);
      }
    }
    return notes.get(notes.firstPresent());
  }
}
