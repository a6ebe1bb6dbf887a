package org.barsheet.artwork;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.artwork.PaperEdge.Kind;
import org.barsheet.artwork.PaperEdge.Point;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Iris;
import org.barsheet.plan.Opening.LiftsOff;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Slides;

/** Where the edges of an opening's paper are while it moves: plain trigonometry. */
public final class PaperState {

  private final double left;
  private final double top;
  private final double width;
  private final double height;
  private final List<PaperEdge> edges = new ArrayList<>();

  private PaperState(Opening opening, ModelScale scale) {
    this.left = scale.millimeters(opening.rect().left());
    this.top = scale.millimeters(opening.rect().top());
    this.width = scale.millimeters(opening.rect().width());
    this.height = scale.millimeters(opening.rect().height());
  }

  /**
   * The hole, and what covers it.
   *
   * @param amount how far it has moved, in the unit of its measure
   */
  public static List<PaperEdge> of(Opening opening, Artwork artwork, double amount) {
    PaperState state = new PaperState(opening, ModelScale.of(opening, artwork));
    state.around(Kind.HOLE, 1, 0);
    if (opening.motion() instanceof Hinged hinged) {
      state.flap(hinged.hinge(), amount);
    } else if (opening.motion() instanceof Slides slides) {
      state.shutter(slides.toward(), amount);
    } else if (opening.motion() instanceof LiftsOff) {
      state.around(Kind.FREE, 1, amount);
    } else if (opening.motion() instanceof Iris && amount > 0) {
      state.around(Kind.FREE, amount / state.width, 0);
    }
    return List.copyOf(state.edges);
  }

  /** The hole's outline, smaller by a share about its middle, so far above the table. */
  private void around(Kind kind, double share, double up) {
    double aside = height * (1 - share) / 2;
    double in = width * (1 - share) / 2;
    box(kind, kind, Side.LEFT, List.of(aside, height - aside), List.of(in, width - in), up, up);
  }

  /** The free edge lies w·cos θ from the hinge, w·sin θ above the table. */
  private void flap(Side hinge, double degrees) {
    double angle = StrictMath.toRadians(degrees);
    double flap = depth(hinge);
    List<Double> reach = List.of(0.0, flap * StrictMath.cos(angle));
    double up = flap * StrictMath.sin(angle);
    box(Kind.COVER, Kind.FREE, hinge, List.of(0.0, along(hinge)), reach, 0, up);
  }

  /** Its trailing edge, flush with the hole at first, is the one that uncovers it. */
  private void shutter(Side toward, double way) {
    Side away = opposite(toward);
    List<Double> reach = List.of(depth(away) + way, way);
    box(Kind.COVER, Kind.FREE, away, List.of(0.0, along(away)), reach, 0, 0);
  }

  /**
   * Four edges of a sheet: three of one kind, and the one at the far reach of another.
   *
   * @param along from and to along the side it is measured from
   * @param reach from and to away from that side
   * @param nearUp height of its near edge
   * @param farUp height of its far edge
   */
  private void box(
      Kind kind,
      Kind farKind,
      Side side,
      List<Double> along,
      List<Double> reach,
      double nearUp,
      double farUp) {
    Point nearStart = point(side, along.get(0), reach.get(0), nearUp);
    Point nearEnd = point(side, along.get(1), reach.get(0), nearUp);
    Point farStart = point(side, along.get(0), reach.get(1), farUp);
    Point farEnd = point(side, along.get(1), reach.get(1), farUp);
    edges.add(new PaperEdge(kind, nearStart, nearEnd));
    edges.add(new PaperEdge(kind, nearStart, farStart));
    edges.add(new PaperEdge(kind, nearEnd, farEnd));
    edges.add(new PaperEdge(farKind, farStart, farEnd));
  }

  /** A point so far along a side of the hole and so far in from it. */
  private Point point(Side side, double along, double in, double up) {
    return switch (side) {
      case LEFT -> new Point(left + in, top + along, up);
      case RIGHT -> new Point(left + width - in, top + along, up);
      case TOP -> new Point(left + along, top + in, up);
      case BOTTOM -> new Point(left + along, top + height - in, up);
    };
  }

  private double along(Side side) {
    return side == Side.LEFT || side == Side.RIGHT ? height : width;
  }

  private double depth(Side side) {
    return side == Side.LEFT || side == Side.RIGHT ? width : height;
  }

  private static Side opposite(Side side) {
    return switch (side) {
      case LEFT -> Side.RIGHT;
      case RIGHT -> Side.LEFT;
      case TOP -> Side.BOTTOM;
      case BOTTOM -> Side.TOP;
    };
  }
}
