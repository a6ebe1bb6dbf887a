package org.barsheet.demo.drawing;

/** The few colored papers the quay is cut from, RRGGBB. */
public final class Ink {

  static final int TEAL = 0x28786E;
  static final int DEEP_TEAL = 0x1C554E;
  static final int PALE_TEAL = 0x7FB0A4;
  static final int AMBER = 0xC8963C;
  static final int PALE_AMBER = 0xE6C07A;
  static final int GLOW = 0xFFE3A1;
  static final int NIGHT = 0x142850;
  static final int SLATE = 0x4D6488;
  static final int RUST = 0xA55A3B;
  static final int DEEP_RUST = 0x74402C;
  static final int PAPER = 0xF2EBDC;
  static final int STONE = 0xB0A690;
  static final int DEEP_STONE = 0x827A69;
  static final int SHADE = 0x33333A;

  private Ink() {}
}
