package org.barsheet.workbook;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFCell;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Writes one sheet row by row, downwards. */
final class SheetPen {

  private final SXSSFSheet sheet;
  private final Styles styles;
  private final CarryingOver carrying;
  private final Map<Integer, Look> leftBlank = new HashMap<>();
  private final Columns columns;
  private final double pageRoom;
  private SXSSFRow row;
  private double rowPoints;
  private double pagePoints;

  /**
   * A pen for a sheet.
   *
   * @param pageRoom height in points of a printed page between its margins
   */
  SheetPen(SXSSFSheet sheet, Book book, Columns columns, double pageRoom) {
    this.pageRoom = pageRoom;
    this.sheet = sheet;
    this.styles = book.styles();
    this.carrying = book.carrying();
    this.columns = columns;
    this.row = sheet.createRow(0);
  }

  /**
   * Goes on to a row, at or below the present one. The row grows where text wraps in it.
   *
   * @param leastPoints its least height
   */
  SheetPen row(int index, double leastPoints) {
    if (index != row.getRowNum()) {
      leaveRow();
      row = sheet.createRow(index);
      rowPoints = 0;
      leftBlank.clear();
    }
    setHeight(leastPoints);
    return this;
  }

  /** A row that finds no room has gone to a page of its own accord, under the repeated heading. */
  private void leaveRow() {
    boolean fits = pagePoints + rowPoints <= pageRoom;
    pagePoints = (fits ? pagePoints : SheetFrame.TITLE_POINTS) + rowPoints;
  }

  private void setHeight(double points) {
    rowPoints = points;
    row.setHeightInPoints((float) points);
  }

  /** Height in points of the rows above the present one, back to where the page begins. */
  double pointsOnPage() {
    return pagePoints;
  }

  /** Starts a page below the present row, under the repeated heading. */
  void breakPage(double headingPoints) {
    sheet.setRowBreak(rowIndex());
    pagePoints = headingPoints - rowPoints;
  }

  /** Height in points that the present row has grown to. */
  double rowPoints() {
    return rowPoints;
  }

  /** Width of a column in points. */
  double points(int column) {
    return columns.points(column);
  }

  SXSSFRow row() {
    return row;
  }

  int rowIndex() {
    return row.getRowNum();
  }

  SheetPen text(int column, String text, Look look) {
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

  SheetPen number(int column, double number, Look look) {
    SXSSFCell cell = row.createCell(column);
    cell.setCellValue(number);
    cell.setCellStyle(styles.of(look));
    return this;
  }

  SheetPen number(int column, long number, Look look) {
    return number(column, (double) number, look);
  }

  /** A name given by people: as a number where it is a plain one, else as text. */
  SheetPen label(int column, String name, Look look) {
    boolean counts = name.matches("[1-9][0-9]{0,8}");
    return counts ? number(column, Integer.parseInt(name), look) : text(column, name, look);
  }

  /** A cell without content. */
  SheetPen blank(int column, Look look) {
    leftBlank.put(column, look);
    row.createCell(column).setCellStyle(styles.of(look));
    return this;
  }

  /**
   * The permanent name of the row, in the hidden column. What people typed into the row's cells in
   * the workbook before stands in them again.
   */
  SheetPen rowName(int column, String name) {
    String safe = SafeText.of(name);
    Map<String, String> texts = carrying.in(sheet.getSheetName(), safe);
    for (int index = 0; index < columns.count() && !texts.isEmpty(); index++) {
      String text = texts.get(columns.at(index).heading());
      if (text != null && columns.at(index).kind() == Column.Kind.TO_FILL_IN) {
        carrying.foundAgain(sheet.getSheetName(), safe, columns.at(index).heading());
        fillIn(index, text);
      }
    }
    return text(column, name, Look.PENCIL);
  }

  private void fillIn(int column, String text) {
    Look look = leftBlank.get(column);
    if (look != null) {
      label(column, text, look);
    }
  }

  SheetPen blanks(int from, int toExclusive, Look look) {
    for (int column = from; column < toExclusive; column++) {
      blank(column, look);
    }
    return this;
  }

  /** Text across neighbouring cells, joined to one. */
  SheetPen joined(int from, int to, String text, Look look) {
    return text(from, text, look, columns.points(from, to + 1))
        .blanks(from + 1, to + 1, look)
        .join(from, to);
  }

  /** Joins neighbouring cells of the row; what stands in the first one is shown. */
  SheetPen join(int from, int to) {
    if (to > from) {
      sheet.addMergedRegionUnsafe(new CellRangeAddress(rowIndex(), rowIndex(), from, to));
    }
    return this;
  }

  /** Makes a written cell of this row lead to another place of the workbook. */
  SheetPen link(int column, Address to) {
    Hyperlink link =
        sheet.getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress(to.toString());
    row.getCell(column).setHyperlink(link);
    return this;
  }
}
