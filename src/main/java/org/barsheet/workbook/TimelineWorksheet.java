package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barsheet.cues.Cue;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Film;
import org.barsheet.score.Bar;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureSheets;
import org.barsheet.workbook.pen.Address;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Drawings;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.SheetPlaces;
import org.barsheet.workbook.pen.SheetWords;
import org.barsheet.workbook.pen.Signs;

/**
 * The director's wall sheet: the whole film to scale, then each panel with its drawing, when it
 * begins and lands, what happens and who is seen. Why it is where it is comes after.
 */
final class TimelineWorksheet {

  private static final String NAME = SheetPlaces.TIMELINE;

  private static final int PANEL = 0;
  private static final int DRAWING = 1;
  private static final int ACTION = 2;
  private static final int MOVES = 3;
  private static final int STARTS = 4;
  private static final int LANDS = 5;
  private static final int LENGTH = 6;
  private static final int NOTES = 7;
  private static final int ROW_NAME = 8;

  /** The drawings are 45 mm wide, the notes 40 mm; six panels fill a page. */
  private static final List<Column> COLUMNS =
      List.of(
          Column.words("panel", 31),
          Column.words("drawing", 131),
          Column.words("action", 88, 1),
          Column.words("what moves, who is seen", 114, 2),
          Column.words("starts", 76),
          Column.words("lands", 96, 1),
          Column.words("length", 64),
          Column.toFillIn("notes", 114, 0),
          Column.rowName());

