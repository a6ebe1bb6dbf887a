package org.barsheet.workbook.pen;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.streaming.SXSSFCell;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.barsheet.workbook.typed.CarryingOver;

/** Writes one sheet row by row, downwards. */
public final class SheetPen {

  /** How much smaller a sheet may be printed to save its last page. */
  private static final double MOST_SHRINKING = 0.09;

  private final SXSSFSheet sheet;
  private final Styles styles;
  private final CarryingOver carrying;
  private final Map<Integer, Look> leftBlank = new HashMap<>();
  private final Columns columns;
  private final double pageRoom;
  private final double titlePoints;
  private SXSSFRow row;
  private double rowPoints;
  private double pagePoints;
  private int pages = 1;
  private boolean awaitsName;
  private boolean named;

  /**
   * A pen for a sheet.
   *
   * @param pageRoom height in points of a printed page between its margins
   * @param titlePoints height in points of the title, which is repeated on each page
   */
  SheetPen(
      SXSSFSheet sheet,
      Styles styles,
      CarryingOver carrying,
      Columns columns,
      double pageRoom,
      double titlePoints) {
    this.pageRoom = pageRoom;
    this.titlePoints = titlePoints;
    this.sheet = sheet;
    this.styles = styles;
    this.carrying = carrying;
    this.columns = columns;
    this.row = sheet.createRow(0);
  }

  /**
   * Goes on to a row, at or below the present one. The row grows where text wraps in it.
   *
   * @param leastPoints its least height
   */
  public SheetPen row(int index, double leastPoints) {
    if (index != row.getRowNum()) {
      leaveRow();
      row = sheet.createRow(index);
      rowPoints = 0;
      leftBlank.clear();
    }
    setHeight(leastPoints);
    return this;
  }

  /** Ends the last row. */
  void finish() {
    checkNamed();
  }

  /**
   * How many pages the sheet is to fit on where its last one holds so little that a print a little
   * smaller saves it; 0 for as many as it takes. Letters of 9 points stay above 8. Where pages are
   * broken by hand there is nothing to save: programs that fit pages overlook such breaks.
   */
  short pagesIfShrunk() {
    double rest = pagePoints + rowPoints - titlePoints;
    boolean saves = pages > 1 && rest <= MOST_SHRINKING * (pageRoom - titlePoints) * (pages - 1);
    return (short) (saves && sheet.getRowBreaks().length == 0 ? pages - 1 : 0);
  }

  private void checkNamed() {
    if (awaitsName && !named) {
      throw new IllegalStateException(
          "row " + rowIndex() + " of " + sheet.getSheetName() + " is filled in and has no name");
    }
    awaitsName = false;
    named = false;
  }

  /** A row that finds no room has gone to a page of its own accord, under the repeated heading. */
  private void leaveRow() {
    checkNamed();
    boolean fits = pagePoints + rowPoints <= pageRoom;
    pagePoints = (fits ? pagePoints : titlePoints) + rowPoints;
    pages += fits ? 0 : 1;
  }

  private void setHeight(double points) {
    rowPoints = points;
    row.setHeightInPoints((float) points);
  }

  /** Height in points of the rows above the present one, back to where the page begins. */
  public double pointsOnPage() {
    return pagePoints;
  }

  /** Starts a page below the present row, under the repeated heading. */
  public void breakPage(double headingPoints) {
    sheet.setRowBreak(rowIndex());
    pagePoints = headingPoints - rowPoints;
  }

  /** Height in points that the present row has grown to. */
  public double rowPoints() {
    return rowPoints;
  }

  /** Width of a column in points. */
  public double points(int column) {
    return columns.points(column);
  }

  public SXSSFRow row() {
    return row;
  }

  public int rowIndex() {
    return row.getRowNum();
  }

  public SheetPen text(int column, String text, Look look) {
    return text(column, text, look, columns.points(column));
  }

  private SheetPen text(int column, String text, Look look, double points) {
    String safe = SafeText.of(text);
    if (safe.isEmpty()) {
      return blank(column, look);
    }
    if (look.wraps()) {
      grow(TextWidth.lines(safe, look, points), look);
    }
    SXSSFCell cell = row.createCell(column);
    cell.setCellValue(safe);
    cell.setCellStyle(styles.of(SafeText.looksLikeFormula(safe) ? look.asText() : look));
    return this;
  }

