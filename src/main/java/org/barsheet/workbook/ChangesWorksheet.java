package org.barsheet.workbook;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.barsheet.changes.ChangeLine;
import org.barsheet.changes.Changes;
import org.barsheet.changes.PhotographChange.Use;
import org.barsheet.changes.Told;
import org.barsheet.film.News;
import org.barsheet.ticks.Taken;
import org.barsheet.workbook.pen.Address;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.SheetWords;

/** What moved since the sheets were last made, and which photographs still serve. */
final class ChangesWorksheet {

  static final String NAME = "Changes";

  private static final int WHO = 0;
  private static final int KIND = 1;
  private static final int WHICH = 2;
  private static final int BEFORE = 3;
  private static final int NOW = 4;
  private static final int LATER = 5;
  private static final int REMEDY = 6;

  private static final List<Column> COLUMNS =
      List.of(
          Column.words("who must know", 60),
          Column.words("what", 50),
          Column.words("which", 110, 2),
          Column.words("before", 120, 3),
          Column.words("now", 120, 3),
          Column.numbers("frames later", 54),
          Column.words("what to do", 120, 3));

  private static final double ROW_POINTS = 14;

  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));

  private ChangesWorksheet() {}

  /** Writes the sheet, if the film is compared with an earlier one and anything moved. */
  static void write(Book book) {
    book.film().news().filter(news -> !news.changes().isNone()).ifPresent(n -> write(book, n));
  }

  private static void write(Book book, News news) {
    Changes changes = news.changes();
    SheetFrame frame = book.frame(NAME, book.landscape(), COLUMNS, fact(changes));
    frame.heading(16);
    int row = SheetFrame.FIRST_ROW;
    for (ChangeLine line : changes.lines()) {
      line(frame.pen().row(row++, ROW_POINTS), line);
    }
    Taken ticks = book.film().ticks();
    for (Map.Entry<String, String> tick : ticks.renamed().entrySet()) {
      String now = "the tick holds for " + tick.getValue();
      tick(frame.pen().row(row++, ROW_POINTS), tick.getKey(), now, "rename the file");
    }
    for (String photograph : ticks.lost()) {
      String now = "no photograph looks like it: the tick doesn't hold";
      tick(frame.pen().row(row++, ROW_POINTS), photograph, now, "keep the file; take the new ones");
    }
    int last = Math.max(SheetFrame.FIRST_ROW, row - 1);
    book.name("Changes_table", new Address(NAME, SheetFrame.HEADING_ROW, WHO), last, REMEDY);
    frame.sheet().setAutoFilter(new CellRangeAddress(SheetFrame.HEADING_ROW, last, WHO, REMEDY));
    frame.finish("compared with " + news.since() + "; minus means earlier");
  }

  private static void line(SheetPen pen, ChangeLine line) {
    pen.text(WHO, line.who(), WORDS.inBold());
    pen.text(KIND, line.kind().name().toLowerCase(Locale.ROOT), WORDS);
    pen.text(WHICH, line.name(), WORDS.inBold());
    pen.text(BEFORE, line.before(), WORDS);
    pen.text(NOW, line.now(), WORDS);
    if (line.later().isPresent()) {
      pen.number(LATER, line.later().getAsLong(), WORDS.number(Look.WHOLE));
    } else {
      pen.blank(LATER, WORDS);
    }
    pen.text(REMEDY, line.remedy(), WORDS);
  }

  private static void tick(SheetPen pen, String photograph, String now, String remedy) {
    pen.text(WHO, Told.ANIMATOR, WORDS.inBold());
    pen.text(KIND, "tick", WORDS);
    pen.text(WHICH, photograph, WORDS.inBold());
    pen.text(BEFORE, "ticked", WORDS);
    pen.text(NOW, now, WORDS);
    pen.blank(LATER, WORDS);
    pen.text(REMEDY, remedy, WORDS);
  }

  private static String fact(Changes changes) {
    return SheetWords.count(changes.panels().size(), "panel")
        + " changed, "
        + changes.count(Use.STILL_SERVES)
        + " of "
        + SheetWords.count(changes.photographs().size(), "photograph")
        + " still usable";
  }
}
