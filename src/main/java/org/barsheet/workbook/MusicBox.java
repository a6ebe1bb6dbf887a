package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;

/**
 * Something drawn over the cells of a system.
 *
 * @param from its first cell
 * @param to its last cell, at least {@code from}
 * @param goesOnFrom whether it began in the system before
 * @param text what it says
 * @param textAt the cell where the text begins: {@code from}, or the cell after the box
 * @param lastTaken the last cell that box or text needs
 * @param lands whether a photograph lands at its end
 */
record MusicBox(
    int from, int to, boolean goesOnFrom, String text, int textAt, int lastTaken, boolean lands) {

  private boolean collides(MusicBox other) {
    return from <= other.lastTaken && other.from <= lastTaken;
  }

  /** Spreads boxes over lines on which none collide, each on the first line that has room. */
  static List<List<MusicBox>> lines(List<MusicBox> boxes) {
    List<List<MusicBox>> lines = new ArrayList<>();
    for (MusicBox box : boxes) {
      lineFor(box, lines).add(box);
    }
    return lines;
  }

  private static List<MusicBox> lineFor(MusicBox box, List<List<MusicBox>> lines) {
    for (List<MusicBox> line : lines) {
      if (line.stream().noneMatch(box::collides)) {
        return line;
      }
    }
    List<MusicBox> line = new ArrayList<>();
    lines.add(line);
    return line;
  }
}
