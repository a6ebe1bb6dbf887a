package org.barsheet.workbook;

import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.cues.FilmBar;
import org.barsheet.score.Mark;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.Signs;
import org.barsheet.workbook.pen.TextWidth;
import org.jspecify.annotations.Nullable;

/** Draws a system line by line: marks, bars, panels, occurrences, reveals. */
final class MusicSystemWriter {

  private static final int CELLS = MusicWorksheet.CELLS_A_BAR;

  /** Cells of a bar that its number takes. */
  private static final int NUMBER_CELLS = 4;

  /** Keeps words off the edge of their box. */
  private static final String INSET = " ";

  private static final double MARK_POINTS = 17;
  private static final double BAR_POINTS = 22;
  private static final double LINE_POINTS = 15;
  private static final double GAP_POINTS = 5;

  private static final Look MARK = Look.BODY.inBold().edged(Edges.box(Line.THIN)).centered();
  static final Look PANEL = Look.BODY.inBold().on(Ink.BAND);
  static final Look RETURN = Look.BODY.size(8);
  static final Look REVEAL = Look.BODY.on(Ink.LAMP).edged(Edges.box(Line.THIN));

  private final Book book;
  private final List<FilmBar> bars;
  private final List<List<MusicBox>> panels;
  private final List<List<MusicBox>> occurrences;
  private final List<List<MusicBox>> reveals;

  MusicSystemWriter(Book book, MusicSystem system) {
    this.book = book;
    this.bars = system.bars();
    this.panels = system.panels();
    this.occurrences = system.occurrences();
    this.reveals = system.reveals();
  }

  /** Height of the system in points. */
  double height() {
    int lines = panels.size() + occurrences.size() + reveals.size();
    return MARK_POINTS + BAR_POINTS + lines * LINE_POINTS + 2 * GAP_POINTS;
  }

  /** Writes it from a row on; returns the row below it. */
  int write(SheetPen pen, int firstRow) {
    int row = firstRow;
    marks(pen.row(row++, MARK_POINTS));
    bars(pen.row(row++, BAR_POINTS));
    for (List<MusicBox> line : panels) {
      ground(pen.row(row++, LINE_POINTS), Line.NONE);
      line.forEach(box -> panel(pen, box));
    }
    ground(pen.row(row++, GAP_POINTS), Line.NONE);
    for (List<MusicBox> line : occurrences) {
      ground(pen.row(row++, LINE_POINTS), Line.NONE);
      line.forEach(box -> occurrence(pen, box));
    }
    for (List<MusicBox> line : reveals) {
      ground(pen.row(row++, LINE_POINTS), Line.NONE);
      line.forEach(box -> reveal(pen, box));
    }
    ground(pen.row(row++, GAP_POINTS), Line.THIN);
    return row;
  }

  private void marks(SheetPen pen) {
    for (int index = 0; index < bars.size(); index++) {
      String text = marksOf(bars.get(index));
      if (!text.isEmpty()) {
        double wanted = TextWidth.of(text, MARK) + 2 * TextWidth.PADDING;
        int cells = (int) Math.min(CELLS, Math.ceil(wanted / pen.points(0)));
        pen.joined(index * CELLS, index * CELLS + cells - 1, text, MARK);
      }
    }
  }

  private String marksOf(FilmBar bar) {
    return book.film().timing().music().score().marks().stream()
        .filter(mark -> bar.bar().contains(mark.tick()))
        .map(Mark::text)
        .collect(Collectors.joining(", "));
  }

  private void bars(SheetPen pen) {
    for (int index = 0; index < bars.size(); index++) {
      bar(pen, index * CELLS, bars.get(index), index > 0 ? bars.get(index - 1) : null);
    }
  }

  private void bar(SheetPen pen, int cell, FilmBar bar, @Nullable FilmBar before) {
    Edges top = Edges.NONE.top(Line.HEAVY);
    Look look = Look.BODY.edged(top);
    pen.blanks(cell, cell + CELLS, look);
    Look number = Look.BODY.size(13).inBold().left().edged(top.left(Line.THIN));
    pen.number(cell, bar.bar().number(), number.number(Look.INSET_WHOLE).left());
    pen.blanks(cell + 1, cell + NUMBER_CELLS, look).join(cell, cell + NUMBER_CELLS - 1);
    String timecode = book.film().plan().film().timecode(bar.startFrame()).toString();
    pen.text(cell + NUMBER_CELLS, timecode, look);
    pen.text(cell + NUMBER_CELLS + 8, "f " + bar.startFrame(), look.in(Ink.PENCIL));
    boolean newMeter = before == null || !before.bar().meter().equals(bar.bar().meter());
    String meter = newMeter ? bar.bar().meter() + "   " : "";
    String shortness = bar.bar().isShort() ? "short   " : "";
    pen.text(
        cell + CELLS - 1,
        shortness + meter + bar.framesPerBeat() + " ",
        look.right().edged(top.right(Line.THIN)));
  }

  /** Bar lines and beats, on which boxes are drawn. */
  private void ground(SheetPen pen, Line bottom) {
    for (int index = 0; index < bars.size(); index++) {
      int beats = bars.get(index).bar().beatTicks().size();
      for (int cell = 0; cell < CELLS; cell++) {
        boolean beat = cell > 0 && cell * beats % CELLS == 0;
        Line left = cell == 0 ? Line.THIN : beat ? Line.DOTTED : Line.NONE;
        Line right = cell == CELLS - 1 ? Line.THIN : Line.NONE;
        if (left != Line.NONE || right != Line.NONE || bottom != Line.NONE) {
          Edges edges = new Edges(Line.NONE, right, bottom, left);
          pen.blank(index * CELLS + cell, Look.BODY.edged(edges));
        }
      }
    }
  }

  private void panel(SheetPen pen, MusicBox box) {
    Edges inside = Edges.NONE.top(Line.THIN).bottom(Line.THIN);
    Line start = box.goesOnFrom() ? Line.DASHED : Line.CUT;
    draw(pen, box, PANEL, inside, start, Line.THIN);
  }

  private void occurrence(SheetPen pen, MusicBox box) {
    Line start = box.goesOnFrom() ? Line.NONE : Line.TIDE;
    draw(pen, box, RETURN, Edges.NONE.bottom(Line.TIDE), start, Line.NONE);
  }

  private void reveal(SheetPen pen, MusicBox box) {
    Edges inside = Edges.NONE.top(Line.THIN).bottom(Line.THIN);
    draw(pen, box, REVEAL, inside, box.goesOnFrom() ? Line.DASHED : Line.THIN, Line.THIN);
  }

  private static void draw(
      SheetPen pen, MusicBox box, Look look, Edges inside, Line start, Line end) {
    for (int cell = box.from(); cell <= box.to(); cell++) {
      Edges edges = cell == box.from() ? inside.left(start) : inside;
      Look drawn = look.edged(cell == box.to() ? edges.right(end) : edges);
      if (cell == box.from() && box.textAt() == cell) {
        pen.text(cell, INSET + box.text(), drawn);
      } else if (cell == box.to() && box.lands()) {
        pen.text(cell, Signs.ACCENT, drawn.right());
      } else {
        pen.blank(cell, drawn);
      }
    }
    if (box.textAt() > box.to()) {
      pen.text(box.textAt(), box.text(), Look.BODY);
    }
  }
}
