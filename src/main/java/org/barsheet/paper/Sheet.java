package org.barsheet.paper;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.InputFile;
import org.barsheet.paper.Ink.Align;
import org.barsheet.paper.Ink.Words;

/**
 * A sheet while it is drawn: heading, body, and at its foot the bar that checks the print, the
 * caution and the kinds of lines in words.
 */
final class Sheet {

  static final double MARGIN = 12;

  /** Where the body begins. */
  static final double TOP = 31;

  private static final double FOOT = 36;
  private static final double CHECK_BAR = 100;
  private static final double LEGEND_LINE = 10;

  private final FilmSheet film;
  private final double width;
  private final double height;
  private final List<Ink> inks = new ArrayList<>();

  Sheet(FilmSheet film) {
    this.film = film;
    this.width = film.plan().film().paper().width();
    this.height = film.plan().film().paper().height();
  }

  double width() {
    return width;
  }

  double bodyWidth() {
    return width - 2 * MARGIN;
  }

  double bodyHeight() {
    return height - TOP - FOOT;
  }

  Sheet add(Ink ink) {
    inks.add(ink);
    return this;
  }

  /** The finished sheet. */
  PaperPage page(String name, String title, String facts) {
    List<Ink> whole = new ArrayList<>();
    whole.add(Words.bold(MARGIN, 17, 16, title).within(bodyWidth()));
    whole.add(
        Words.plain(MARGIN, 22.5, film.plan().title() + " · " + facts)
            .inGray()
            .within(bodyWidth()));
    whole.add(new Ink.Line(Stroke.RULE, MARGIN, 25, width - MARGIN, 25));
    whole.addAll(inks);
    foot(whole);
    return new PaperPage(name, film.plan().title() + ": " + title, width, height, whole);
  }

  private void foot(List<Ink> whole) {
    double y = height - FOOT + 9;
    whole.add(new Ink.Line(Stroke.CHECK, MARGIN, y, MARGIN + CHECK_BAR, y));
    for (int tick = 0; tick <= 10; tick++) {
      double x = MARGIN + tick * CHECK_BAR / 10;
      whole.add(new Ink.Line(Stroke.SIZE, x, y - 2, x, y + (tick % 10 == 0 ? 2 : 0)));
    }
    double right = MARGIN + CHECK_BAR + 5;
    whole.add(Words.bold(right, y - 0.6, 9, "Measure this bar: 100 mm."));
    whole.add(Words.plain(right, y + 3.6, "If not, print at 100 %, not fitted to the page."));
    whole.add(
        Words.plain(
            MARGIN,
            y + 8.5,
            "! Blades: cut away from your hand, on a mat, in good light; cap the blade. Children"
                + " don't cut alone."));
    legend(whole, y + 13.5);
    StringBuilder version = new StringBuilder();
    for (InputFile input : film.inputs()) {
      version.append(input.role()).append(' ').append(input.version()).append("  ");
    }
    whole.add(
        new Words(
            version.toString().strip(), width - MARGIN, y + 18.2, 8, false, Align.END, 0, true));
  }

  /** The kinds of lines on this sheet, each with a sample. */
  private void legend(List<Ink> whole, double y) {
    double x = MARGIN;
    double line = y;
    for (Stroke stroke : strokes()) {
      double length = LEGEND_LINE + 2 + stroke.words().length() * 1.48 + 4;
      if (x > MARGIN && x + length > width - MARGIN) {
        x = MARGIN;
        line += 4.4;
      }
      whole.add(
          stroke == Stroke.THREAD
              ? new Ink.Ring(stroke, x + LEGEND_LINE / 2, line - 1, 1.5)
              : new Ink.Line(stroke, x, line - 1, x + LEGEND_LINE, line - 1));
      whole.add(
          new Words(stroke.words(), x + LEGEND_LINE + 2, line, 8, false, Align.START, 0, false));
      x += length;
    }
  }

  private Set<Stroke> strokes() {
    Set<Stroke> strokes = EnumSet.noneOf(Stroke.class);
    for (Ink ink : inks) {
      if (ink instanceof Ink.Line line && !line.stroke().words().isEmpty()) {
        strokes.add(line.stroke());
      } else if (ink instanceof Ink.Ring ring && !ring.stroke().words().isEmpty()) {
        strokes.add(ring.stroke());
      }
    }
    return strokes;
  }
}
