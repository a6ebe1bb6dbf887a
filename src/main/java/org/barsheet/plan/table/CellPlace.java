package org.barsheet.plan.table;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where a cell of a workbook lies. {@code toString} is the position that messages name.
 *
 * @param sheet the worksheet's name
 * @param row from 0
 * @param column from 0
 */
public record CellPlace(String sheet, int row, int column) {

  private static final Pattern POSITION = Pattern.compile("(?s)sheet (.*), cell ([A-Z]+[0-9]+)");

  /** The cell that {@code sheet Panels, cell C4} names; nothing where a text names none. */
  public static Optional<CellPlace> of(String position) {
    Matcher named = POSITION.matcher(position);
    return named.matches()
        ? Optional.of(
            new CellPlace(named.group(1), rowOf(named.group(2)), columnOf(named.group(2))))
        : Optional.empty();
  }

  @Override
  public String toString() {
    return "sheet " + sheet + ", cell " + letters(column) + (row + 1);
  }

  /** A whole number of 0 or more, or −1 where the text is none. */
  public static int whole(@Nullable String text) {
    boolean digits = text != null && text.matches("\\d{1,8}");
    return digits ? Integer.parseInt(text) : -1;
  }

  /** Column of a cell's name, from 0, or −1: 2 for C7. */
  public static int columnOf(String reference) {
    int column = 0;
    int letters = 0;
    while (letters < reference.length() && isLetter(reference.charAt(letters))) {
      column = column * 26 + reference.charAt(letters) - 'A' + 1;
      letters++;
    }
    return letters > 3 ? -1 : column - 1;
  }

  private static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z';
  }

  /** Row of a cell's name, from 0: 6 for C7. */
  public static int rowOf(String reference) {
    return whole(reference.replaceAll("^[A-Z]+", "")) - 1;
  }

  /** The name of a column: A, B … Z, AA … */
  private static String letters(int column) {
    String last = Character.toString((char) ('A' + column % 26));
    return column < 26 ? last : letters(column / 26 - 1) + last;
  }
}
