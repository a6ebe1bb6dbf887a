package org.barsheet.workbook.pen;

import java.util.regex.Pattern;

/**
 * How much room a text takes in Arial, so that rows are high enough for what wraps in them. Widths
 * of letters are those of Helvetica in Adobe's Core 14 font metrics, which Arial and Liberation
 * Sans share, in thousandths of the size; other letters count as wide as a digit, those of East
 * Asian scripts as wide as they are high.
 */
public final class TextWidth {

  private static final int FIRST = 32;

  private static final int[] PLAIN = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, //
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, //
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, //
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, //
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, //
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
  };

  private static final int[] BOLD = {
    278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, //
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611, //
    975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778, //
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, //
    333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, //
    611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584
  };

  /** A line may end after a hyphen. */
  private static final Pattern AFTER_HYPHEN = Pattern.compile("(?<=-)");

  private static final int OTHER = 556;
  private static final int EAST_ASIAN = 1000;
  private static final int FIRST_EAST_ASIAN = 0x2E80;

  /** Room a cell keeps free at its left and right together, in points. */
  public static final double PADDING = 5;

  private TextWidth() {}

  /** Width in points of a text in one line, in the letters of a look. */
  public static double of(String text, Look look) {
    long thousandths = text.codePoints().mapToLong(letter -> widthOf(letter, look.bold())).sum();
    return thousandths * look.points() / 1000;
  }

  private static int widthOf(int letter, boolean bold) {
    int index = letter - FIRST;
    if (index >= 0 && index < PLAIN.length) {
      return bold ? BOLD[index] : PLAIN[index];
    }
    return letter >= FIRST_EAST_ASIAN ? EAST_ASIAN : OTHER;
  }

  /**
   * How many lines a text takes in a cell that wraps at spaces and hyphens.
   *
   * @param cellPoints width of the cell
   */
  public static int lines(String text, Look look, double cellPoints) {
    double room = Math.max(look.points(), cellPoints - PADDING);
    return text.lines().mapToInt(line -> linesOf(line, look, room)).sum();
  }

  private static int linesOf(String paragraph, Look look, double room) {
    double space = of(" ", look);
    int lines = 1;
    double used = 0;
    for (String word : paragraph.split(" ", -1)) {
      double gap = used > 0 ? space : 0;
      for (String part : AFTER_HYPHEN.split(word, -1)) {
        double width = of(part, look);
        if (used > 0 && used + gap + width > room) {
          lines++;
          used = 0;
          gap = 0;
        }
        used += gap + width;
        gap = 0;
        while (used > room) {
          lines++;
          used -= room;
        }
      }
    }
    return lines;
  }

  /** Height in points of a row whose fullest cell has so many lines of so many points. */
  public static double height(int lines, double points) {
    return Math.max(1, lines) * points * 1.17 + 3;
  }
}
