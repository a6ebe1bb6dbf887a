package org.barsheet.handoff.drawing;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.barsheet.text.Ascii;

/**
 * Capital letters, digits and signs in 5 by 7 squares of our own: a placeholder looks the same on a
 * machine without fonts.
 */
final class PixelLetters {

  static final int WIDE = 5;
  static final int HIGH = 7;

  /** From one letter to the next. */
  static final int ADVANCE = 6;

  /** A sign, then its seven rows from the top, each five bits as two hexadecimal digits. */
  private static final String DRAWN =
      """
      A 0E11111F111111
      B 1E11111E11111E
      C 0E11101010110E
      D 1E11111111111E
      E 1F10101E10101F
      F 1F10101E101010
      G 0E11101711110F
      H 1111111F111111
      I 0E04040404040E
      J 0702020202120C
      K 11121418141211
      L 1010101010101F
      M 111B1515111111
      N 11111915131111
      O 0E11111111110E
      P 1E11111E101010
      Q 0E11111115120D
      R 1E11111E141211
      S 0F10100E01011E
      T 1F040404040404
      U 1111111111110E
      V 11111111110A04
      W 1111111515150A
      X 11110A040A1111
      Y 1111110A040404
      Z 1F01020408101F
      0 0E11131519110E
      1 040C040404040E
      2 0E11010204081F
      3 1F02040201110E
      4 02060A121F0202
      5 1F101E0101110E
      6 0608101E11110E
      7 1F010204080808
      8 0E11110E11110E
      9 0E11110F01020C
      . 00000000000C0C
      , 000000000C0408
      - 0000001F000000
      : 000C0C000C0C00
      ; 000C0C000C0408
      % 18190204081303
      ' 0C040800000000
      " 0A0A0A00000000
      / 00010204081000
      ( 02040808080402
      ) 08040202020408
      ? 0E110102040004
      ! 04040404000004
      + 0004041F040400
      = 00001F001F0000
      _ 0000000000001F
      & 0C12140815120D
      """;

  private static final Map<Character, int[]> ROWS = rows();

  private PixelLetters() {}

  private static Map<Character, int[]> rows() {
    Map<Character, int[]> rows = new HashMap<>();
    for (String line : DRAWN.split("\n", -1)) {
      if (!line.isEmpty()) {
        int[] letter = new int[HIGH];
        for (int row = 0; row < HIGH; row++) {
          letter[row] = Integer.parseInt(line, 2 + 2 * row, 4 + 2 * row, 16);
        }
        rows.put(line.charAt(0), letter);
      }
    }
    rows.put(' ', new int[HIGH]);
    return rows;
  }

  /** In capitals, accents off, '_' for what has no plain form and '?' for signs not drawn here. */
  static String drawable(String text) {
    String capitals = Ascii.line(text).toUpperCase(Locale.ROOT);
    StringBuilder drawn = new StringBuilder();
    capitals.chars().forEach(c -> drawn.append(ROWS.containsKey((char) c) ? (char) c : '?'));
    return drawn.toString();
  }

  /** Whether a square of a letter is inked. */
  static boolean isInked(char letter, int column, int row) {
    int[] rows = ROWS.getOrDefault(letter, new int[HIGH]);
    return (rows[row] >> (WIDE - 1 - column) & 1) == 1;
  }
}
