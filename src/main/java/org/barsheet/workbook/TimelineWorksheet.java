package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureSheets;
import org.barsheet.workbook.pen.Address;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Drawings;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.LengthBar;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.SheetPlaces;
import org.barsheet.workbook.pen.SheetWords;
import org.barsheet.workbook.pen.Signs;

/** Where each panel is and why, one line a panel. */
final class TimelineWorksheet {

  private static final String NAME = SheetPlaces.TIMELINE;

  private static final int PANEL = 0;
  private static final int DRAWING = 1;
  private static final int ACTION = 2;
  private static final int PLACE = 3;
  private static final int STARTS = 4;
  private static final int BARS = 5;
  private static final int SECONDS = 6;
  private static final int FRAMES = 7;
  private static final int TO_SCALE = 8;
  private static final int ASKED = 9;
  private static final int REASON = 10;
  private static final int OPEN = 11;
  private static final int NOTES = 12;
  private static final int ROW_NAME = 13;

  private static final List<Column> COLUMNS =
      List.of(
          Column.words("panel", 31),
          Column.words("drawing", 72),
          Column.words("action", 80, 2),
          Column.words("place", 52, 1),
          Column.words("starts", 56),
          Column.numbers("bars", 36),
          Column.numbers("seconds", 40),
          Column.numbers("frames", 36),
          Column.words("to scale", 48),
          Column.words("asked, got", 60, 2),
          Column.words("why here,\nand the alternative", 87, 3),
          Column.words("what moves,\nopen at the cut", 88, 2),
          Column.toFillIn("notes", 28, 0),
          Column.rowName());

