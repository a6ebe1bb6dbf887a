package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.barsheet.cues.FilmBar;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.PageSize;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetWords;
import org.barsheet.workbook.pen.Signs;

/**
 * The piece at a glance: systems of four bars, as on a printed score, with the panels over their
 * bars and the occurrences and reveals below them.
 */
final class MusicWorksheet {

  static final String NAME = "Music";

  private static final int BARS_A_SYSTEM = 4;

  /** A bar is drawn on so many cells: a number that divides into two, three, four and six beats. */
  static final int CELLS_A_BAR = 24;

  private static final int CELLS = BARS_A_SYSTEM * CELLS_A_BAR;
  private static final double GAP_POINTS = 10;

  private final Book book;
  private final SheetFrame frame;
  private final double room;

  private MusicWorksheet(Book book) {
    this.book = book;
    PageSize page = book.landscape();
    Column cell = Column.words("", page.width() / CELLS);
    this.frame = book.frame(NAME, page, Collections.nCopies(CELLS, cell), fact(book));
    this.room = page.height() - SheetFrame.TITLE_POINTS - GAP_POINTS;
  }

  private static String fact(Book book) {
    List<FilmBar> bars = book.film().timing().bars();
    FilmBar first = bars.get(Math.min(1, bars.size() - 1));
    long start = book.film().timing().clock().musicStartFrame();
    return "begins at "
        + SheetWords.plain(first.beatsPerMinute().doubleValue())
        + " bpm = "
        + first.framesPerBeat()
        + " frames per beat   "
        + first.bar().meter()
        + "   music starts on frame "
        + start
        + " ("
        + book.film().plan().film().timecode(start)
        + ")";
  }

  static void write(Book book) {
    new MusicWorksheet(book).write();
  }

  private void write() {
    frame.pen().row(SheetFrame.HEADING_ROW, GAP_POINTS);
    List<FilmBar> bars = book.film().timing().bars();
    MusicSpans spans = new MusicSpans(book.film());
    int row = SheetFrame.FIRST_ROW;
    double used = 0;
    for (int from = 0; from < bars.size(); from += BARS_A_SYSTEM) {
      List<FilmBar> four = bars.subList(from, Math.min(bars.size(), from + BARS_A_SYSTEM));
      MusicSystem system = new MusicSystem(book, spans, four, frame.columns().points(0));
      MusicSystemWriter writer = new MusicSystemWriter(book, system);
      if (used > 0 && used + writer.height() > room) {
        frame.sheet().setRowBreak(row - 1);
        used = 0;
      }
      row = writer.write(frame.pen(), row);
      used += writer.height();
    }
    frame.finish(legend());
  }

  private String legend() {
    List<String> words = new ArrayList<>();
    words.add("thick edge: cut   " + Signs.ACCENT + " landing");
    words.add("all bars are drawn the same width; see Timeline and Bars for frames");
    return String.join("   ", words) + book.index().motifLegend();
  }
}
