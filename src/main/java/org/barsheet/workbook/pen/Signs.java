package org.barsheet.workbook.pen;

import org.barsheet.timing.Finding.Severity;

/**
 * Signs that survive a print in black and white. All stand in Arial and in Liberation Sans, which
 * share the repertoire of WGL4 (learn.microsoft.com, "Windows Glyph List 4"), so that no program
 * has to borrow them from a font of another height.
 */
public final class Signs {

  public static final String ACCENT = "♦";
  public static final String HOLD = "│";
  public static final String QUESTION = "?";
  public static final String DONE = "√";

  private Signs() {}

  public static String of(Severity severity) {
    return switch (severity) {
      case ERROR -> "×";
      case WARNING -> "!";
      case REMARK -> "·";
    };
  }
}
