package org.barsheet.workbook.pen;

/**
 * A column of a table.
 *
 * @param heading what stands over it
 * @param name what the column is called whatever its heading says; "" where nobody fills it in
 * @param points its least width
 * @param stretch its share of the width that is left over on the page, 0 for none
 * @param kind what it holds
 */
public record Column(String heading, String name, double points, double stretch, Kind kind) {

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

  public static Column words(String heading, double points, double stretch) {
    return new Column(heading, "", points, stretch, Kind.WORDS);
  }

  public static Column words(String heading, double points) {
    return words(heading, points, 0);
  }

  public static Column numbers(String heading, double points) {
    return new Column(heading, "", points, 0, Kind.NUMBERS);
  }

  /**
   * A column that people fill in.
   *
   * @param name its permanent name: what they type is found again by it under another heading too
   */
  public static Column toFillIn(String name, String heading, double points, double stretch) {
    return new Column(heading, name, points, stretch, Kind.TO_FILL_IN);
  }

  /** The same, under its own name. */
  public static Column toFillIn(String name, double points, double stretch) {
    return toFillIn(name, name, points, stretch);
  }

  /** The hidden last column, by which what people typed finds its row again. */
  public static Column rowName() {
    return new Column("row name", "", 60, 0, Kind.ROW_NAME);
  }

  public static Column onScreen(String heading, double points) {
    return new Column(heading, "", points, 0, Kind.ON_SCREEN);
  }

  public boolean isPrinted() {
    return kind != Kind.ROW_NAME && kind != Kind.ON_SCREEN;
  }

  boolean isHidden() {
    return kind == Kind.ROW_NAME;
  }
}
