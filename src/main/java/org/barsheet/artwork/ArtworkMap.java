package org.barsheet.artwork;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;

/**
 * The artwork drawn to scale, with every opening, its name, and how it moves. Drawn in black and
 * grays only; lengths are millimeters on paper from the map's top left corner.
 *
 * @param denominator the map is drawn at 1 to this
 * @param width width of the map
 * @param height height of the map
 * @param marks what is drawn, undermost first
 * @param legend what the signs mean, a line for each
 */
public record ArtworkMap(
    double denominator, double width, double height, List<MapMark> marks, List<String> legend) {

  /** Scales people know, and can reckon with. */
  private static final double[] SCALES = {
    1, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5, 8, 10, 15, 20, 25, 30, 40, 50, 75, 100
  };

  /** Room around the artwork for the numbers of its squares. */
  private static final double RULER = 6;

  /** Lines of the graph paper are drawn at least so far apart. */
  private static final double LEAST_APART = 2;

  /** Half the width of an arrow's head. */
  private static final double ARROW = 0.8;

  private static final double HAIR = 0.1;
  private static final double THIN = 0.18;
  private static final double HEAVY = 0.5;
  private static final double NUMBER_POINTS = 8;

  public ArtworkMap {
    marks = List.copyOf(marks);
    legend = List.copyOf(legend);
  }

  /** Draws a map as large as it fits. */
  public static ArtworkMap within(
      Artwork artwork, List<Opening> openings, double width, double height) {
    double needed =
        Math.max(
            artwork.squaresWide() * artwork.squareMillimeters() / (width - RULER),
            artwork.squaresHigh() * artwork.squareMillimeters() / (height - RULER));
    double denominator = Math.ceil(needed / 100) * 100;
    for (int i = SCALES.length - 1; i >= 0; i--) {
      denominator = SCALES[i] >= needed ? SCALES[i] : denominator;
    }
    double square = artwork.squareMillimeters() / denominator;
    Drawing drawing = new Drawing(artwork, square);
    drawing.squares();
    openings.forEach(drawing::opening);
    drawing.names(openings);
    return new ArtworkMap(
        denominator,
        artwork.squaresWide() * square + RULER,
        artwork.squaresHigh() * square + RULER,
        drawing.marks,
        MotionMarks.legend(openings));
  }

  /** The map while it is drawn. */
  private static final class Drawing {
    private final Artwork artwork;
    private final double square;
    private final List<MapMark> marks = new ArrayList<>();

    Drawing(Artwork artwork, double square) {
      this.artwork = artwork;
      this.square = square;
    }

    /**
     * The squares of the graph paper, numbered from the top left, and the artwork's edge. Where
     * squares are tiny on paper only some of their lines are drawn.
     */
    void squares() {
      double width = artwork.squaresWide() * square;
      double height = artwork.squaresHigh() * square;
      long step = (long) Math.ceil(LEAST_APART / square);
      long numbered = step * (long) Math.ceil(RULER / (step * square));
      for (long at = 0; at <= artwork.squaresWide(); at += step) {
        line(RULER + at * square, RULER, RULER + at * square, RULER + height);
        if (at % numbered == 0) {
          number(RULER + at * square, RULER / 2, at);
        }
      }
      for (long at = 0; at <= artwork.squaresHigh(); at += step) {
        line(RULER, RULER + at * square, RULER + width, RULER + at * square);
        if (at % numbered == 0) {
          number(RULER / 2, RULER + at * square, at);
        }
      }
      marks.add(new MapMark.Box(new Rect(RULER, RULER, width, height), HEAVY, false));
    }

    private void line(double x1, double y1, double x2, double y2) {
      marks.add(new MapMark.Stroke(x1, y1, x2, y2, HAIR, true, false));
    }

    private void number(double x, double y, long number) {
      marks.add(new MapMark.Text(x, y, Long.toString(number), NUMBER_POINTS, false));
    }

    void opening(Opening opening) {
      Rect rect = onPaper(opening.rect());
      marks.add(new MapMark.Box(rect, THIN, true));
      marks.addAll(MotionMarks.of(opening.motion(), rect));
    }

    void names(List<Opening> openings) {
      Rect sheet =
          new Rect(RULER, RULER, artwork.squaresWide() * square, artwork.squaresHigh() * square);
      List<Rect> rects = openings.stream().map(opening -> onPaper(opening.rect())).toList();
      MapNames names = new MapNames(sheet, withSigns(openings, rects));
      for (int i = 0; i < openings.size(); i++) {
        boolean beside = MotionMarks.isUpright(openings.get(i).motion());
        marks.addAll(names.place(openings.get(i).name(), rects.get(i), beside));
      }
    }

    /** What names keep off: openings, and the arrows that reach out of them. */
    private static List<Rect> withSigns(List<Opening> openings, List<Rect> rects) {
      List<Rect> taken = new ArrayList<>(rects);
      for (int i = 0; i < rects.size(); i++) {
        for (MapMark mark : MotionMarks.of(openings.get(i).motion(), rects.get(i))) {
          if (mark instanceof MapMark.Stroke stroke) {
            taken.add(around(stroke));
          }
        }
      }
      return taken;
    }

    private static Rect around(MapMark.Stroke stroke) {
      return new Rect(
          Math.min(stroke.fromX(), stroke.toX()) - ARROW,
          Math.min(stroke.fromY(), stroke.toY()) - ARROW,
          Math.abs(stroke.toX() - stroke.fromX()) + 2 * ARROW,
          Math.abs(stroke.toY() - stroke.fromY()) + 2 * ARROW);
    }

    private Rect onPaper(Rect squares) {
      return new Rect(
          RULER + squares.left() * square,
          RULER + squares.top() * square,
          squares.width() * square,
          squares.height() * square);
    }
  }
}