  private void grow(int lines, Look look) {
    double needed = TextWidth.height(lines, look.points());
    if (lines > 1 && needed > rowPoints) {
      setHeight(needed);
    }
  }

  public SheetPen number(int column, double number, Look look) {
    SXSSFCell cell = row.createCell(column);
    cell.setCellValue(number);
    cell.setCellStyle(styles.of(look));
    return this;
  }

  public SheetPen number(int column, long number, Look look) {
    return number(column, (double) number, look);
  }

  /** A name given by people: as a number where it is a plain one, else as text. */
  public SheetPen label(int column, String name, Look look) {
    boolean counts = name.matches("[1-9][0-9]{0,8}");
    return counts ? number(column, Integer.parseInt(name), look) : text(column, name, look);
  }

  /** A cell without content. */
  public SheetPen blank(int column, Look look) {
    leftBlank.put(column, look);
    row.createCell(column).setCellStyle(styles.of(look));
    return this;
  }

  /**
   * The permanent name of the row, in the hidden column. What people typed into the row's cells in
   * the workbook before stands in them again.
   */
  public SheetPen rowName(int column, String name) {
    String safe = SafeText.of(name);
    Map<String, String> texts = carrying.in(sheet.getSheetName(), safe);
    for (int index = 0; index < columns.count() && !texts.isEmpty(); index++) {
      Column theirs = columns.at(index);
      String text = texts.get(theirs.name());
      if (text != null && theirs.kind() == Column.Kind.TO_FILL_IN) {
        carrying.foundAgain(sheet.getSheetName(), safe, theirs.name());
        fillIn(index, text);
      }
    }
    named = true;
    return text(column, name, Look.PENCIL);
  }

  private void fillIn(int column, String text) {
    Look look = leftBlank.get(column);
    if (look != null) {
      label(column, text, look);
    }
  }

  /** A cell for people to fill in: its row must have a name, by which it is found again. */
  public SheetPen toFillIn(int column, Look look) {
    awaitsName = true;
    return blank(column, look);
  }

  /** What stands in a cell of this row, as text. */
  public String written(int column) {
    SXSSFCell cell = row.getCell(column);
    if (cell == null) {
      return "";
    }
    return cell.getCellType() == CellType.NUMERIC
        ? Long.toString((long) cell.getNumericCellValue())
        : cell.getStringCellValue();
  }

  public SheetPen blanks(int from, int toExclusive, Look look) {
    for (int column = from; column < toExclusive; column++) {
      blank(column, look);
    }
    return this;
  }

  /** Text across neighboring cells, joined to one. */
  public SheetPen joined(int from, int to, String text, Look look) {
    return text(from, text, look, columns.points(from, to + 1))
        .blanks(from + 1, to + 1, look)
        .join(from, to);
  }

  /** Joins neighboring cells of the row; what stands in the first one is shown. */
  public SheetPen join(int from, int to) {
    if (to > from) {
      sheet.addMergedRegionUnsafe(new CellRangeAddress(rowIndex(), rowIndex(), from, to));
    }
    return this;
  }

  /**
   * Joins the cells of a column from one row down to another; what stands in the first is shown.
   */
  public SheetPen joinDown(int column, int firstRow, int lastRow) {
    if (lastRow > firstRow) {
      sheet.addMergedRegionUnsafe(new CellRangeAddress(firstRow, lastRow, column, column));
    }
    return this;
  }

  /** Makes a written cell of this row lead to another place of the workbook. */
  public SheetPen link(int column, Address to) {
    Hyperlink link =
        sheet.getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress(to.toString());
    row.getCell(column).setHyperlink(link);
    return this;
  }

  /**
   * An area for drawings, from the left edge of the sheet.
   *
   * @param firstRow its first row
   * @param eachRowPoints height of each of its rows
   * @param width in points, at most that of the columns together
   * @param height in points
   */
  public XSSFClientAnchor area(int firstRow, double eachRowPoints, double width, double height) {
    double right = width;
    int column = 0;
    while (right > columns.points(column)) {
      right -= columns.points(column++);
    }
    int below = (int) (height / eachRowPoints);
    return new XSSFClientAnchor(
        0,
        0,
        Units.toEMU(right),
        Units.toEMU(height - below * eachRowPoints),
        0,
        firstRow,
        column,
        firstRow + below);
  }
}
