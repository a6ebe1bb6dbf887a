package org.barsheet.workbook;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import org.barsheet.cues.Cue;
import org.barsheet.film.FilmSheet;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureSheets;
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
import org.barsheet.workbook.pen.Signs;

/** Every occurrence, every mark and every other cue a panel sits on, one a line. */
final class CuesWorksheet {

  static final String NAME = "Cues";

  private static final int MOTIF = 0;
  private static final int CUE = 1;
  private static final int KIND = 2;
  private static final int NUMBER = 3;
  private static final int BAR = 4;
  private static final int BEAT = 5;
  private static final int TIMECODE = 6;
  private static final int FRAME = 7;
  private static final int SECONDS = 8;
  private static final int ACCENT_TIMECODE = 9;
  private static final int ACCENT_FRAME = 10;
  private static final int CERTAINTY = 11;
  private static final int FORM = 12;
  private static final int PARTS = 13;
  private static final int PANEL = 14;
  private static final int NOTES = 15;
  private static final int ROW_NAME = 16;

  private static final List<Column> COLUMNS =
      List.of(
          Column.words("", 16),
          Column.words("cue", 64, 1),
          Column.words("kind", 52),
          Column.numbers("no.", 26),
          Column.numbers("bar", 30),
          Column.numbers("beat", 32),
          Column.words("timecode", 60),
          Column.numbers("frame", 42),
          Column.numbers("seconds", 46),
          Column.words(Signs.ACCENT + " accent", 60),
          Column.numbers(Signs.ACCENT + " frame", 46),
          Column.words("  certainty", 54),
          Column.words("form", 96, 8),
          Column.words("parts", 48, 1),
          Column.words("panel", 36),
          Column.toFillIn("notes", 40, 1),
          Column.rowName());

  private static final double ROW_POINTS = 14;

  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));
  private static final Look NUMBERS = WORDS.number(Look.WHOLE);

  private final Book book;
  private final ExposureSheets exposures;
  private final Film film;
  private final SheetFrame frame;
  private final SheetPen pen;

  private CuesWorksheet(Book book, ExposureSheets exposures) {
    this.book = book;
    this.exposures = exposures;
    this.film = book.film().plan().film();
    this.frame = book.frame(NAME, book.landscape(), COLUMNS, fact(book.film()));
    this.pen = frame.pen();
  }

  private static String fact(FilmSheet film) {
    return SheetWords.count(film.timing().cues().size(), "cue")
        + ", "
        + SheetWords.count(film.timing().tallies().size(), "motif");
  }

  static void write(Book book, ExposureSheets exposures) {
    new CuesWorksheet(book, exposures).write();
  }

  private void write() {
    frame.heading(16);
    int row = SheetFrame.FIRST_ROW;
    for (Cue cue : book.film().timing().cues()) {
      line(row++, cue);
    }
    int last = Math.max(SheetFrame.FIRST_ROW, row - 1);
    book.name("Cues_table", new Address(NAME, SheetFrame.HEADING_ROW, MOTIF), last, ROW_NAME);
    book.name("Cues_notes", new Address(NAME, SheetFrame.FIRST_ROW, NOTES), last, NOTES);
    frame.sheet().setAutoFilter(new CellRangeAddress(SheetFrame.HEADING_ROW, last, MOTIF, PANEL));
    forTheComposer(row + 1);
    frame.finish(
        "place, timecode and frame are the first note's; "
            + Signs.ACCENT
            + " is the note a reveal lands on, if different; seconds are the score's; "
            + Signs.QUESTION
            + " means only likely");
  }

  private void forTheComposer(int firstRow) {
    int row = firstRow;
    pen.row(row++, 26);
    Look heading = Look.SECTION.edged(Edges.NONE.bottom(Line.HEAVY));
    pen.blanks(MOTIF, NOTES + 1, heading);
    pen.text(MOTIF, "For the composer", heading);
    for (String sentence : ComposerSection.lines(book.film())) {
      pen.row(row++, ROW_POINTS);
      pen.joined(CUE, NOTES, sentence, Look.BODY.atTop().wrapped());
    }
  }

  private void line(int row, Cue cue) {
    Optional<Occurrence> occurrence = cue.occurrence();
    pen.row(row, ROW_POINTS);
    pen.text(MOTIF, book.index().sign(cue), WORDS.inBold().centered());
    pen.text(CUE, cue.title(), WORDS.inBold());
    pen.text(KIND, kind(cue), WORDS);
    place(cue);
    accent(cue);
    pen.text(CERTAINTY, occurrence.map(one -> "  " + certainty(one)).orElse(""), WORDS);
    pen.text(FORM, occurrence.map(one -> one.variation().description()).orElse(""), WORDS);
    pen.text(PARTS, book.index().parts(cue), WORDS.edged(WORDS.edges().left(Line.HAIR)));
    panel(cue);
    pen.toFillIn(NOTES, Look.TO_FILL_IN);
    pen.rowName(ROW_NAME, cue.id());
  }

  private void place(Cue cue) {
    if (cue.number() > 0) {
      pen.number(NUMBER, cue.number(), NUMBERS);
    } else {
      pen.blank(NUMBER, NUMBERS);
    }
    bar(cue);
    pen.text(TIMECODE, film.timecode(cue.frame()).toString(), WORDS.centered());
    pen.number(FRAME, cue.frame(), NUMBERS.in(Ink.QUAY));
    pen.number(SECONDS, cue.at().toDecimal(3).doubleValue(), WORDS.number(Look.THOUSANDTHS));
    if (book.film().timing().shotAt(cue.frame()).isPresent()) {
      pen.link(FRAME, exposures.addressOf(cue.frame()));
    }
  }

  /** Blank before the music, which lies in no bar. */
  private void bar(Cue cue) {
    Look beats = WORDS.number(Look.UP_TO_THOUSANDTHS);
    if (cue.isBeforeMusic()) {
      pen.blank(BAR, NUMBERS).blank(BEAT, beats);
      return;
    }
    pen.number(BAR, cue.place().bar(), NUMBERS);
    pen.number(BEAT, Double.parseDouble(cue.place().beatText()), beats);
  }

  /** The note that a reveal lands on, where it is another than the first. */
  private void accent(Cue cue) {
    if (!cue.hasAccentElsewhere()) {
      pen.blank(ACCENT_TIMECODE, WORDS).blank(ACCENT_FRAME, NUMBERS);
      return;
    }
    pen.text(ACCENT_TIMECODE, film.timecode(cue.accentFrame()).toString(), WORDS.centered());
    pen.number(ACCENT_FRAME, cue.accentFrame(), NUMBERS.in(Ink.QUAY));
    if (book.film().timing().shotAt(cue.accentFrame()).isPresent()) {
      pen.link(ACCENT_FRAME, exposures.addressOf(cue.accentFrame()));
    }
  }

  private static String kind(Cue cue) {
    return cue.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String certainty(Occurrence occurrence) {
    String word = occurrence.certainty().name().toLowerCase(Locale.ROOT);
    return isDoubtful(occurrence) ? Signs.QUESTION + " " + word : word;
  }

  /** Whether a return may be none. */
  static boolean isDoubtful(Occurrence occurrence) {
    return occurrence.certainty() != Certainty.CERTAIN;
  }

  private void panel(Cue cue) {
    Optional<Shot> shot = book.index().shotOn(cue);
    if (shot.isEmpty()) {
      pen.blank(PANEL, WORDS);
      return;
    }
    pen.label(PANEL, shot.get().panel().name(), WORDS.inBold().in(Ink.QUAY).left());
    pen.link(PANEL, SheetPlaces.ofShot(shot.get()));
  }
}
