package org.barsheet.workbook;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.barsheet.exposure.Movement;
import org.barsheet.photographs.SequenceReport;
import org.barsheet.photographs.SequenceReport.Photo;
import org.barsheet.photographs.TakenPhotographs;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetWords;
import org.barsheet.workbook.pen.Thumbnails;

/** The contact sheet: every photograph that was looked at, small, with what is wrong with it. */
final class PhotographsWorksheet {

  static final String NAME = "Photographs";

  private static final int ACROSS = 6;
  private static final double LINE_POINTS = 13;
  private static final double SECTION_POINTS = 22;
  private static final double CAPTION_POINTS = 12;
  private static final double LEAST_PICTURE_POINTS = 40;

  private static final List<Column> COLUMNS = Collections.nCopies(ACROSS, Column.words("", 110, 1));

  private static final Look FAULT = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));
  private static final Look CAPTION = Look.BODY.size(8);

  private final Book book;
  private final TakenPhotographs taken;
  private final SheetFrame frame;
  private final Thumbnails thumbnails;
  private int row = SheetFrame.HEADING_ROW;

  private PhotographsWorksheet(Book book) {
    this.book = book;
    this.taken = book.film().taken();
    this.frame = book.frame(NAME, book.landscape(), COLUMNS, fact());
    this.thumbnails = new Thumbnails(book, frame);
  }

  /** Writes the sheet, if any photograph was looked at. */
  static void write(Book book) {
    if (!book.film().taken().reports().isEmpty()) {
      new PhotographsWorksheet(book).write();
    }
  }

  private String fact() {
    int planned = 0;
    int there = 0;
    for (Movement movement : book.film().movements()) {
      planned += movement.photographs().size();
      there +=
          (int)
              movement.photographs().stream()
                  .filter(one -> taken.has(one.photograph().name()))
                  .count();
    }
    return there + " of " + SheetWords.count(planned, "photograph") + " taken";
  }

  private void write() {
    List<String> again = taken.again();
    whole(
        again.isEmpty() ? "Nothing must be taken again" : "Take again: " + String.join(", ", again),
        Look.BODY.inBold().wrapped(),
        LINE_POINTS * (1 + String.join(", ", again).length() / 130));
    taken.reports().forEach(this::sequence);
    frame.finish("√ nothing wrong, ! see the lines above; px in the photograph");
  }

  private void whole(String words, Look look, double points) {
    frame.pen().row(row++, points);
    frame.pen().joined(0, ACROSS - 1, words, look);
  }

  private void sequence(SequenceReport report) {
    String missing =
        report.missing().isEmpty() ? "" : "; missing: " + String.join(", ", report.missing());
    whole(
        report.sequence()
            + ", "
            + SheetWords.count(report.photographs().size(), "photograph")
            + missing,
        Look.SECTION,
        SECTION_POINTS);
    for (SequenceReport.Wrong wrong : report.faults()) {
      String words = "! " + wrong.sentence() + ". " + wrong.remedy();
      whole(words, FAULT, LINE_POINTS * (1 + words.length() / 140));
    }
    for (String sentence : report.cleanup()) {
      whole("to paint out, " + sentence, Look.PENCIL, LINE_POINTS);
    }
    List<Photo> photographs = report.photographs();
    for (int from = 0; from < photographs.size(); from += ACROSS) {
      strip(photographs.subList(from, Math.min(photographs.size(), from + ACROSS)));
    }
  }

  private void strip(List<Photo> strip) {
    double highPerWide = (double) strip.get(0).height() / strip.get(0).width();
    double points = Math.max(LEAST_PICTURE_POINTS, frame.columns().points(0) * highPerWide);
    int pictures = row++;
    frame.pen().row(pictures, points);
    for (int column = 0; column < strip.size(); column++) {
      Photo photo = strip.get(column);
      int at = column;
      frame.pen().blank(column, Look.BODY);
      taken
          .small(photo.name())
          .ifPresent(
              jpeg ->
                  thumbnails.place(
                      jpeg, (double) photo.height() / photo.width(), pictures, at, points));
    }
    frame.pen().row(row++, CAPTION_POINTS);
    for (int column = 0; column < strip.size(); column++) {
      Photo photo = strip.get(column);
      boolean good = photo.marks().isEmpty();
      frame.pen().text(column, caption(photo), good ? CAPTION : CAPTION.inBold().in(Ink.RUST));
    }
  }

  private static String caption(Photo photo) {
    String number = photo.name().substring(photo.name().lastIndexOf(' ') + 1);
    if (photo.marks().isEmpty()) {
      return "√ " + number;
    }
    double moved = Math.hypot(photo.right(), photo.down());
    String camera =
        photo.marks().contains("camera") ? String.format(Locale.ROOT, " (%.1f px)", moved) : "";
    return "! " + number + " " + String.join(", ", photo.marks()) + camera;
  }
}
