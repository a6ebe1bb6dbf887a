package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.calls.Call;
import org.barsheet.calls.CallAppearance;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;

/** The calls on one sheet: when a performer is seen, what to do, what to send, cautions. */
final class CallWorksheet {

  private static final int FIRST = 0;
  private static final int LAST_FACT = 8;
  private static final int BY = 9;
  private static final int ROW_NAME = 10;

  private static final double ROW_POINTS = 12;
  private static final double HEADING_POINTS = 26;
  private static final double SECTION_POINTS = 16;

  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));
  private static final Look SECTION = Look.SECTION.edged(Edges.NONE.bottom(Line.HEAVY));

  private final SheetFrame frame;
  private final SheetPen pen;
  private int row;

  CallWorksheet(Book book, String name, String fact) {
    this.frame = book.frame(name, book.landscape(), columns(), fact);
    this.pen = frame.pen();
    frame.heading(HEADING_POINTS);
  }

  private static List<Column> columns() {
    double[] points = {150, 90, 50, 60, 50, 50, 54, 100, 84};
    double[] stretch = {3, 1, 0, 0, 0, 0, 0, 0, 0};
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < points.length; i++) {
      columns.add(Column.words(CallAppearance.HEADINGS.get(i), points[i], stretch[i]));
    }
    columns.add(Column.toFillIn("send it by", 56, 1));
    columns.add(Column.rowName());
    return columns;
  }

  /** How many rows a call takes, the one with the name over it left out. */
  static int rows(Call call) {
    int rows = Math.max(1, call.seen().size());
    for (Call.Section section : sections(call)) {
      rows += 1 + section.lines().size();
    }
    return rows;
  }

  private static List<Call.Section> sections(Call call) {
    List<Call.Section> sections = new ArrayList<>(call.instructions());
    sections.addAll(Call.CAUTIONS);
    return sections;
  }

  /** Writes a call below others, on a page of its own, with its name over it. */
  void writeBelow(Call call, int firstRow) {
    if (firstRow > SheetFrame.FIRST_ROW) {
      pen.breakPage(SheetFrame.TITLE_POINTS + HEADING_POINTS);
    }
    pen.row(firstRow, SECTION_POINTS);
    section(call.performer().name() + " · " + call.about());
    write(call, firstRow + 1);
  }

  void write(Call call, int firstRow) {
    row = firstRow;
    call.seen().forEach(appearance -> line(call, appearance));
    if (call.seen().isEmpty()) {
      pen.row(row++, ROW_POINTS);
      pen.joined(FIRST, BY, Call.NOT_SEEN, Look.BODY);
    }
    for (Call.Section section : sections(call)) {
      pen.row(row++, SECTION_POINTS);
      section(section.heading());
      for (String words : section.lines()) {
        pen.row(row++, ROW_POINTS);
        pen.joined(FIRST, BY, words, Look.BODY.wrapped());
      }
    }
  }

  private void section(String heading) {
    pen.text(FIRST, heading, SECTION).blanks(FIRST + 1, BY + 1, SECTION);
  }

  private void line(Call call, CallAppearance appearance) {
    pen.row(row++, ROW_POINTS);
    List<String> cells = appearance.cells();
    for (int column = FIRST; column <= LAST_FACT; column++) {
      pen.text(column, cells.get(column), column == FIRST ? WORDS.inBold() : WORDS);
    }
    pen.toFillIn(BY, Look.TO_FILL_IN);
    pen.rowName(
        ROW_NAME,
        "panel "
            + appearance.panel()
            + " "
            + call.performer().name()
            + " in "
            + appearance.opening());
  }

  void finish() {
    frame.finish("times are minutes:seconds of the sound file you play along with");
  }
}
