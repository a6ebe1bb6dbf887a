package org.barsheet.workbook.pen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Sheet;
import org.barsheet.workbook.typed.RowNames;

/** The columns of a sheet at the widths they have on its page. */
public final class Columns {

  /**
   * Widths are stored in 256ths of a digit of the workbook's first font (ECMA-376 part 1,
   * 18.3.1.13), here Arial 10, whose digits are 5.56 points wide. Programs that round a digit to
   * whole pixels draw columns up to a twentieth narrower.
   */
  private static final double UNITS_PER_POINT = 256 / 5.56;

  private final List<Column> columns;
  private final double[] points;

  public Columns(List<Column> columns, double pageWidth) {
    this.columns = List.copyOf(columns);
    this.points = columns.stream().mapToDouble(Column::points).toArray();
    spread(pageWidth - printedWidth());
  }

  private void spread(double rest) {
    double shares = columns.stream().mapToDouble(Column::stretch).sum();
    if (rest <= 0 || shares == 0) {
      return;
    }
    for (int index = 0; index < points.length; index++) {
      points[index] += rest * columns.get(index).stretch() / shares;
    }
  }

  private double printedWidth() {
    return columns.stream().filter(Column::isPrinted).mapToDouble(Column::points).sum();
  }

  int count() {
    return columns.size();
  }

  Column at(int index) {
    return columns.get(index);
  }

  /** What stands over a column; over the row names it tells which columns people fill in. */
  String heading(int index) {
    return at(index).isHidden() ? RowNames.heading(filledIn()) : at(index).heading();
  }

  private Map<String, String> filledIn() {
    Map<String, String> theirs = new LinkedHashMap<>();
    columns.stream()
        .filter(column -> column.kind() == Column.Kind.TO_FILL_IN)
        .forEach(column -> theirs.put(column.name(), column.heading()));
    return theirs;
  }

  /** Width of a column in points. */
  public double points(int index) {
    return points[index];
  }

  /** Width in points of neighboring columns together. */
  public double points(int from, int toExclusive) {
    double sum = 0;
    for (int index = from; index < toExclusive; index++) {
      sum += points[index];
    }
    return sum;
  }

  /** Index of the last column that is printed. */
  int lastPrinted() {
    int last = columns.size() - 1;
    while (!columns.get(last).isPrinted()) {
      last--;
    }
    return last;
  }

  /** How many lines a text takes in a column. */
  public int lines(int index, String text, Look look) {
    return TextWidth.lines(text, look, points[index]);
  }

  void applyTo(Sheet sheet) {
    for (int index = 0; index < points.length; index++) {
      sheet.setColumnWidth(index, (int) Math.round(points[index] * UNITS_PER_POINT));
      sheet.setColumnHidden(index, columns.get(index).isHidden());
    }
  }
}
