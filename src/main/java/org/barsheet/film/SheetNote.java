package org.barsheet.film;

/**
 * Something written beside a frame of the exposure sheet.
 *
 * @param frame film frame
 * @param column which column it stands in
 * @param motif sign of the motif it belongs to, or ""
 * @param accent whether it is the accent that a reveal lands on
 * @param text what it says
 */
public record SheetNote(long frame, Column column, String motif, boolean accent, String text) {

  /** The columns that hold words. */
  public enum Column {
    /** Bar and beat. */
    BEAT,
    /** What sounds: motif notes, accents, marks. */
    SOUND,
    /** What happens. */
    ACTION
  }
}
