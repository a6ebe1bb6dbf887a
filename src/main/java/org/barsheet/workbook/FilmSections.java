package org.barsheet.workbook;

import java.util.List;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.InputFile;
import org.barsheet.plan.Opening;
import org.barsheet.workbook.exposure.ExposureSheets;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.Signs;

/** The sections of the film's sheet below its findings. */
final class FilmSections {

  static final int SIGN = 0;
  private static final int FIRST = 1;
  private static final int SECOND = 2;
  private static final int THIRD = 3;
  private static final int TEXT = 5;
  private static final int LAST = 6;

  private static final double ROW_POINTS = 14;
  private static final double KEPT_TOGETHER_POINTS = 70;

  private static final Look WORDS = Look.BODY.edged(Edges.NONE.bottom(Line.HAIR));

  private final Book book;
  private final ExposureSheets exposures;
  private final SheetPen pen;
  private final double pageRoom;
  private int row;

  FilmSections(Book book, ExposureSheets exposures, SheetPen pen, int firstRow) {
    this.exposures = exposures;
    this.pageRoom = book.portrait().height();
    this.book = book;
    this.pen = pen;
    this.row = firstRow;
  }

  /** The row below all that has been written. */
  int row() {
    return row;
  }

  /** Writes the title of a section; returns the row below it. */
  static int heading(SheetPen pen, int row, String title) {
    pen.row(row, 26);
    Look look = Look.SECTION.edged(Edges.NONE.bottom(Line.HEAVY));
    pen.blanks(SIGN, LAST + 1, look);
    pen.text(SIGN, title, look);
    return row + 1;
  }

  /** A section's title stays on the page of the first lines under it. */
  private void heading(String title) {
    if (pen.pointsOnPage() + pen.rowPoints() > pageRoom - KEPT_TOGETHER_POINTS) {
      pen.breakPage(SheetFrame.TITLE_POINTS);
    }
    row = heading(pen, row, title);
  }

  void openings() {
    List<Opening> openings = book.film().plan().workshop().openings();
    if (openings.isEmpty()) {
      return;
    }
    List<String> unfilled = unfilled(book.film());
    heading("Openings");
    String text =
        unfilled.isEmpty()
            ? "Every opening moves in some panel."
            : "No panel opens " + String.join(", ", unfilled) + ".";
    paragraph(unfilled.isEmpty() ? Signs.DONE : Signs.QUESTION, text);
  }

  /** Names of the openings that no panel moves, in the plan's order. */
  static List<String> unfilled(FilmSheet film) {
    return film.plan().workshop().openings().stream()
        .map(Opening::name)
        .filter(name -> film.reveals().stream().noneMatch(r -> r.opening().name().equals(name)))
        .toList();
  }

  void tempo() {
    heading("Tempo and bars");
    FilmTempo.of(book, this).write();
  }

  /** A line of three short cells and a text. */
  void line(String first, String second, String third, String text) {
    pen.row(row++, ROW_POINTS);
    pen.blanks(FIRST, LAST + 1, WORDS);
    pen.text(FIRST, first, WORDS.inBold());
    pen.text(SECOND, second, WORDS.right());
    pen.text(THIRD, third.isEmpty() ? "" : third + "  ", WORDS.right());
    pen.joined(THIRD + 1, LAST, text, WORDS.wrapped());
  }

  /** Makes the third cell of the last line the frame of a link into the exposures. */
  void linkToFrame(long frame) {
    pen.number(THIRD, frame, WORDS.in(Ink.QUAY).number(Look.WHOLE));
    pen.link(THIRD, exposures.addressOf(frame));
  }

  void settings() {
    heading("Settings");
    for (Settings.Setting setting : Settings.of(book.film().plan())) {
      pen.row(row++, ROW_POINTS);
      Look look = setting.given() ? WORDS : WORDS.in(Ink.PENCIL);
      pen.blanks(FIRST, LAST + 1, WORDS);
      pen.text(FIRST, setting.key(), look);
      pen.label(TEXT, setting.value(), look.wrapped());
      pen.text(LAST, setting.given() ? "from the plan" : "default", look);
    }
  }

  void inputs() {
    heading("Made from");
    for (InputFile input : book.film().inputs()) {
      pen.row(row++, ROW_POINTS);
      pen.blanks(FIRST, LAST + 1, WORDS);
      pen.text(FIRST, input.role(), WORDS);
      pen.joined(SECOND, TEXT - 1, input.name(), WORDS.wrapped());
      pen.text(TEXT, input.sha256(), WORDS.size(8).in(Ink.PENCIL));
    }
    paragraph("", "The long number is the file's SHA-256: same number, same file.");
  }

  void cautions() {
    heading("Before you start");
    Cautions.ALL.forEach(caution -> paragraph("!", caution));
  }

  void paragraph(String sign, String text) {
    Look look = Look.BODY.atTop().wrapped();
    pen.row(row++, ROW_POINTS);
    pen.text(SIGN, sign, look.inBold().centered());
    pen.joined(FIRST, LAST, text, look);
  }
}
