package org.barsheet.photographs;

/**
 * A piece of paper with a hole and a flap, and what a ray from the lens meets there: flat paper, a
 * backing behind the hole, a flap that turns up about the hole's edge or slides, its shadow, and
 * things that lie about.
 *
 * @param width of the photograph in pixels
 * @param height likewise
 * @param hole left, top, right, bottom in pixels
 * @param distance from the lens to the paper in millimeters
 * @param table the flat paper
 * @param piece what the flap is cut from
 * @param backing linear red, green, blue
 */
@SuppressWarnings("ArrayRecordComponent") // made once for a stand, never compared
record PaperScene(
    int width,
    int height,
    double[] hole,
    CopyStand.Flap flap,
    double millimetersPerPixel,
    double distance,
    Paper table,
    Paper piece,
    double[] backing) {

  /** Size of the hole in pixels, in the direction in which it is uncovered. */
  double travel() {
    return isAcross() ? hole[2] - hole[0] : hole[3] - hole[1];
  }

  boolean isAcross() {
    String way = flap.hinge() + flap.slides();
    return way.equals("left") || way.equals("right");
  }

  /** Share of the hole through which the backing is seen, counted by rays. */
  double uncovered(CopyStand.Shot shot) {
    double[] color = new double[3];
    int seen = 0;
    int all = 0;
    for (double y = hole[1] + 0.125; y < hole[3]; y += 0.25) {
      for (double x = hole[0] + 0.125; x < hole[2]; x += 0.25) {
        boolean covered =
            flap.hinge().isEmpty()
                ? isInHole(x - slidAcross(shot), y - slidDown(shot))
                : turned(shot, x - width / 2.0, y - height / 2.0, 0, color);
        seen += covered ? 0 : 1;
        all++;
      }
    }
    return (double) seen / all;
  }

  /** A ray through the paper at a place, in pixels from the middle; adds a quarter of its color. */
  void ray(CopyStand.Shot shot, double fromX, double fromY, double[] color) {
    double x = fromX + width / 2.0;
    double y = fromY + height / 2.0;
    double share = 0.25;
    if (shot.thing.isPresent()) {
      share *= thing(shot.thing.get(), x, y, color);
      if (share == 0) {
        return;
      }
    }
    if (flap.hinge().isEmpty()) {
      slid(shot, x, y, share, color);
    } else if (!turned(shot, fromX, fromY, share, color)) {
      flat(shot, x, y, share, color);
    }
  }

  /** What the light loses there: 0 where a hand or a thread hides the paper. */
  private double thing(CopyStand.Thing thing, double x, double y, double[] color) {
    double dx = x - thing.x();
    double dy = y - thing.y();
    double along = dx * Math.cos(thing.angle()) + dy * Math.sin(thing.angle());
    double beside = dy * Math.cos(thing.angle()) - dx * Math.sin(thing.angle());
    switch (thing.kind()) {
      case HAND -> {
        if (Math.hypot(along / 1.6, beside) < thing.size()) {
          color[0] += 0.25 * 0.42;
          color[1] += 0.25 * 0.21;
          color[2] += 0.25 * 0.14;
          return 0;
        }
        return 1;
      }
      case THREAD -> {
        double bend = 3 * Math.sin(along / 17);
        if (Math.abs(beside - bend) < 0.8 && Math.abs(along) < thing.size()) {
          color[0] += 0.25 * 0.03;
          color[1] += 0.25 * 0.03;
          color[2] += 0.25 * 0.03;
          return 0;
        }
        return 1;
      }
      default -> {
        double rim = Math.hypot(along / 1.4, beside) / thing.size();
        return rim > 1.5 ? 1 : rim < 0.7 ? 0.85 : 1 - 0.15 * (1.5 - rim) / 0.8;
      }
    }
  }

  private double hinge(boolean across, double side) {
    int axis = across ? 0 : 1;
    return hole[side > 0 ? axis : axis + 2];
  }

  private boolean isInHole(double x, double y) {
    return x >= hole[0] && x < hole[2] && y >= hole[1] && y < hole[3];
  }

  /** How far the slide stands to the right of the hole, in pixels. */
  private double slidAcross(CopyStand.Shot shot) {
    double way = shot.amount / millimetersPerPixel;
    return flap.slides().equals("left") ? -way : flap.slides().equals("right") ? way : 0;
  }

  /** The same, below it. */
  private double slidDown(CopyStand.Shot shot) {
    double way = shot.amount / millimetersPerPixel;
    return flap.slides().equals("top") ? -way : flap.slides().equals("bottom") ? way : 0;
  }

  private void slid(CopyStand.Shot shot, double x, double y, double share, double[] color) {
    double onPieceX = x - slidAcross(shot);
    double onPieceY = y - slidDown(shot);
    if (isInHole(onPieceX, onPieceY)) {
      piece.add(onPieceX, onPieceY, share * 0.97, color);
    } else {
      flat(shot, x, y, share, color);
    }
  }

  /** Where the ray meets the turned flap, if it does. All lengths in pixels, the table at 0. */
  private boolean turned(
      CopyStand.Shot shot, double fromX, double fromY, double share, double[] color) {
    double angle = Math.toRadians(shot.amount);
    if (shot.amount < 0.01) {
      double x = fromX + width / 2.0;
      double y = fromY + height / 2.0;
      if (!isInHole(x, y)) {
        return false;
      }
      piece.add(x, y, share, color);
      return true;
    }
    boolean across = flap.hinge().equals("left") || flap.hinge().equals("right");
    double side = flap.hinge().equals("left") || flap.hinge().equals("top") ? 1 : -1;
    double middle = across ? width / 2.0 : height / 2.0;
    double otherMiddle = across ? height / 2.0 : width / 2.0;
    double hinge = hinge(across, side) - middle;
    double length = across ? hole[2] - hole[0] : hole[3] - hole[1];
    double high = distance / millimetersPerPixel;
    double u = across ? fromX : fromY;
    double v = across ? fromY : fromX;
    double slope = side * high / Math.tan(angle);
    double t = (hinge + slope) / (u + slope);
    double reach = high * (1 - t) / Math.sin(angle);
    if (!(t > 0) || t > 1 || reach < 0 || reach > length) {
      return false;
    }
    double other = t * v + otherMiddle;
    double low = across ? hole[1] : hole[0];
    double top = across ? hole[3] : hole[2];
    if (other < low || other >= top) {
      return false;
    }
    double shade = (0.55 + 0.45 * Math.abs(Math.cos(angle))) * share;
    double place = hinge + middle + side * reach;
    piece.add(across ? place : other, across ? other : place, shade, color);
    return true;
  }

  private void flat(CopyStand.Shot shot, double x, double y, double share, double[] color) {
    double lit = share * shadow(shot, x, y);
    if (isInHole(x, y)) {
      double uneven = 1 - 0.12 * (y - hole[1]) / (hole[3] - hole[1]);
      double patch =
          shot.dark > 0
                  && Math.hypot(x - dark(0), y - dark(1))
                      < 0.25 * Math.min(hole[2] - hole[0], hole[3] - hole[1])
              ? 1 - shot.dark
              : 1;
      for (int band = 0; band < 3; band++) {
        color[band] += lit * uneven * patch * backing[band];
      }
      return;
    }
    if (shot.spill > 0 && isBesideHole(x, y)) {
      for (int band = 0; band < 3; band++) {
        color[band] += lit * shot.spill * backing[band];
      }
      lit *= 1 - shot.spill;
    }
    table.add(x, y, lit, color);
  }

  /** The middle of a dark patch of the backing, where the hole is uncovered first. */
  private double dark(int axis) {
    String last = flap.hinge() + flap.slides();
    String early = axis == 0 ? "left" : "top";
    String late = axis == 0 ? "right" : "bottom";
    double share = last.equals(early) ? 0.72 : last.equals(late) ? 0.28 : 0.5;
    return hole[axis] + share * (hole[axis + 2] - hole[axis]);
  }

  private boolean isBesideHole(double x, double y) {
    double by = 0.25 * Math.min(hole[2] - hole[0], hole[3] - hole[1]);
    return x >= hole[0] - by && x < hole[2] + by && y >= hole[1] - by && y < hole[3] + by;
  }

  /**
   * Share of a broad lamp from the upper left, at 45 degrees, that the turned flap lets through.
   */
  private double shadow(CopyStand.Shot shot, double x, double y) {
    if (flap.hinge().isEmpty() || shot.amount < 0.01) {
      return 1;
    }
    boolean across = flap.hinge().equals("left") || flap.hinge().equals("right");
    double side = flap.hinge().equals("left") || flap.hinge().equals("top") ? 1 : -1;
    double hinge = hinge(across, side);
    double length = across ? hole[2] - hole[0] : hole[3] - hole[1];
    double angle = Math.toRadians(shot.amount);
    double hidden = 0;
    for (int lamp = 0; lamp < 3; lamp++) {
      double lean = -0.6 - 0.12 * lamp;
      // A point at height h toward the lamp lies lean·h to the left and 0.35·lean·h up.
      double along = across ? lean : 0.35 * lean;
      double aside = across ? 0.35 * lean : lean;
      double u = across ? x : y;
      double v = across ? y : x;
      // u + along·h = hinge + side·a·cos, h = a·sin
      double a = (u - hinge) / (side * Math.cos(angle) - along * Math.sin(angle));
      double h = a * Math.sin(angle);
      double other = v + aside * h;
      double low = across ? hole[1] : hole[0];
      double top = across ? hole[3] : hole[2];
      hidden += a > 0 && a < length && other >= low && other < top ? 1 : 0;
    }
    return 1 - 0.4 * hidden / 3;
  }
}
