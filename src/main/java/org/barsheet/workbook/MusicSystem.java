package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.motif.Occurrence;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.Signs;
import org.barsheet.workbook.pen.TextWidth;

/** One system of the music: up to four bars and what lies over and under them. */
final class MusicSystem {

  private static final int CELLS = MusicWorksheet.CELLS_A_BAR;

  /** Cells at the end of a reveal that its landing sign needs. */
  private static final int SIGN_CELLS = 2;

  private final Book book;
  private final MusicSpans spans;
  private final List<FilmBar> bars;
  private final FrameSpan frames;
  private final double cellPoints;

  MusicSystem(Book book, MusicSpans spans, List<FilmBar> bars, double cellPoints) {
    this.book = book;
    this.spans = spans;
    this.bars = bars;
    this.cellPoints = cellPoints;
    this.frames = frames();
  }

  /** The frames it shows; the first and the last system also those before and after the music. */
  private FrameSpan frames() {
    List<FilmBar> all = book.film().timing().bars();
    FilmBar first = bars.get(0);
    FilmBar last = bars.get(bars.size() - 1);
    long end = last.startFrame() + last.lengthFrames();
    boolean closes = last.bar().index() == all.get(all.size() - 1).bar().index();
    return new FrameSpan(
        first.bar().index() == all.get(0).bar().index() ? 0 : first.startFrame(),
        closes ? Math.max(end, book.film().timing().lengthFrames()) : end);
  }

  List<FilmBar> bars() {
    return bars;
  }

  /** The panels, on as many lines as they need. */
  List<List<MusicBox>> panels() {
    List<MusicBox> boxes = new ArrayList<>();
    for (Overlaps.Lasting<Shot> shot : spans.shots().with(frames)) {
      String name = shot.thing().panel().name();
      boxes.add(panel(shot.span(), name, name + "  " + shot.thing().panel().action()));
    }
    return MusicBox.lines(boxes);
  }

  private MusicBox panel(FrameSpan span, String name, String full) {
    int from = firstCell(span);
    int to = lastCell(span, from);
    String text = cells(full, MusicSystemWriter.PANEL) <= to - from + 1 ? full : name;
    return new MusicBox(from, to, span.start() < frames.start(), text, from, to, false);
  }

  /** The counted returns of the motifs, on as many lines as they need. */
  List<List<MusicBox>> occurrences() {
    List<MusicBox> boxes = new ArrayList<>();
    for (Overlaps.Lasting<Cue> cue : spans.occurrences().with(frames)) {
      boxes.add(occurrence(cue.span(), cue.thing()));
    }
    return MusicBox.lines(boxes);
  }

  private MusicBox occurrence(FrameSpan span, Cue cue) {
    int from = firstCell(span);
    int to = lastCell(span, from);
    String text =
        longestThatFits(texts(cue, cue.occurrence().orElseThrow()), bars.size() * CELLS - from);
    int textEnd = from + cells(text, MusicSystemWriter.RETURN) - 1;
    boolean goesOn = span.start() < frames.start();
    return new MusicBox(from, to, goesOn, text, from, Math.max(to, textEnd), false);
  }

  /** What can be said of an occurrence, the most first. */
  private List<String> texts(Cue cue, Occurrence occurrence) {
    String doubt = CuesWorksheet.isDoubtful(occurrence) ? Signs.QUESTION + " " : "";
    String name = book.index().sign(cue) + "  " + doubt + cue.title();
    String form = name + ", " + occurrence.variation().description();
    return List.of(form, name);
  }

  private String longestThatFits(List<String> texts, int room) {
    return texts.stream()
        .filter(text -> cells(text, MusicSystemWriter.RETURN) <= room)
        .findFirst()
        .orElse(texts.get(texts.size() - 1));
  }

  /** The reveals from their first gap to their landing, on as many lines as they need. */
  List<List<MusicBox>> reveals() {
    List<MusicBox> boxes = new ArrayList<>();
    for (Overlaps.Lasting<PlannedReveal> reveal : spans.reveals().with(frames)) {
      boxes.add(reveal(reveal.span(), reveal.thing().opening().name()));
    }
    return MusicBox.lines(boxes);
  }

  private MusicBox reveal(FrameSpan span, String name) {
    int from = firstCell(span);
    int to = lastCell(span, from);
    boolean lands = span.endExclusive() <= frames.endExclusive();
    int needed = cells(name, MusicSystemWriter.REVEAL);
    boolean inside = needed <= to - from + 1 - (lands ? SIGN_CELLS : 0);
    boolean after = !inside && to + needed < bars.size() * CELLS;
    int textAt = after ? to + 1 : from;
    int taken = after ? to + needed : to;
    boolean signHasNoCell = lands && !after && from == to;
    String text = signHasNoCell ? name + " " + Signs.ACCENT : name;
    return new MusicBox(from, to, span.start() < frames.start(), text, textAt, taken, lands);
  }

  private int cells(String text, Look look) {
    return (int) Math.ceil((TextWidth.of(text, look) + TextWidth.PADDING) / cellPoints);
  }

  private int firstCell(FrameSpan span) {
    return cellOf(Math.max(span.start(), frames.start()));
  }

  private int lastCell(FrameSpan span, int from) {
    int last =
        span.endExclusive() >= frames.endExclusive()
            ? bars.size() * CELLS - 1
            : cellOf(span.endExclusive()) - 1;
    return Math.max(from, last);
  }

  /** The cell in which a frame begins. */
  private int cellOf(long frame) {
    int index = bars.size() - 1;
    while (index > 0 && bars.get(index).startFrame() > frame) {
      index--;
    }
    FilmBar bar = bars.get(index);
    long cell = CELLS * (frame - bar.startFrame()) / Math.max(1, bar.lengthFrames());
    return index * CELLS + (int) Math.max(0, Math.min(CELLS - 1, cell));
  }
}
