package org.barsheet.workbook;

import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.exposure.Movement;
import org.barsheet.plan.MotionWords;
import org.barsheet.plan.Opening;
import org.barsheet.workbook.pen.Address;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.SheetWords;
import org.barsheet.workbook.pen.Signs;

/** Every opening, and how far it stands open in every shot. */
final class OpeningsWorksheet {

  static final String NAME = "Openings";

  private static final int OPENING = 0;
  private static final int MODEL = 1;
  private static final int MOTION = 2;
  private static final int MOVEMENT = 3;
  private static final int PHOTOGRAPHS = 4;
  private static final int PANELS = 5;
  private static final int STATES = 6;
  private static final int PERFORMERS = 7;
  private static final int NOTES = 8;
  private static final int ROW_NAME = 9;

  private static final List<Column> COLUMNS =
      List.of(
          Column.words("opening", 66, 1),
          Column.words("model", 62, 1),
          Column.words("how it moves", 86, 2),
          Column.words("movement", 62, 1),
          Column.numbers("photographs", 60),
          Column.words("moves\nin panel", 54, 1),
          Column.words("how far open, panel by panel", 120, 3),
          Column.words("seen in it", 60, 2),
          Column.toFillIn("notes", 60, 2),
          Column.rowName());

  private static final double ROW_POINTS = 14;

  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));

  private final Book book;
  private final SheetFrame frame;
  private final SheetPen pen;
  private final List<Opening> openings;

  private OpeningsWorksheet(Book book) {
    this.book = book;
    this.openings = book.film().plan().workshop().openings();
    this.frame =
        book.frame(NAME, book.landscape(), COLUMNS, SheetWords.count(openings.size(), "opening"));
    this.pen = frame.pen();
  }

  static void write(Book book) {
    new OpeningsWorksheet(book).write();
  }

  private void write() {
    frame.heading(26);
    int row = SheetFrame.FIRST_ROW;
    for (Opening opening : openings) {
      line(row++, opening);
    }
    int last = Math.max(SheetFrame.FIRST_ROW, row - 1);
    book.name("Openings_table", new Address(NAME, SheetFrame.HEADING_ROW, OPENING), last, ROW_NAME);
    book.name("Openings_notes", new Address(NAME, SheetFrame.FIRST_ROW, NOTES), last, NOTES);
    frame.finish("photographs include the closed one, 000");
  }

  private void line(int row, Opening opening) {
    List<Movement> movements =
        book.film().movements().stream()
            .filter(movement -> movement.openings().contains(opening.name()))
            .toList();
    String names = movements.stream().map(Movement::name).collect(Collectors.joining(", "));
    pen.row(row, ROW_POINTS);
    pen.text(OPENING, opening.name(), WORDS.inBold());
    pen.text(MODEL, opening.model(), WORDS);
    pen.text(MOTION, MotionWords.of(opening.motion()), WORDS);
    pen.text(MOVEMENT, names, WORDS);
    long photographs =
        movements.stream().mapToLong(movement -> movement.photographs().size()).sum();
    pen.number(PHOTOGRAPHS, photographs, WORDS.number(Look.WHOLE));
    pen.label(PANELS, panels(opening), WORDS);
    pen.text(STATES, OpeningWords.of(book.film(), opening), WORDS);
    pen.text(PERFORMERS, performers(opening), WORDS);
    pen.toFillIn(NOTES, Look.TO_FILL_IN);
    pen.rowName(ROW_NAME, opening.name());
  }

  private String panels(Opening opening) {
    String panels =
        book.film().reveals().stream()
            .filter(reveal -> reveal.opening().name().equals(opening.name()))
            .map(reveal -> book.index().shot(reveal.shot()).panel().name())
            .distinct()
            .collect(Collectors.joining(", "));
    return panels.isEmpty() ? Signs.QUESTION + " none" : panels;
  }

  private String performers(Opening opening) {
    return book.film().appearances().stream()
        .filter(appearance -> appearance.opening().name().equals(opening.name()))
        .map(
            appearance ->
                appearance.performer().name()
                    + " in "
                    + book.index().shot(appearance.shot()).panel().name())
        .distinct()
        .collect(Collectors.joining(", "));
  }
}
