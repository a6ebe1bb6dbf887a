package org.barsheet.workbook.pen;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Uses what the spreadsheet library loads when a workbook is first made. */
public final class LibraryLoading {

  private LibraryLoading() {}

  /** Always true, for who must return something. */
  public static boolean writeSmallWorkbook() {
    try (SXSSFWorkbook workbook = new SXSSFWorkbook(new XSSFWorkbook(), 1)) {
      Styles styles = new Styles(workbook.getXSSFWorkbook());
      Sheet sheet = workbook.createSheet("small");
      sheet.getPrintSetup().setLandscape(true);
      sheet.setRepeatingRows(null);
      for (int index = 0; index < 2; index++) {
        Row row = sheet.createRow(index);
        row.createCell(0).setCellValue(index);
        row.createCell(1).setCellValue("text");
        row.getCell(1).setCellStyle(styles.of(Look.BODY));
      }
      workbook.write(OutputStream.nullOutputStream());
      return true;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
