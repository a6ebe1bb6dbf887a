package org.barsheet.workbook.pen;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.barsheet.clock.FrameRate;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Film;
import org.barsheet.plan.Reveal;

/** How the sheets say things. */
public final class SheetWords {

  private SheetWords() {}

  /** {@code 1 frame}, {@code 5,072 frames}. */
  public static String count(long number, String thing) {
    return String.format(Locale.ROOT, "%,d %s%s", number, thing, number == 1 ? "" : "s");
  }

  /** {@code 24 fps}, {@code 29.97 fps drop-frame}, {@code 29.97 fps without drop-frame}. */
  public static String rate(FrameRate rate) {
    boolean mayDrop = rate.denominator() != 1 && rate.nominal() % 30 == 0;
    String number = rate.toString().replace("df", "");
    String counting = rate.dropFrame() ? " drop-frame" : mayDrop ? " without drop-frame" : "";
    return number + " fps" + counting;
  }

  /** The line of every sheet's heading that says how its frames count. */
  static String counting(Film film) {
    return rate(film.rate())
        + "   first frame "
        + film.firstFrame()
        + "   lead "
        + film.lead()
        + " f";
  }

  /** {@code score 4be1c07a plan 91d2f3aa}. */
  static String versions(FilmSheet film) {
    return film.inputs().stream()
        .map(input -> input.role() + " " + input.version())
        .collect(Collectors.joining("   "));
  }

  /** Length of a run of frames in seconds, to two decimals. */
  public static BigDecimal seconds(Film film, long frames) {
    return film.rate().startOf(frames).toDecimal(2);
  }

  /** {@code 3 min 31.33 s}, {@code 8.25 s}. */
  public static String duration(Film film, long frames) {
    BigDecimal[] minutes = seconds(film, frames).divideAndRemainder(BigDecimal.valueOf(60));
    String rest = minutes[1] + " s";
    return minutes[0].signum() == 0 ? rest : minutes[0].toBigInteger() + " min " + rest;
  }

  /** {@code on ones}, {@code on twos}, {@code on 5s}. */
  public static String shown(int framesPerPhotograph) {
    List<String> words =
        List.of("ones", "twos", "threes", "fours", "fives", "sixes", "sevens", "eights");
    return "on "
        + (framesPerPhotograph <= words.size()
            ? words.get(framesPerPhotograph - 1)
            : framesPerPhotograph + "s");
  }

  /** {@code lamp-1 opens, 30 photographs on twos}; where it is squeezed, as it is shown. */
  public static String reveal(PlannedReveal planned) {
    Reveal reveal = planned.reveal();
    String way = reveal.opening() + (reveal.way() == Reveal.Way.OPENS ? " opens, " : " closes, ");
    return way
        + planned
            .squeeze()
            .map(squeeze -> squeezed(reveal, squeeze))
            .orElseGet(
                () ->
                    count(reveal.photographs(), "photograph")
                        + " "
                        + shown(reveal.framesPerPhotograph()));
  }

  /** {@code 48 photographs on ones instead of twos}, {@code 21 of 30 photographs, on ones}. */
  private static String squeezed(Reveal reveal, PlannedReveal.Squeeze squeeze) {
    boolean all = squeeze.photographs() >= reveal.photographs();
    return (all ? count(reveal.photographs(), "photograph") + " " : "") + squeeze.sentence();
  }

  /** A sentence as it stands in running text: a capital first, a full stop last. */
  public static String sentence(String words) {
    if (words.isEmpty()) {
      return words;
    }
    String start = words.substring(0, words.offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT);
    String all = start + words.substring(words.offsetByCodePoints(0, 1));
    return all.endsWith(".") ? all : all + ".";
  }

  /** Names with commas between them, as findings list them. */
  public static String listed(List<String> names) {
    return org.barsheet.input.Prose.listed(names);
  }

  /** A number to the nearest hundredth. */
  public static double hundredths(double number) {
    return rounded(number, 2);
  }

  /** A number to the nearest thousandth. */
  public static double thousandths(double number) {
    return rounded(number, 3);
  }

  public static double rounded(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
  }

  /** A number without needless decimals. */
  public static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
