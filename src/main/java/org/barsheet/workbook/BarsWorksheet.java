package org.barsheet.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.plan.Film;
import org.barsheet.score.Bar;
import org.barsheet.score.Mark;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.pen.Address;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.SheetPlaces;
import org.barsheet.workbook.pen.SheetWords;

/** The bars of the piece as a table, one a line. */
final class BarsWorksheet {

  static final String NAME = "Bars";

  private static final int BAR = 0;
  private static final int TIME = 1;
  private static final int METER = 2;
  private static final int SECONDS = 3;
  private static final int TIMECODE = 4;
  private static final int FRAME = 5;
  private static final int FRAMES = 6;
  private static final int LASTS = 7;
  private static final int FRAMES_PER_BEAT = 8;
  private static final int TEMPO = 9;
  private static final int DRIFT = 10;
  private static final int MARKS = 11;
  private static final int CUES = 12;
  private static final int PANEL = 13;
  private static final int ROW_NAME = 14;

  private static final List<Column> COLUMNS =
      List.of(
          Column.numbers("bar", 30),
          Column.numbers("time\nround", 32),
          Column.words("meter", 40),
          Column.numbers("seconds", 48),
          Column.words("timecode", 60),
          Column.numbers("frame", 40),
          Column.numbers("frames", 38),
          Column.numbers("lasts\nseconds", 46),
          Column.words("frames\nper beat", 46),
          Column.numbers("bpm", 46),
          Column.numbers("drift\nseconds", 46),
          Column.words("marks", 40, 2),
          Column.words("cues", 56, 3),
          Column.words("panel", 34),
          Column.rowName());

  private static final double ROW_POINTS = 14;

  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));
  private static final Look NUMBERS = WORDS.number(Look.WHOLE);

  private final Book book;
  private final Film film;

  /** By the number of their bar and the time it is played. */
  private final Map<List<Integer>, List<Cue>> occurrences;

  private final SheetFrame frame;
  private final SheetPen pen;

  private BarsWorksheet(Book book) {
    this.book = book;
    this.film = book.film().plan().film();
    this.occurrences =
        book.film().timing().cues().stream()
            .filter(cue -> cue.kind() == Cue.Kind.RETURN)
            .collect(Collectors.groupingBy(cue -> List.of(cue.place().bar(), cue.place().time())));
    String fact = SheetWords.count(book.film().timing().bars().size(), "bar");
    this.frame = book.frame(NAME, book.landscape(), COLUMNS, fact);
    this.pen = frame.pen();
  }

  static void write(Book book) {
    new BarsWorksheet(book).write();
  }

  private void write() {
    frame.heading(26);
    int row = SheetFrame.FIRST_ROW;
    for (FilmBar bar : book.film().timing().bars()) {
      line(row++, bar);
    }
    int last = row - 1;
    book.name("Bars_table", new Address(NAME, SheetFrame.HEADING_ROW, BAR), last, ROW_NAME);
    frame.sheet().setAutoFilter(new CellRangeAddress(SheetFrame.HEADING_ROW, last, BAR, PANEL));
    frame.finish(
        "seconds are the score's, from its first tick; frames are the film's, from 0; 13-3: 13"
            + " frames and 3 eighths; drift: how late a bar begins against its section's"
            + " steady tempo");
  }

  private void line(int row, FilmBar filmBar) {
    Bar bar = filmBar.bar();
    pen.row(row, ROW_POINTS);
    pen.number(BAR, bar.number(), NUMBERS.inBold());
    pen.number(TIME, bar.time(), NUMBERS.in(Ink.PENCIL));
    pen.text(METER, bar.meter() + (bar.isShort() ? " short" : ""), WORDS);
    tempo(filmBar);
    pen.text(MARKS, marks(bar), WORDS.inBold());
    pen.text(CUES, cues(bar), WORDS);
    panel(filmBar);
    pen.rowName(ROW_NAME, "bar " + bar.number() + " time " + bar.time());
  }

  private void tempo(FilmBar bar) {
    pen.number(SECONDS, bar.start().toDecimal(3).doubleValue(), WORDS.number(Look.THOUSANDTHS));
    pen.text(TIMECODE, film.timecode(bar.startFrame()).toString(), WORDS.centered());
    pen.number(FRAME, bar.startFrame(), NUMBERS);
    pen.number(FRAMES, bar.lengthFrames(), NUMBERS);
    pen.number(LASTS, bar.length().toDecimal(3).doubleValue(), WORDS.number(Look.THOUSANDTHS));
    pen.text(FRAMES_PER_BEAT, bar.framesPerBeat().toString(), WORDS.centered());
    pen.number(TEMPO, bar.beatsPerMinute().doubleValue(), WORDS.number(Look.UP_TO_THOUSANDTHS));
    pen.number(DRIFT, bar.drift().toDecimal(3).doubleValue(), WORDS.number(Look.THOUSANDTHS));
  }

  private String marks(Bar bar) {
    return book.film().timing().music().score().marks().stream()
        .filter(mark -> bar.contains(mark.tick()))
        .map(Mark::text)
        .collect(Collectors.joining(", "));
  }

  private String cues(Bar bar) {
    return occurrences.getOrDefault(List.of(bar.number(), bar.time()), List.of()).stream()
        .map(Cue::title)
        .collect(Collectors.joining(", "));
  }

  private void panel(FilmBar bar) {
    Optional<Shot> shot = book.film().timing().shotAt(bar.startFrame());
    if (shot.isEmpty()) {
      pen.blank(PANEL, WORDS);
      return;
    }
    pen.label(PANEL, shot.get().panel().name(), WORDS.in(Ink.QUAY).left());
    pen.link(PANEL, SheetPlaces.ofShot(shot.get()));
  }
}
