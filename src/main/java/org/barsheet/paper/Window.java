package org.barsheet.paper;

import java.util.Optional;

/**
 * The part of a drawing that one page shows.
 *
 * @param left in the drawing's millimeters
 * @param top the same
 */
record Window(double left, double top, double width, double height) {

  /** What of an ink lies inside; lines are cut off at the edge, the rest is in or out. */
  Optional<Ink> part(Ink ink) {
    if (ink instanceof Ink.Line line) {
      return part(line);
    } else if (ink instanceof Ink.Ring ring) {
      return holds(ring.x(), ring.y()) ? Optional.of(ring) : Optional.empty();
    } else if (ink instanceof Ink.Words words) {
      return holds(words.x(), words.y()) ? Optional.of(words) : Optional.empty();
    }
    return Optional.of(ink);
  }

  private boolean holds(double x, double y) {
    return x >= left && x <= left + width && y >= top && y <= top + height;
  }

  /** The part of a line inside a rectangle (Liang and Barsky 1984). */
  private Optional<Ink> part(Ink.Line line) {
    double across = line.x2() - line.x1();
    double down = line.y2() - line.y1();
    double[] directions = {-across, across, -down, down};
    double[] room = {
      line.x1() - left, left + width - line.x1(), line.y1() - top, top + height - line.y1()
    };
    double from = 0;
    double to = 1;
    for (int side = 0; side < 4; side++) {
      if (directions[side] == 0) {
        to = room[side] < 0 ? -1 : to;
      } else if (directions[side] < 0) {
        from = Math.max(from, room[side] / directions[side]);
      } else {
        to = Math.min(to, room[side] / directions[side]);
      }
    }
    return from >= to
        ? Optional.empty()
        : Optional.of(
            new Ink.Line(
                line.stroke(),
                line.x1() + from * across,
                line.y1() + from * down,
                line.x1() + to * across,
                line.y1() + to * down));
  }
}
