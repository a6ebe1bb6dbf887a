package org.barsheet.workbook;

final class MusicWorksheet {
  static void write(Book book) {}

  private MusicWorksheet() {}
}
