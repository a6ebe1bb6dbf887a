package org.barsheet.workbook.pen;

/**
 * The colors of the sheets. Lamp, quay, tide and rust are Okabe and Ito's colors, told apart with
 * any color vision (jfly.uni-koeln.de/color); black text stands on all of them but quay. None means
 * anything alone: a sign or a word always stands beside it.
 */
public enum Ink {
  /** Text and heavy lines. */
  INK("1B1F24"),
  /** Secondary text. */
  PENCIL("5B6570"),
  /** Hairlines between cells. */
  HAIRLINE("C8CED4"),
  /** Paper, and text on quay. */
  PAPER("FFFFFF"),
  /** Every second half second of frames, every second row, and cells to fill in. */
  BAND("F4F1EA"),
  /** The accent, the frame to land on. */
  LAMP("E69F00"),
  /** Headings and links. */
  QUAY("0072B2"),
  /** Occurrences and appearances. */
  TIDE("56B4E9"),
  /** Errors. */
  RUST("D55E00");

  private final String hex;

  Ink(String hex) {
    this.hex = hex;
  }

  /** Red, green and blue, one byte each. */
  byte[] rgb() {
    int value = Integer.parseInt(hex, 16);
    return new byte[] {(byte) (value >> 16), (byte) (value >> 8), (byte) value};
  }
}
