package org.barsheet.workbook;


/**
 * A column of a table.
 *
 * @param heading what stands over it
 * @param points its least width
 * @param stretch its share of the width that is left over on the page, 0 for none
 * @param kind what it holds
 */
record Column(String heading, double points, double stretch, Kind kind) {

  enum Kind {
    WORDS,
    /** Numbers and timecodes, which stand at the right. */
    NUMBERS,
    /** Filled in by people. */
    TO_FILL_IN,
    /** For the screen only: it stands beyond what is printed. */
    ON_SCREEN,
    /** The permanent name of the row, out of sight. */
    ROW_NAME
  }

  static Column words(String heading, double points, double stretch) {
    return new Column(heading, points, stretch, Kind.WORDS);
  }

  static Column words(String heading, double points) {
    return words(heading, points, 0);
  }

  static Column numbers(String heading, double points) {
    return new Column(heading, points, 0, Kind.NUMBERS);
  }

  static Column toFillIn(String heading, double points) {
    return toFillIn(heading, points, 0);
  }

  static Column toFillIn(String heading, double points, double stretch) {
    return new Column(heading, points, stretch, Kind.TO_FILL_IN);
  }

  /** The hidden last column, by which what people typed finds its row again. */
  static Column rowName() {
    return new Column("row name", 60, 0, Kind.ROW_NAME);
  }

  static Column onScreen(String heading, double points) {
    return new Column(heading, points, 0, Kind.ON_SCREEN);
  }

  boolean isPrinted() {
    return kind != Kind.ROW_NAME && kind != Kind.ON_SCREEN;
  }

  boolean isHidden() {
    return kind == Kind.ROW_NAME;
  }
}