  private static final double HEADING_POINTS = 26;
  private static final double LEAST_ROW_POINTS = 34;
  private static final double DRAWN_ROW_POINTS = 47;

  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));

  /** Words beside words, kept apart by a line. */
  private static final Look DIVIDED = WORDS.edged(WORDS.edges().left(Line.HAIR));

  private final Book book;
  private final ExposureSheets exposures;
  private final Film film;
  private final SheetFrame frame;
  private final SheetPen pen;
  private final Drawings drawings;
  private final LengthBar lengthBar;

  private TimelineWorksheet(Book book, ExposureSheets exposures) {
    this.book = book;
    this.exposures = exposures;
    this.film = book.film().plan().film();
    this.frame = book.frame(NAME, book.landscape(), COLUMNS, fact(book));
    this.pen = frame.pen();
    this.drawings = new Drawings(book, frame);
    long longest =
        book.index().shots().stream().mapToLong(shot -> shot.frames().length()).max().orElse(1);
    this.lengthBar = new LengthBar(longest, frame.columns().points(TO_SCALE));
  }

  private static String fact(Book book) {
    long frames = book.film().timing().lengthFrames();
    return SheetWords.count(book.index().shots().size(), "panel")
        + "   "
        + SheetWords.duration(book.film().plan().film(), frames)
        + "   "
        + SheetWords.count(frames, "frame");
  }

  static void write(Book book, ExposureSheets exposures) {
    new TimelineWorksheet(book, exposures).write();
  }

  private void write() {
    frame.heading(HEADING_POINTS);
    for (Shot shot : book.index().shots()) {
      line(shot);
    }
    int last = SheetFrame.FIRST_ROW + book.index().shots().size() - 1;
    totals(last + 1);
    book.name("Timeline_panels", new Address(NAME, SheetFrame.FIRST_ROW, PANEL), last, ROW_NAME);
    book.name("Timeline_notes", new Address(NAME, SheetFrame.FIRST_ROW, NOTES), last, NOTES);
    frame.finish(
        "lengths run to the next cut; seconds and frames are the film's; openings that don't move stay as"
            + " they are at the cut");
  }

  private void line(Shot shot) {
    Ground ground = Ground.of(shot.index());
    pen.row(
        SheetFrame.FIRST_ROW + shot.index(),
        drawings.has(shot) ? DRAWN_ROW_POINTS : LEAST_ROW_POINTS);
    pen.label(PANEL, shot.panel().name(), ground.look(WORDS.size(13).inBold().in(Ink.QUAY).left()));
    pen.link(PANEL, exposures.addressOf(shot.frames().start()));
    pen.blank(DRAWING, ground.look(WORDS));
    pen.text(ACTION, shot.panel().action(), ground.look(WORDS.inBold()));
    pen.text(PLACE, place(shot), ground.look(WORDS));
    pen.text(STARTS, timecode(shot), ground.look(WORDS.inBold().centered()));
    length(shot, ground);
    pen.text(
        ASKED, "asked: " + orNothing(shot.asked()) + "\ngot: " + shot.got(), ground.look(DIVIDED));
    pen.text(REASON, reason(shot), ground.look(DIVIDED));
    pen.text(OPEN, openings(shot), ground.look(DIVIDED));
    pen.toFillIn(NOTES, Look.TO_FILL_IN);
    pen.rowName(ROW_NAME, "panel " + shot.panel().name());
    drawings.place(shot, pen.rowIndex(), DRAWING, pen.rowPoints());
  }

  private void length(Shot shot, Ground ground) {
    long frames = shot.frames().length();
    double seconds = SheetWords.seconds(film, frames).doubleValue();
    pen.number(BARS, shot.bars().doubleValue(), ground.look(WORDS.number(Look.HUNDREDTHS)));
    pen.number(SECONDS, seconds, ground.look(WORDS.number(Look.HUNDREDTHS)));
    pen.number(FRAMES, frames, ground.look(WORDS.number(Look.WHOLE)));
    pen.text(TO_SCALE, lengthBar.of(frames), ground.look(LengthBar.LOOK));
  }

  private String timecode(Shot shot) {
    return film.timecode(shot.frames().start()).toString();
  }

  private String openings(Shot shot) {
    List<String> lines = new ArrayList<>();
    book.index().revealsOf(shot).forEach(reveal -> lines.add(SheetWords.reveal(reveal)));
    shot.panel()
        .appears()
        .forEach(appears -> lines.add(appears.performer() + " in " + appears.opening()));
    lines.add(OpeningWords.atCut(book.film(), shot));
    OpeningWords.atEnd(book.film(), shot).ifPresent(lines::add);
    return String.join("\n", lines);
  }

  private String place(Shot shot) {
    String sign = book.index().sign(shot.cue());
    String title = shot.cue().title();
    return (sign.isEmpty() ? title : sign + "  " + title)
        + (shot.panel().locked() ? "\nlocked" : "");
  }

  private static String reason(Shot shot) {
    return shot.alternative()
        .map(
            alternative ->
                shot.reason()
                    + "\n"
                    + (alternative.isFreeChoice() ? Signs.QUESTION + " free choice: " : "")
                    + alternative.sentence())
        .orElse(shot.reason());
  }

  private static String orNothing(String asked) {
    return asked.isEmpty() ? "anywhere" : asked;
  }

  private void totals(int row) {
    long frames = book.film().timing().lengthFrames();
    Look look = Look.BODY.inBold().edged(Edges.NONE.top(Line.HEAVY));
    pen.row(row, 20);
    pen.blanks(0, ROW_NAME, look);
    pen.text(ACTION, "whole film, " + SheetWords.duration(film, frames), look);
    pen.text(STARTS, film.timecode(frames).toString(), look.centered());
    pen.number(
        SECONDS, SheetWords.seconds(film, frames).doubleValue(), look.number(Look.HUNDREDTHS));
    pen.number(FRAMES, frames, look.number(Look.WHOLE));
  }

  /** What the cells of one line have in common: every second line on a band. */
  private record Ground(Ink fill) {
    static Ground of(int index) {
      return new Ground(index % 2 == 1 ? Ink.BAND : Ink.PAPER);
    }

    Look look(Look of) {
      return of.on(fill);
    }
  }
}
