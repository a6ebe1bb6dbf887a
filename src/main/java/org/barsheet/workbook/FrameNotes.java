package org.barsheet.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.exposure.SheetNote;
import org.barsheet.exposure.SheetNote.Column;

/** What is written beside the frames, one text a cell. */
final class FrameNotes {

  /** The words of one cell. */
  record Words(String motif, boolean accent, String text) {

    static final Words NONE = new Words("", false, "");

    private Words and(SheetNote note) {
      boolean first = text.isEmpty();
      return new Words(
          motif.isEmpty() ? note.motif() : motif,
          accent || note.accent(),
          first ? note.text() : text + ", " + note.text());
    }
  }

  private record Cell(long frame, Column column) {}

  private final Map<Cell, Words> cells = new HashMap<>();

  FrameNotes(List<SheetNote> notes) {
    for (SheetNote note : notes) {
      cells.merge(
          new Cell(note.frame(), note.column()),
          Words.NONE.and(note),
          (sofar, one) -> sofar.and(note));
    }
  }

  Words at(long frame, Column column) {
    return cells.getOrDefault(new Cell(frame, column), Words.NONE);
  }

  /** Whether a frame must stay in sight even where nothing moves. */
  boolean mustShow(long frame) {
    return !at(frame, Column.ACTION).text().isEmpty() || at(frame, Column.SOUND).accent();
  }
}
