package org.barsheet.review;

import java.math.BigDecimal;
import java.util.Locale;
import org.barsheet.clock.FrameRate;
import org.barsheet.exposure.PhotographMeasures;

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

  /** Where the edge stands and what holds it: {@code , edge 34 mm up, thread 57 mm in}. */
  static String hold(PhotographMeasures measures) {
    StringBuilder words = new StringBuilder();
    measures.height().ifPresent(height -> words.append(", edge ").append(height).append(" mm up"));
    measures.heldBy().ifPresent(support -> words.append(", ").append(support.kind()));
    measures
        .pull()
        .filter(pull -> measures.heldBy().filter(by -> by.kind().equals("thread")).isPresent())
        .ifPresent(pull -> words.append(" ").append(pull).append(" mm in"));
    return words.toString();
  }
}
