package org.barsheet.artwork;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Brightens;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Iris;
import org.barsheet.plan.Opening.LiftsOff;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Slides;
import org.barsheet.plan.Rect;

/**
 * The sign that says how an opening moves, near the edge of its rectangle so that names have room.
 */
final class MotionMarks {

  private static final double THIN = 0.25;
  private static final double HINGE = 1.1;
  private static final double SMALL = 1.2;
  private static final int RAYS = 8;

  private MotionMarks() {}

  /** Whether the sign stands upright at the right side of the opening; else it lies at its foot. */
  static boolean isUpright(Opening.Motion motion) {
    if (motion instanceof Hinged hinged) {
      return isUpright(hinged.hinge());
    }
    return motion instanceof Slides slides && isUpright(slides.toward());
  }

  private static boolean isUpright(Side toward) {
    return toward == Side.TOP || toward == Side.BOTTOM;
  }

  /** The sign for a motion, in the lower right part of a rectangle on paper. */
  static List<MapMark> of(Opening.Motion motion, Rect rect) {
    if (motion instanceof Hinged hinged) {
      return hinged(hinged.hinge(), rect);
    } else if (motion instanceof Slides slides) {
      return slides(slides.toward(), rect);
    } else if (motion instanceof LiftsOff) {
      return lifted(rect);
    } else if (motion instanceof Brightens) {
      return lamp(rect);
    } else if (motion instanceof Iris) {
      return iris(rect);
    }
    return List.of();
  }

  /** A heavy line on the hinge, and an arrow that goes where the free edge goes. */
  private static List<MapMark> hinged(Side hinge, Rect rect) {
    MapMark edge = edge(hinge, rect, HINGE);
    return List.of(edge, arrow(hinge, rect, 0.9, 0.35));
  }

  /** An arrow from inside the opening out over the edge that the shutter goes to. */
  private static List<MapMark> slides(Side toward, Rect rect) {
    return List.of(arrow(toward, rect, 0.6, -0.3));
  }

  /** The edge of a rectangle on a side. */
  private static MapMark edge(Side side, Rect rect, double weight) {
    double right = rect.left() + rect.width();
    double bottom = rect.top() + rect.height();
    double x1 = side == Side.RIGHT ? right : rect.left();
    double x2 = side == Side.LEFT ? rect.left() : right;
    double y1 = side == Side.BOTTOM ? bottom : rect.top();
    double y2 = side == Side.TOP ? rect.top() : bottom;
    return new MapMark.Stroke(x1, y1, x2, y2, weight, false, false);
  }

  /**
   * An arrow toward a side: along the foot of the rectangle, or upright along its right side.
   *
   * @param from where it begins, as a share of the way from that side across the rectangle
   * @param to where it ends
   */
  private static MapMark arrow(Side side, Rect rect, double from, double to) {
    boolean across = !isUpright(side);
    boolean backwards = side == Side.RIGHT || side == Side.BOTTOM;
    double length = across ? rect.width() : rect.height();
    double start = (backwards ? 1 - from : from) * length;
    double end = (backwards ? 1 - to : to) * length;
    double beside = SMALL;
    return across
        ? new MapMark.Stroke(
            rect.left() + start,
            rect.top() + rect.height() - beside,
            rect.left() + end,
            rect.top() + rect.height() - beside,
            THIN,
            false,
            true)
        : new MapMark.Stroke(
            rect.left() + rect.width() - beside,
            rect.top() + start,
            rect.left() + rect.width() - beside,
            rect.top() + end,
            THIN,
            false,
            true);
  }

  private static double cornerX(Rect rect) {
    return rect.left() + rect.width() - 1.5 * SMALL;
  }

  private static double cornerY(Rect rect) {
    return rect.top() + rect.height() - 1.5 * SMALL;
  }

  /** The point of an arrow that comes toward the eye: a dot in a ring. */
  private static List<MapMark> lifted(Rect rect) {
    return List.of(
        new MapMark.Ring(cornerX(rect), cornerY(rect), SMALL, THIN, false),
        new MapMark.Ring(cornerX(rect), cornerY(rect), SMALL / 3, THIN, true));
  }

  /** A ring with rays. */
  private static List<MapMark> lamp(Rect rect) {
    List<MapMark> marks = new ArrayList<>();
    double x = cornerX(rect);
    double y = cornerY(rect);
    marks.add(new MapMark.Ring(x, y, SMALL / 2, THIN, false));
    for (int ray = 0; ray < RAYS; ray++) {
      double cos = StrictMath.cos(2 * StrictMath.PI * ray / RAYS);
      double sin = StrictMath.sin(2 * StrictMath.PI * ray / RAYS);
      double near = SMALL * 0.75;
      double far = SMALL * 1.25;
      marks.add(
          new MapMark.Stroke(
              x + near * cos, y + near * sin, x + far * cos, y + far * sin, THIN, false, false));
    }
    return marks;
  }

  /** Two rings about one middle. */
  private static List<MapMark> iris(Rect rect) {
    return List.of(
        new MapMark.Ring(cornerX(rect), cornerY(rect), SMALL, THIN, false),
        new MapMark.Ring(cornerX(rect), cornerY(rect), SMALL / 2, THIN, false));
  }

  /** What each sign means, for the signs that a map's openings need. */
  static List<String> legend(List<Opening> openings) {
    List<String> lines = new ArrayList<>();
    add(lines, openings, Hinged.class, "heavy edge: hinge; arrow: where the free edge goes");
    add(lines, openings, Slides.class, "arrow over an edge: where the shutter slides");
    add(lines, openings, LiftsOff.class, "dot in a ring: lifted off");
    add(lines, openings, Brightens.class, "ring with rays: a lamp that brightens");
    add(lines, openings, Iris.class, "two rings: a hole that grows from its middle");
    return lines;
  }

  private static void add(
      List<String> lines, List<Opening> openings, Class<?> motion, String words) {
    if (openings.stream().anyMatch(opening -> motion.isInstance(opening.motion()))) {
      lines.add(words);
    }
  }
}
