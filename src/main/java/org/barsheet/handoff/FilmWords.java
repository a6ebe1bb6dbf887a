package org.barsheet.handoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.barsheet.clock.FrameRate;
import org.barsheet.plan.Film;

/** What every file says of the film as a whole, and numbers as files spell them. */
final class FilmWords {

  private static final int DECIMALS = 6;
  private static final int PIXEL_DECIMALS = 2;

  /** Between layers from back to front: what follows lies over what comes before. */
  static final String OVER = " < ";

  private FilmWords() {}

  /** {@code 29.97 fps, drop-frame}. */
  static String rate(FrameRate rate) {
    String spelled = rate.toString().replace("df", "");
    return spelled + " fps, " + counting(rate);
  }

  /** {@code drop-frame} or {@code non-drop-frame}. */
  static String counting(FrameRate rate) {
    return rate.dropFrame() ? "drop-frame" : "non-drop-frame";
  }

  /** The film's counting in one line. */
  static String counting(Film film) {
    return "timecode at " + rate(film.rate()) + "; film frame 0 is " + film.firstFrame();
  }

  /** A number to at most six decimals, without trailing zeros. */
  static BigDecimal decimal(double number) {
    return plain(BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_UP));
  }

  /**
   * Pixels of the frame, rounded once, to hundredths: a clip that follows a moving camera by whole
   * pixels would tremble.
   */
  static BigDecimal pixels(double number) {
    return plain(BigDecimal.valueOf(number).setScale(PIXEL_DECIMALS, RoundingMode.HALF_UP));
  }

  /** A number without trailing zeros and without an exponent. */
  static BigDecimal plain(BigDecimal number) {
    return new BigDecimal(number.stripTrailingZeros().toPlainString());
  }
}
