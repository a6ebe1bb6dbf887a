package org.barsheet.workbook;

import org.barsheet.timing.Finding.Severity;

/**
 * Signs that survive a print in black and white. All stand in Arial and in Liberation Sans, which
 * share the repertoire of WGL4 (learn.microsoft.com, "Windows Glyph List 4"), so that no program
 * has to borrow them from a font of another height.
 */
final class Signs {

  static final String ACCENT = "♦";
  static final String HOLD = "│";
  static final String QUESTION = "?";
  static final String DONE = "√";
  static final String BLOCK = "█";
  static final String HALF_BLOCK = "▌";

  private Signs() {}

  static String of(Severity severity) {
    return switch (severity) {
      case ERROR -> "×";
      case WARNING -> "!";
      case NOTE -> "·";
    };
  }
}