  private static final double HEADING_POINTS = 16;
  private static final double LEAST_ROW_POINTS = 34;
  private static final double DRAWN_ROW_POINTS = 74.3;
  private static final double WHY_ROW_POINTS = 14;
  private static final double KEPT_TOGETHER_POINTS = 100;
  private static final double POINTS_PER_MILLIMETER = 72 / 25.4;

  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));

  private final Book book;
  private final ExposureSheets exposures;
  private final Film film;
  private final SheetFrame frame;
  private final SheetPen pen;
  private final Drawings drawings;
  private int row = SheetFrame.FIRST_ROW;

  private TimelineWorksheet(Book book, ExposureSheets exposures) {
    this.book = book;
    this.exposures = exposures;
    this.film = book.film().plan().film();
    this.frame = book.frame(NAME, book.landscape(), COLUMNS, fact(book));
    this.pen = frame.pen();
    this.drawings = new Drawings(book, frame);
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
    strip();
    int first = row;
    book.index().shots().forEach(this::panel);
    book.name("Timeline_panels", new Address(NAME, first, PANEL), row - 1, ROW_NAME);
    book.name("Timeline_notes", new Address(NAME, first, NOTES), row - 1, NOTES);
    why();
    frame.finish(
        Signs.ACCENT
            + " a reveal lands; boxed letters are rehearsal marks, numbers below the panels returns; lengths run to"
            + " the next cut");
  }

  private void strip() {
    double width = frame.columns().points(PANEL, ROW_NAME) / POINTS_PER_MILLIMETER - 1;
    FilmStrip strip = new FilmStrip(book.film(), width);
    double points = strip.height() * POINTS_PER_MILLIMETER;
    for (int line = 0; line < strip.count(); line++) {
      pen.row(row, points).blanks(PANEL, ROW_NAME, WORDS);
      MapShapes.draw(
          book.drawing(NAME),
          pen.area(row, points, width * POINTS_PER_MILLIMETER, points - 1),
          width,
          strip.height(),
          strip.marks(line));
      row++;
    }
  }

  private void panel(Shot shot) {
    Ground ground = Ground.of(shot.index());
    pen.row(row++, drawings.has(shot) ? DRAWN_ROW_POINTS : LEAST_ROW_POINTS);
    pen.label(PANEL, shot.panel().name(), ground.look(WORDS.size(16).inBold().in(Ink.QUAY).left()));
    pen.link(PANEL, exposures.addressOf(shot.frames().start()));
    pen.blank(DRAWING, ground.look(WORDS));
    pen.text(ACTION, shot.panel().action(), ground.look(WORDS.size(11).inBold()));
    pen.text(MOVES, moves(shot), ground.look(WORDS));
    pen.text(STARTS, timecode(shot) + "\n" + startsAt(shot), ground.look(WORDS.inBold()));
    pen.text(LANDS, landings(shot), ground.look(WORDS));
    pen.text(LENGTH, length(shot), ground.look(WORDS));
    pen.toFillIn(NOTES, Look.TO_FILL_IN);
    pen.rowName(ROW_NAME, "panel " + shot.panel().name());
    drawings.place(shot, pen.rowIndex(), DRAWING, pen.rowPoints());
  }

  private String timecode(Shot shot) {
    return film.timecode(shot.frames().start()).toString();
  }

  private String startsAt(Shot shot) {
    boolean beforeMusic = shot.frames().start() < film.musicStartFrame();
    return beforeMusic ? "before the music" : shot.startsAt().toString();
  }

  private String length(Shot shot) {
    long frames = shot.frames().length();
    return SheetWords.count(frames, "frame")
        + "\n"
        + SheetWords.duration(film, frames)
        + "\n"
        + shot.got();
  }

  private String moves(Shot shot) {
    List<String> lines = new ArrayList<>();
    book.index().revealsOf(shot).forEach(reveal -> lines.add(SheetWords.reveal(reveal)));
    shot.panel()
        .appears()
        .forEach(one -> lines.add("seen: " + one.performer() + " in " + one.opening()));
    return lines.isEmpty() ? "nothing moves" : String.join("\n", lines);
  }

  /** The landings of a shot, those on one frame once. */
  private String landings(Shot shot) {
    Map<Long, String> lines = new TreeMap<>();
    for (PlannedReveal reveal : book.index().revealsOf(shot)) {
      long frame = reveal.landsFrame();
      lines.putIfAbsent(frame, Signs.ACCENT + " " + film.timecode(frame) + "\nin " + bar(frame));
    }
    if (lines.isEmpty()) {
      return "–";
    }
    String on = shot.cue().kind() == Cue.Kind.RETURN ? "\non " + sits(shot) : "";
    return String.join("\n", lines.values()) + on;
  }

  private String bar(long frame) {
    Bar bar = book.index().barAt(frame).bar();
    return "bar " + bar.number() + (bar.time() > 1 ? " time " + bar.time() : "");
  }

  /** What a panel sits on. */
  private String sits(Shot shot) {
    String sign = book.index().sign(shot.cue());
    String title = shot.cue().title();
    return sign.isEmpty() ? title : sign + "  " + title;
  }

  /** Why each panel is where it is, for those who ask. */
  private void why() {
    if (pen.pointsOnPage() + pen.rowPoints() > book.landscape().height() - KEPT_TOGETHER_POINTS) {
      pen.breakPage(SheetFrame.TITLE_POINTS + HEADING_POINTS);
    }
    pen.row(row++, 26);
    Look title = Look.SECTION.edged(Edges.NONE.bottom(Line.HEAVY));
    pen.blanks(PANEL, ROW_NAME, title);
    pen.text(PANEL, "Why each panel is where it is", title);
    pen.row(row++, WHY_ROW_POINTS);
    Look heading = Look.PENCIL.edged(Edges.NONE.bottom(Line.HAIR));
    pen.text(PANEL, "panel", heading);
    pen.text(DRAWING, "place", heading);
    pen.joined(ACTION, MOVES, "why here, and the alternative", heading);
    pen.joined(STARTS, LANDS, "asked, got", heading);
    pen.joined(LENGTH, NOTES, "at the cut", heading);
    book.index().shots().forEach(this::why);
  }

  private void why(Shot shot) {
    Look look = WORDS.atTop();
    pen.row(row++, WHY_ROW_POINTS);
    pen.label(PANEL, shot.panel().name(), look.inBold().left());
    pen.text(DRAWING, sits(shot) + (shot.panel().locked() ? ", locked" : ""), look);
    pen.joined(ACTION, MOVES, reason(shot), look);
    String asked = shot.asked().isEmpty() ? "anywhere" : shot.asked();
    pen.joined(STARTS, LANDS, "asked: " + asked + "\ngot: " + shot.got(), look);
    List<String> open = new ArrayList<>(List.of(OpeningWords.atCut(book.film(), shot)));
    OpeningWords.atEnd(book.film(), shot).ifPresent(open::add);
    pen.joined(LENGTH, NOTES, String.join("\n", open), look);
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
