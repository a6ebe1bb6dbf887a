package org.barsheet.handoff.drawing;

import java.awt.Color;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;

/** The few colors of a placeholder. */
public enum PaperColor {
  CLEAR(0x00000000),
  INK(0xFF1B1F24),
  PAPER(0xFFFFFFFF),
  BAND(0xFFF4F1EA),
  PENCIL(0xFF5B6570),
  HAIRLINE(0xFFC8CED4),
  LAMP(0xFFE69F00),
  QUAY(0xFF0072B2),
  UNLIT(0xFF302818),
  LIT_1(0xFF5A4314),
  LIT_2(0xFF845D10),
  LIT_3(0xFFAE770B),
  LIT_4(0xFFCA8B05);

  private static final int BITS = 4;

  /** From dark to full light. */
  private static final PaperColor[] LIGHT = {UNLIT, LIT_1, LIT_2, LIT_3, LIT_4, LAMP};

  private final Color color;

  PaperColor(int argb) {
    this.color = new Color(argb, true);
  }

  Color color() {
    return color;
  }

  /** A lamp at a share of its full light, 0 to 1. */
  static PaperColor light(double share) {
    int level = (int) Math.round(share * (LIGHT.length - 1));
    return LIGHT[Math.max(0, Math.min(LIGHT.length - 1, level))];
  }

  static IndexColorModel palette() {
    int[] argb = new int[1 << BITS];
    int clear = 0;
    int index = 0;
    for (PaperColor ink : values()) {
      argb[index] = ink.color.getRGB();
      clear = ink == CLEAR ? index : clear;
      index++;
    }
    return new IndexColorModel(BITS, argb.length, argb, 0, true, clear, DataBuffer.TYPE_BYTE);
  }
}
