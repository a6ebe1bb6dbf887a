package org.barsheet.workbook;

import java.util.List;
import org.barsheet.film.FilmSheet;
import org.barsheet.shooting.DayLine;
import org.barsheet.shooting.DayLine.Kind;
import org.barsheet.shooting.DaySheet;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.WorkDay;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.SheetWords;

/** A page for each day of the shoot: what is taken when, with which camera and lamps. */
final class DaysWorksheet {

  static final String NAME = "Days";

  private static final int HOURS = 0;
  private static final int CARD = 1;
  private static final int WHAT = 2;
  private static final int BEFORE = 3;
  private static final int CAMERA = 4;
  private static final int LAMPS = 5;
  private static final int COUNT = 6;
  private static final int FIRST = 7;
  private static final int LAST = 8;
  private static final int LENS = 9;
  private static final int WHITE = 13;
  private static final int ROW_NAME = 14;

  private static final List<Column> COLUMNS =
      List.of(
          Column.words("hours", 62),
          Column.words("card", 26),
          Column.words("do, from the top down", 80, 2),
          Column.words("first do this;\nseen open meanwhile", 126, 3),
          Column.words("field, distance\n(estimate), lens", 80),
          Column.words("lamps", 30),
          Column.numbers("photographs", 62),
          Column.words("first reference\nphotograph", 66, 1),
          Column.words("last reference\nphotograph", 66, 1),
          Column.toFillIn("lens", 28, 0),
          Column.toFillIn("aperture", 43, 0),
          Column.toFillIn("shutter", 36, 0),
          Column.toFillIn("ISO", 24, 0),
          Column.toFillIn("white", "white\nbalance", 40, 0),
          Column.rowName());

  private static final double ROW_POINTS = 15;
  private static final double HEADING_POINTS = 26;
  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));
  private static final Look DAY = Look.BODY.inBold().size(11).edged(Edges.NONE.bottom(Line.HEAVY));
  private static final Look SETUP = WORDS.inBold().on(Ink.BAND);

  private final FilmSheet film;
  private final SheetFrame frame;
  private final SheetPen pen;
  private int row = SheetFrame.FIRST_ROW;

  private DaysWorksheet(Book book) {
    this.film = book.film();
    String fact = SheetWords.count(film.shooting().days().size(), "page") + ", one a day";
    this.frame = book.frame(NAME, book.landscape(), COLUMNS, fact);
    this.pen = frame.pen();
  }

  static void write(Book book) {
    new DaysWorksheet(book).write();
  }

  private void write() {
    frame.heading(HEADING_POINTS);
    for (WorkDay day : film.shooting().days()) {
      if (row > SheetFrame.FIRST_ROW) {
        pen.breakPage(SheetFrame.TITLE_POINTS + HEADING_POINTS);
      }
      day(DaySheet.of(film.shooting(), day));
    }
    frame.finish("hours of work since the morning; breaks are not counted");
  }

  private void day(DaySheet day) {
    pen.row(row++, 22);
    pen.joined(
        HOURS, WHITE, day.title() + "   " + SheetWords.count(day.photographs(), "photograph"), DAY);
    day.lines().forEach(line -> line(day, line));
    pen.row(row++, ROW_POINTS);
    Look small = Look.PENCIL.size(8).wrapped();
    pen.joined(HOURS, WHITE, "! " + String.join(" ", day.cautions()), small);
  }

  private void line(DaySheet day, DayLine line) {
    pen.row(row++, line.kind() == Kind.SETUP ? 24 : ROW_POINTS);
    if (line.kind() == Kind.BREAK || line.kind() == Kind.NIGHT) {
      Look look = line.kind() == Kind.NIGHT ? WORDS.inBold() : WORDS.in(Ink.PENCIL);
      pen.blanks(HOURS, ROW_NAME, look);
      pen.joined(CARD, WHITE, line.words(), look);
      return;
    }
    boolean heads = line.kind() == Kind.SETUP;
    Look look = heads ? SETUP : WORDS;
    pen.blanks(HOURS, ROW_NAME, look);
    pen.text(HOURS, line.hours(), look);
    pen.label(CARD, line.label(), look.inBold().in(Ink.QUAY).left());
    pen.text(WHAT, line.words(), look);
    pen.text(BEFORE, line.before(), look);
    Setup setup = film.shooting().setups().get(line.setup() - 1);
    if (heads) {
      pen.text(CAMERA, CameraWords.of(setup, film.plan()), look.size(8));
      pen.text(LAMPS, setup.model().light(), look.size(8));
      for (int column = LENS; column <= WHITE; column++) {
        pen.toFillIn(column, Look.TO_FILL_IN);
      }
      pen.rowName(ROW_NAME, day.title().replaceFirst(",.*", "") + " setup " + setup.name());
    } else {
      pen.number(COUNT, line.taken().size(), look.number(Look.WHOLE));
      pen.text(FIRST, line.first(), look);
      pen.text(LAST, line.taken().size() > 1 ? line.last() : "", look);
    }
  }
}
