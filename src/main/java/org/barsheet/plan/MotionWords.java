package org.barsheet.plan;

import java.math.BigDecimal;
import java.util.Locale;

/** How an opening moves, as sheets and page say it. */
public final class MotionWords {

  private MotionWords() {}

  /** {@code flap, hinge left, to 90°}, {@code slides up, 40 mm}. */
  public static String of(Opening.Motion motion) {
    if (motion instanceof Opening.Hinged hinged) {
      return "flap, hinge " + word(hinged.hinge()) + ", to " + plain(hinged.degrees()) + "°";
    } else if (motion instanceof Opening.Slides slides) {
      String far = slides.millimeters() > 0 ? ", " + plain(slides.millimeters()) + " mm" : "";
      return "slides " + direction(slides.toward()) + far;
    } else if (motion instanceof Opening.LiftsOff lifts) {
      return "lifts off, " + plain(lifts.millimeters()) + " mm";
    } else if (motion instanceof Opening.Brightens brightens) {
      return "brightens to " + plain(brightens.percent()) + " %";
    } else if (motion instanceof Opening.Iris iris) {
      return "iris to " + plain(iris.percent()) + " %";
    } else if (motion instanceof Opening.Values values) {
      int count = values.values().size();
      return count + (count == 1 ? " value in " : " values in ") + values.unit();
    }
    return "";
  }

  private static String word(Opening.Side side) {
    return side.name().toLowerCase(Locale.ROOT);
  }

  private static String direction(Opening.Side side) {
    return switch (side) {
      case TOP -> "up";
      case BOTTOM -> "down";
      case LEFT, RIGHT -> word(side);
    };
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
