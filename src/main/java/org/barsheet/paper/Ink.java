package org.barsheet.paper;

/** Something printed on a page, in millimeters from its top left corner. */
sealed interface Ink {

  /** The same further right and down. */
  Ink moved(double right, double down);

  /** A straight line. */
  record Line(Stroke stroke, double x1, double y1, double x2, double y2) implements Ink {
    @Override
    public Line moved(double right, double down) {
      return new Line(stroke, x1 + right, y1 + down, x2 + right, y2 + down);
    }
  }

  /** A circle. */
  record Ring(Stroke stroke, double x, double y, double radius) implements Ink {
    @Override
    public Ring moved(double right, double down) {
      return new Ring(stroke, x + right, y + down, radius);
    }
  }

  /**
   * A filled rectangle without an edge.
   *
   * @param color RRGGBB
   */
  record Patch(String color, double x, double y, double width, double height) implements Ink {
    @Override
    public Patch moved(double right, double down) {
      return new Patch(color, x + right, y + down, width, height);
    }
  }

  /** Where words begin, end or have their middle. */
  enum Align {
    START,
    MIDDLE,
    END
  }

  /**
   * A line of words on its base line.
   *
   * @param points size of the letters, 8 or more
   * @param turned degrees anticlockwise about its point
   * @param gray whether it is gray instead of black
   */
  record Words(
      String words,
      double x,
      double y,
      double points,
      boolean bold,
      Align align,
      double turned,
      boolean gray)
      implements Ink {

    static Words plain(double x, double y, String words) {
      return new Words(words, x, y, 9, false, Align.START, 0, false);
    }

    static Words bold(double x, double y, double points, String words) {
      return new Words(words, x, y, points, true, Align.START, 0, false);
    }

    /** Smaller letters, where it would else be longer than there is room for. */
    Words within(double millimeters) {
      double letters = words.length() * LETTER * MILLIMETERS_PER_POINT;
      double fitting = Math.max(LEAST, Math.min(points, millimeters / letters));
      return new Words(words, x, y, fitting, bold, align, turned, gray);
    }

    /** Whether it is likely to be longer than there is room for in the smallest letters. */
    boolean isTooLongFor(double millimeters) {
      return words.length() * LETTER * MILLIMETERS_PER_POINT * LEAST > millimeters;
    }

    /** RRGGBB. */
    String color() {
      return gray ? "5B6570" : "000000";
    }

    Words inGray() {
      return new Words(words, x, y, points, bold, align, turned, true);
    }

    Words turnedBy(double degrees) {
      return new Words(words, x, y, points, bold, align, degrees, gray);
    }

    @Override
    public Words moved(double right, double down) {
      return new Words(words, x + right, y + down, points, bold, align, turned, gray);
    }

    /** Width of a letter as a share of its height, about. */
    private static final double LETTER = 0.56;

    /** Nothing in print is smaller. */
    private static final double LEAST = 8;

    static final double MILLIMETERS_PER_POINT = 25.4 / 72;
  }
}
