package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.artwork.MapMark;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Rect;
import org.barsheet.timing.MotifTally;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.pen.Signs;

/**
 * The whole film to scale, for the top of the wall sheet: numbered boxes for the panels, above them
 * the marks, below them what moves and lands and where each motif returns. A long film goes on in
 * further lines, each of which begins with a bar. Lengths are millimeters.
 */
final class FilmStrip {

  /** Average width of a panel's box, from which more lines are taken. */
  private static final double LEAST_PANEL = 9;

  private static final int MOST_LINES = 12;

  /** Room at the left for the names of the motifs. */
  private static final double NAMES = 18;

  private static final double MARKS = 5;
  private static final double BOXES = 6;
  private static final double MOVES = 4;
  private static final double MOTIF = 4;
  private static final double GAP = 2.5;

  /** Words nearer than this to the ones before are left out. */
  private static final double LEAST_APART = 5;

  private static final double LINE = 0.25;
  private static final double TICK = 0.4;
  private static final double MOVING = 1.6;

  private final FilmSheet film;
  private final double scale;
  private final List<FrameSpan> lines;

  /**
   * A strip.
   *
   * @param width of the page
   */
  FilmStrip(FilmSheet film, double width) {
    this.film = film;
    double room = width - NAMES;
    int shots = film.timing().shots().size();
    int wanted = Math.min(MOST_LINES, (int) Math.ceil(shots * LEAST_PANEL / room));
    this.lines = lines(film, wanted);
    long longest = lines.stream().mapToLong(FrameSpan::length).max().orElse(1);
    this.scale = room / longest;
  }

  /** The film in about equal parts, each but the first beginning with a bar. */
  private static List<FrameSpan> lines(FilmSheet film, int wanted) {
    long frames = film.timing().lengthFrames();
    List<FrameSpan> lines = new ArrayList<>();
    long start = 0;
    for (FilmBar bar : film.timing().bars()) {
      long fair = frames * (lines.size() + 1) / wanted;
      if (lines.size() + 1 < wanted && bar.startFrame() >= fair && bar.startFrame() < frames) {
        lines.add(new FrameSpan(start, bar.startFrame()));
        start = bar.startFrame();
      }
    }
    lines.add(new FrameSpan(start, frames));
    return lines;
  }

  int count() {
    return lines.size();
  }

  /** Height of one line. */
  double height() {
    return MARKS + BOXES + MOVES + MOTIF * film.timing().tallies().size() + GAP;
  }

  /** What is drawn in a line. */
  List<MapMark> marks(int line) {
    Marks marks = new Marks(lines.get(line));
    marks.marks();
    marks.panels();
    marks.movements();
    double top = MARKS + BOXES + MOVES;
    for (MotifTally tally : film.timing().tallies()) {
      marks.returns(tally, top);
      top += MOTIF;
    }
    return marks.drawn;
  }

  /** The marks of one line while they are drawn. */
  private final class Marks {

    private final FrameSpan span;
    private final List<MapMark> drawn = new ArrayList<>();

    Marks(FrameSpan span) {
      this.span = span;
    }

    private double x(long frame) {
      long within = Math.max(span.start(), Math.min(frame, span.endExclusive()));
      return NAMES + (within - span.start()) * scale;
    }

    private boolean holds(long frame) {
      return span.contains(frame);
    }

    void marks() {
      double free = 0;
      for (Cue cue : film.timing().cues()) {
        if (cue.kind() == Cue.Kind.MARK && holds(cue.frame()) && x(cue.frame()) >= free) {
          free = x(cue.frame()) + LEAST_APART;
          mark(cue);
        }
      }
    }

    /** A mark in a box as scores have it, or only its first letters where it is a long one. */
    private void mark(Cue cue) {
      String name = cue.name().length() > 3 ? cue.name().substring(0, 3) : cue.name();
      double x = x(cue.frame());
      drawn.add(new MapMark.Box(new Rect(x - 2.2, 0.3, 4.4, 3.8), LINE, false));
      drawn.add(new MapMark.Text(x, 2.2, name, 8, true));
    }

    void panels() {
      for (Shot shot : film.timing().shots()) {
        FrameSpan frames = shot.frames();
        if (frames.start() < span.endExclusive() && frames.endExclusive() > span.start()) {
          double left = x(frames.start());
          double width = x(frames.endExclusive()) - left;
          drawn.add(new MapMark.Box(new Rect(left, MARKS, width, BOXES), LINE, false));
          String name = shot.panel().name();
          if (holds(frames.start()) && width > 1.8 * name.length() + 1) {
            drawn.add(new MapMark.Text(left + width / 2, MARKS + BOXES / 2, name, 8.5, true));
          }
        }
      }
    }

    void movements() {
      double y = MARKS + BOXES + MOVES / 2;
      for (PlannedReveal reveal : film.reveals()) {
        double left = x(reveal.firstGapFrame());
        double right = x(reveal.landsFrame());
        if (right > left) {
          drawn.add(new MapMark.Stroke(left, y, right, y, MOVING, true, false));
        }
        if (holds(reveal.landsFrame())) {
          drawn.add(new MapMark.Text(right, y, Signs.ACCENT, 9, true));
        }
      }
    }

    void returns(MotifTally tally, double top) {
      double middle = top + MOTIF / 2;
      drawn.add(new MapMark.Text(NAMES / 2, middle, tally.sign() + " " + tally.motif(), 8, false));
      double free = 0;
      for (Cue cue : film.timing().cues()) {
        boolean counts = cue.kind() == Cue.Kind.RETURN && cue.number() > 0;
        if (counts && cue.name().equals(tally.motif()) && holds(cue.frame())) {
          double x = x(cue.frame());
          drawn.add(new MapMark.Stroke(x, top + 0.4, x, top + MOTIF - 0.4, TICK, false, false));
          if (x >= free) {
            free = x + LEAST_APART;
            drawn.add(new MapMark.Text(x + 2.4, middle, "" + cue.number(), 8, false));
          }
        }
      }
    }
  }
}
