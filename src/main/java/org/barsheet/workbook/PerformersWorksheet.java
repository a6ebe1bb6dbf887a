package org.barsheet.workbook;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.barsheet.calls.Call;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.FilmClock;
import org.barsheet.cues.MusicRuler;
import org.barsheet.exposure.Appearance;
import org.barsheet.plan.Film;
import org.barsheet.plan.Performer;
import org.barsheet.received.ClipVerdict;
import org.barsheet.timing.Finding.Severity;
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
import org.barsheet.workbook.pen.SheetWords;
import org.barsheet.workbook.pen.Signs;

/** Every appearance in the order of the film, and what has come of the clip it needs. */
final class PerformersWorksheet {

  static final String NAME = "Performers";

  private static final int PANEL = 0;
  private static final int STARTS = 1;
  private static final int FRAMES = 2;
  private static final int SECONDS = 3;
  private static final int BARS = 4;
  private static final int PERFORMER = 5;
  private static final int PART = 6;
  private static final int OPENING = 7;
  private static final int CLIP = 8;
  private static final int CLIP_FRAMES = 9;
  private static final int STATE = 10;
  private static final int REMARK = 11;
  private static final int CALLED = 12;
  private static final int NOTES = 15;
  private static final int ROW_NAME = 16;

  private static final List<Column> COLUMNS =
      List.of(
          Column.words("panel", 32),
          Column.numbers("seen from", 54),
          Column.numbers("frames", 38),
          Column.numbers("seconds", 40),
          Column.words("  bars", 44),
          Column.words("performer", 48, 1),
          Column.words("part, share\nthat plays", 74, 1),
          Column.words("in", 72, 1),
          Column.words("clip", 60, 1),
          Column.words("its frames,\nwith handles", 70),
          Column.words("file", 58),
          Column.words("what is wrong with it", 58, 2),
          Column.toFillIn("called", 36, 0),
          Column.toFillIn("received", 42, 0),
          Column.toFillIn("usable", 36, 0),
          Column.toFillIn("notes", 42, 1),
          Column.rowName());

  private static final double ROW_POINTS = 14;
  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));

  private final Book book;
  private final CallWorksheets calls;
  private final SheetFrame frame;
  private final SheetPen pen;
  private final Film film;
  private final FilmClock clock;
  private final MusicRuler ruler;
  private final List<Appearance> seen;

  private PerformersWorksheet(Book book, CallWorksheets calls) {
    this.book = book;
    this.calls = calls;
    this.film = book.film().plan().film();
    this.clock = book.film().timing().clock();
    this.ruler = new MusicRuler(book.film().timing().music(), clock);
    this.seen =
        book.film().appearances().stream()
            .sorted(Comparator.comparingLong(appearance -> appearance.frames().start()))
            .toList();
    String fact = SheetWords.count(seen.size(), "appearance") + ", in the order of the film";
    this.frame = book.frame(NAME, book.landscape(), COLUMNS, fact);
    this.pen = frame.pen();
  }

  static void write(Book book, CallWorksheets calls) {
    new PerformersWorksheet(book, calls).write();
  }

  private void write() {
    frame.heading(26);
    int row = SheetFrame.FIRST_ROW;
    for (Appearance appearance : seen) {
      line(row++, appearance);
    }
    for (Call call : calls.all()) {
      if (call.seen().isEmpty()) {
        notSeen(row++, call.performer());
      }
    }
    int last = Math.max(SheetFrame.FIRST_ROW, row - 1);
    book.name("Performers_table", new Address(NAME, SheetFrame.HEADING_ROW, PANEL), last, ROW_NAME);
    frame.finish(
        "tick what was called, received and found usable; ticks are kept; a name links to its call sheet");
  }

  private void line(int row, Appearance appearance) {
    Shot shot = book.index().shot(appearance.shot());
    FrameSpan frames = appearance.frames();
    pen.row(row, ROW_POINTS);
    pen.label(PANEL, shot.panel().name(), WORDS.inBold());
    pen.text(STARTS, film.timecode(frames.start()).toString(), WORDS.right());
    pen.number(FRAMES, frames.length(), WORDS.number(Look.WHOLE));
    double seconds = film.rate().startOf(frames.length()).toDecimal(2).doubleValue();
    pen.number(SECONDS, seconds, WORDS.number(Look.HUNDREDTHS));
    pen.text(BARS, "  " + bars(frames), WORDS);
    performer(appearance.performer());
    pen.text(PART, part(appearance), WORDS);
    pen.text(OPENING, appearance.opening().name(), WORDS);
    pen.text(CLIP, appearance.performer().clip(), WORDS);
    pen.text(CLIP_FRAMES, clipFrames(appearance), WORDS);
    clip(appearance.performer(), List.of(appearance));
    for (int column = CALLED; column <= NOTES; column++) {
      pen.toFillIn(column, Look.TO_FILL_IN);
    }
    String name = appearance.performer().name() + " in " + appearance.opening().name();
    pen.rowName(ROW_NAME, "panel " + shot.panel().name() + " " + name);
  }

  /** Their name, which leads to their call. */
  private void performer(Performer performer) {
    pen.text(PERFORMER, performer.name(), WORDS.inBold().in(Ink.QUAY));
    pen.link(PERFORMER, calls.addressOf(performer.name()));
  }

  private void notSeen(int row, Performer performer) {
    pen.row(row, ROW_POINTS);
    pen.blanks(PANEL, CALLED, WORDS);
    performer(performer);
    pen.text(OPENING, "not seen yet", WORDS);
    pen.text(CLIP, performer.clip(), WORDS);
    clip(performer, List.of());
    for (int column = CALLED; column <= NOTES; column++) {
      pen.toFillIn(column, Look.TO_FILL_IN);
    }
    pen.rowName(ROW_NAME, "not seen: " + performer.name());
  }

  private String bars(FrameSpan frames) {
    int first = barAt(frames.start());
    int last = barAt(Math.max(frames.start(), frames.endExclusive() - 1));
    return first == last ? Integer.toString(first) : first + " to " + last;
  }

  private int barAt(long frame) {
    return ruler.locateFrame(frame).bar();
  }

  private static String part(Appearance appearance) {
    String part = appearance.performer().part();
    if (part.isEmpty()) {
      return "silent";
    }
    boolean sounds = appearance.sounding() > 0;
    return part + ", " + (sounds ? Math.round(100 * appearance.sounding()) + "\u00A0%" : "silent");
  }

  private String clipFrames(Appearance appearance) {
    Optional<FrameSpan> asked = appearance.clipFramesAsked(clock);
    return asked.map(span -> span.start() + " to " + (span.endExclusive() - 1)).orElse("");
  }

  /**
   * What has come of a performer's clip.
   *
   * @param inRow the appearance it is held against; none for a performer who is only heard
   */
  private void clip(Performer performer, List<Appearance> inRow) {
    Optional<ClipVerdict> verdict = book.film().verdictOn(performer, inRow);
    if (verdict.isEmpty()) {
      pen.blank(STATE, WORDS).blank(REMARK, WORDS);
      return;
    }
    pen.text(STATE, state(verdict.get()), WORDS.inBold());
    pen.text(REMARK, verdict.get().remark(), WORDS);
  }

  private static String state(ClipVerdict verdict) {
    return switch (verdict.state()) {
      case MISSING -> Signs.of(Severity.ERROR) + " missing";
      case UNREADABLE -> Signs.of(Severity.WARNING) + " unreadable";
      case FAULTY -> Signs.of(Severity.WARNING) + " received";
      case USABLE -> Signs.DONE + " usable";
    };
  }
}
