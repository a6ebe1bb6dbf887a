package org.barsheet.review;

import java.math.BigDecimal;
import java.util.Locale;
import org.barsheet.clock.FrameRate;
import org.barsheet.plan.Opening;

/** How the page says things that it does not work out itself. */
final class PageWords {

  private PageWords() {}

  /** {@code 24 fps}, {@code 29.97 fps drop-frame}. */
  static String rate(FrameRate rate) {
    return rate.toString().replace("df", "") + " fps" + (rate.dropFrame() ? " drop-frame" : "");
  }

  /** {@code 3 min 31.33 s}. */
  static String duration(FrameRate rate, long frames) {
    BigDecimal seconds = rate.startOf(frames).toDecimal(2);
    BigDecimal[] minutes = seconds.divideAndRemainder(BigDecimal.valueOf(60));
    String rest = minutes[1] + " s";
    return minutes[0].signum() == 0 ? rest : minutes[0].toBigInteger() + " min " + rest;
  }

  /** A constant in words: {@code INTO_PANEL} is {@code into panel}. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** How an opening moves. */
  static String motion(Opening.Motion motion) {
    if (motion instanceof Opening.Hinged hinged) {
      return "flap, hinge " + word(hinged.hinge()) + ", to " + plain(hinged.degrees()) + "°";
    } else if (motion instanceof Opening.Slides slides) {
      return "slides " + direction(slides.towards());
    } else if (motion instanceof Opening.LiftsOff lifts) {
      return "lifts off, " + plain(lifts.millimetres()) + " mm";
    } else if (motion instanceof Opening.Brightens brightens) {
      return "brightens to " + plain(brightens.percent()) + " %";
    } else if (motion instanceof Opening.Iris iris) {
      return "iris to " + plain(iris.percent()) + " %";
    }
    return motion instanceof Opening.Values values ? "values in " + values.unit() : "";
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
