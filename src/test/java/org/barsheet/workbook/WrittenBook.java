package org.barsheet.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureColumns;
import org.barsheet.workbook.pen.SheetFrame;

/** A workbook read back by the spreadsheet library's reader in memory. */
public final class WrittenBook implements AutoCloseable {

  private final XSSFWorkbook book;

  private WrittenBook(XSSFWorkbook book) {
    this.book = book;
  }

  public static WrittenBook of(FilmSheet film) {
    return of(WorkbookWriter.bytes(film));
  }

  public static WrittenBook of(byte[] bytes) {
    try {
      return new WrittenBook(new XSSFWorkbook(new ByteArrayInputStream(bytes)));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  public XSSFWorkbook book() {
    return book;
  }

  public XSSFSheet sheet(String name) {
    XSSFSheet sheet = book.getSheet(name);
    if (sheet == null) {
      throw new AssertionError("there is no sheet " + name);
    }
    return sheet;
  }

  List<String> sheetNames() {
    List<String> names = new ArrayList<>();
    book.forEach(sheet -> names.add(sheet.getSheetName()));
    return names;
  }

  /**
   * The column under a heading in the row of headings; line breaks count as spaces, and what the
   * hidden heading says after its name does not count.
   */
  public int column(String sheet, String heading) {
    for (Cell cell : sheet(sheet).getRow(SheetFrame.HEADING_ROW)) {
      String text = cell.getStringCellValue().replace('\n', ' ').strip();
      if (text.equals(heading) || text.startsWith(heading + ";")) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError("no heading " + heading + " on " + sheet);
  }

  /** The row of a panel on the sheet Timeline. */
  Row panel(Shot shot) {
    int column = column("Timeline", "row name");
    for (Row row : sheet("Timeline")) {
      if (text(row, column).equals("panel " + shot.panel().name())) {
        return row;
      }
    }
    throw new AssertionError("no row of panel " + shot.panel().name());
  }

  /** Rows of the exposure sheets that stand for a frame, in order. */
  List<Row> frameRows() {
    List<Row> rows = new ArrayList<>();
    for (String name : sheetNames()) {
      if (name.startsWith("Exposure")) {
        for (Row row : sheet(name)) {
          Cell frame = row.getCell(ExposureColumns.FILM_FRAME);
          boolean counts = frame != null && frame.getCellType() == CellType.NUMERIC;
          if (row.getRowNum() >= SheetFrame.FIRST_ROW && counts) {
            rows.add(row);
          }
        }
      }
    }
    return rows;
  }

  static String text(Row row, int column) {
    Cell cell = row.getCell(column);
    return cell == null || cell.getCellType() != CellType.STRING ? "" : cell.getStringCellValue();
  }

  /** A name that may stand there as a number. */
  static String label(Row row, int column) {
    return new DataFormatter(Locale.ROOT).formatCellValue(row.getCell(column)).strip();
  }

  static double number(Row row, int column) {
    return row.getCell(column).getNumericCellValue();
  }

  @Override
  public void close() throws IOException {
    book.close();
  }
}
