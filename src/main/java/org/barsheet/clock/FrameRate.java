package org.barsheet.clock;

import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.input.SyntaxException;

/**
 * A film's frame rate, exact, together with how its timecode counts. The rates are those of SMPTE
 * ST 12-1:2014 as listed by OpenTimelineIO's {@code rationalTime.cpp}; drop-frame counting exists
 * at 30000/1001 and 60000/1001 only (same source).
 *
 * @param numerator frames per {@code denominator} seconds
 * @param denominator 1, or 1001
 * @param dropFrame whether timecode labels are skipped to keep up with the clock
 */
public record FrameRate(int numerator, int denominator, boolean dropFrame) {

  public static final FrameRate FPS_23_976 = new FrameRate(24000, 1001, false);
  public static final FrameRate FPS_24 = new FrameRate(24, 1, false);
  public static final FrameRate FPS_25 = new FrameRate(25, 1, false);
  public static final FrameRate FPS_29_97 = new FrameRate(30000, 1001, false);
  public static final FrameRate FPS_29_97_DF = new FrameRate(30000, 1001, true);
  public static final FrameRate FPS_30 = new FrameRate(30, 1, false);
  public static final FrameRate FPS_47_952 = new FrameRate(48000, 1001, false);
  public static final FrameRate FPS_48 = new FrameRate(48, 1, false);
  public static final FrameRate FPS_50 = new FrameRate(50, 1, false);
  public static final FrameRate FPS_59_94 = new FrameRate(60000, 1001, false);
  public static final FrameRate FPS_59_94_DF = new FrameRate(60000, 1001, true);
  public static final FrameRate FPS_60 = new FrameRate(60, 1, false);

  /** Every rate a plan may ask for, slowest first. */
  public static final List<FrameRate> ALL =
      List.of(
          FPS_23_976,
          FPS_24,
          FPS_25,
          FPS_29_97,
          FPS_29_97_DF,
          FPS_30,
          FPS_47_952,
          FPS_48,
          FPS_50,
          FPS_59_94,
          FPS_59_94_DF,
          FPS_60);

  public FrameRate {
    boolean exact = denominator == 1 || (denominator == 1001 && numerator % 1000 == 0);
    if (!exact || numerator <= 0) {
      throw new IllegalArgumentException("no frame rate: " + numerator + "/" + denominator);
    }
    if (dropFrame && (denominator == 1 || (numerator != 30000 && numerator != 60000))) {
      throw new IllegalArgumentException("drop-frame exists at 29.97 and 59.94 only");
    }
  }

  /**
   * Reads a rate as a plan spells it: {@code 24}, {@code 23.976}, {@code 29.97df}; {@code 23.98}
   * and {@code 24000/1001} are understood too.
   *
   * @throws SyntaxException if it is none of {@link #ALL}
   */
  public static FrameRate parse(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    boolean drop = wanted.endsWith("df");
    String number = drop ? wanted.substring(0, wanted.length() - 2).strip() : wanted;
    for (FrameRate rate : ALL) {
      if (rate.dropFrame == drop && rate.isSpelled(number)) {
        return rate;
      }
    }
    boolean rateExists = ALL.stream().anyMatch(rate -> rate.isSpelled(number));
    String sentence =
        drop && rateExists
            ? "drop-frame exists at 29.97 and 59.94 only, not at " + number
            : "'" + text.strip() + "' isn't a frame rate";
    throw new SyntaxException(text, 0, sentence, "write one of " + spellings());
  }

  private boolean isSpelled(String number) {
    String exact = numerator + "/" + denominator;
    boolean rounded = denominator == 1001 && number.equals(decimal(2));
    return number.equals(plainName()) || number.equals(exact) || rounded;
  }

  private static String spellings() {
    return String.join(" ", ALL.stream().map(FrameRate::toString).toList());
  }

  /** Labels per label second: 24 for 23.976, 30 for 29.97. */
  public int nominal() {
    return (numerator + denominator - 1) / denominator;
  }

  /** Exact frames per second. */
  public BigFraction framesPerSecond() {
    return BigFraction.of(numerator, denominator);
  }

  /** How long one frame lasts. */
  public Seconds frameDuration() {
    return new Seconds(framesPerSecond().reciprocal());
  }

  /**
   * The frame nearest to an instant: {@code floor(seconds × rate + ½)}, so a tie goes to the later
   * frame. Negative instants give negative frames.
   *
   * @throws ArithmeticException if the frame does not fit a {@code long}
   */
  public long nearestFrame(Seconds instant) {
    BigInteger top = instant.value().getNumerator().multiply(BigInteger.valueOf(2L * numerator));
    BigInteger bottom = instant.value().getDenominator().multiply(BigInteger.valueOf(denominator));
    return floorDivide(top.add(bottom), bottom.shiftLeft(1));
  }

  /**
   * The frame that is on screen at an instant: {@code floor(seconds × rate)}.
   *
   * @throws ArithmeticException if the frame does not fit a {@code long}
   */
  public long frameShowing(Seconds instant) {
    BigInteger top = instant.value().getNumerator().multiply(BigInteger.valueOf(numerator));
    BigInteger bottom = instant.value().getDenominator().multiply(BigInteger.valueOf(denominator));
    return floorDivide(top, bottom);
  }

  private static long floorDivide(BigInteger top, BigInteger bottom) {
    BigInteger[] parts = top.divideAndRemainder(bottom);
    BigInteger floor = parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    return floor.longValueExact();
  }

  /** The exact instant at which a frame begins. */
  public Seconds startOf(long frame) {
    return new Seconds(
        BigFraction.of(BigInteger.valueOf(frame).multiply(BigInteger.valueOf(denominator)))
            .divide(numerator));
  }

  /** Frames in a day of timecode labels: 2,073,600 at 24 and 23.976; 2,589,408 at 29.97df. */
  public long framesPerDay() {
    long labels = 86_400L * nominal();
    return dropFrame ? labels - 9L * droppedPerMinute() * 144 : labels;
  }

  /**
   * Labels skipped at the start of each minute that is not a tenth one: 2 at 29.97df, 4 at 59.94df
   * (OpenTimelineIO {@code rationalTime.cpp}, citing ST 12-1:2014), else 0.
   */
  int droppedPerMinute() {
    return dropFrame ? nominal() / 15 : 0;
  }

  /** The exact rate as {@code 24000/1001} or {@code 24}, without a word on drop-frame. */
  public String exactName() {
    return denominator == 1 ? Integer.toString(numerator) : numerator + "/" + denominator;
  }

  private String plainName() {
    if (denominator == 1) {
      return Integer.toString(numerator);
    }
    return numerator % 30000 == 0 ? decimal(2) : decimal(3);
  }

  private String decimal(int places) {
    return Seconds.of(numerator, denominator).toDecimal(places).toPlainString();
  }

  /** As a plan spells it: {@code 24}, {@code 23.976}, {@code 29.97df}. */
  @Override
  public String toString() {
    return plainName() + (dropFrame ? "df" : "");
  }
}
