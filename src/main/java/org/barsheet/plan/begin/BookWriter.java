package org.barsheet.plan.begin;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.table.BookStyles;
import org.barsheet.plan.table.CsvTable;
import org.barsheet.plan.table.SheetLayout;
import org.barsheet.plan.table.TableColumn;
import org.barsheet.plan.table.TableRows;

/** Writes a plan as a workbook, a worksheet for each section. */
public final class BookWriter {

  /** Settings and columns that hold plain numbers; all others hold text and stay as typed. */
  private static final Set<String> NUMBERS =
      Set.of(
          "left",
          "top",
          "width",
          "height",
          "enlarged",
          "photographs",
          "first-bar",
          "bpm",
          "bar",
          "clip-frame",
          "photographs-per-hour",
          "minutes-per-setup",
          "hours-per-day");

  /** Rows kept in memory while writing. */
  private static final int WINDOW = 100;

  private static final Instant FIXED = Instant.parse("2000-01-01T00:00:00Z");

  private final Entry.Keyed plan;
  private final List<String> parts;

  /**
   * Prepares to write.
   *
   * @param parts names of the score's parts, to choose from; may be empty
   */
  public BookWriter(Entry.Keyed plan, List<String> parts) {
    this.plan = plan;
    this.parts = List.copyOf(parts);
  }

  public byte[] bytes() {
    try (SXSSFWorkbook book = new SXSSFWorkbook(null, WINDOW, false, true);
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      undated(book);
      BookStyles styles = new BookStyles(book);
      Choices choices = new Choices(parts);
      for (SheetLayout layout : SheetLayout.ALL) {
        SXSSFSheet sheet = book.createSheet(layout.sheet());
        if (layout.kind() == SheetLayout.Kind.SETTINGS) {
          settings(layout, sheet, styles, choices);
        } else {
          table(layout, sheet, styles, choices);
        }
        sheet.createFreezePane(layout.kind() == SheetLayout.Kind.SETTINGS ? 0 : 1, 1);
        printable(sheet);
        // Shared texts are numbered as sheets are flushed; left to the library, in any order.
        sheet.flushRows();
      }
      book.write(out);
      return out.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** Lying pages, as wide as the sheet, as many as it takes. */
  private static void printable(Sheet sheet) {
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setLandscape(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
  }

  /** Fixed dates, so that the same plan gives the same bytes. */
  private static void undated(SXSSFWorkbook book) {
    POIXMLProperties.CoreProperties properties =
        book.getXSSFWorkbook().getProperties().getCoreProperties();
    properties.setCreated(Optional.of(Date.from(FIXED)));
    properties.setModified(Optional.of(Date.from(FIXED)));
    properties.setCreator("barsheet");
  }

  private void settings(SheetLayout layout, Sheet sheet, BookStyles styles, Choices choices) {
    List<String> headings =
        List.of(SheetLayout.SETTING, SheetLayout.VALUE, "what it means", "for example");
    int[] widths = {20, 28, 62, 24};
    Row head = sheet.createRow(0);
    for (int i = 0; i < headings.size(); i++) {
      styles.head(head.createCell(i), headings.get(i));
      sheet.setColumnWidth(i, widths[i] * 256);
    }
    int index = 1;
    for (TableColumn column : layout.columns()) {
      Row row = sheet.createRow(index);
      row.createCell(0).setCellValue(column.heading());
      Cell value = row.createCell(1);
      write(value, TableRows.setting(plan, column.path()), column.heading(), styles);
      row.createCell(2).setCellValue(column.key().note());
      row.createCell(3).setCellValue(column.key().example());
      choices.offer(sheet, column.heading(), index, index, 1);
      index++;
    }
  }

  private void table(SheetLayout layout, Sheet sheet, BookStyles styles, Choices choices) {
    List<String> headings = new ArrayList<>();
    headings.add(layout.name());
    layout.columns().forEach(column -> headings.add(column.heading()));
    Row head = sheet.createRow(0);
    for (int i = 0; i < headings.size(); i++) {
      String heading = headings.get(i);
      styles.head(head.createCell(i), heading);
      layout.column(heading).ifPresent(column -> styles.note(head, headings, column));
      boolean number = NUMBERS.contains(heading);
      sheet.setDefaultColumnStyle(i, number ? styles.number() : styles.text());
      sheet.setColumnWidth(i, (heading.equals("action") ? 40 : 15) * 256);
      choices.offer(sheet, heading, 1, CsvTable.MOST_ROWS, i);
    }
    int index = 1;
    for (Map<String, String> row : new TableRows(layout).of(plan)) {
      Row cells = sheet.createRow(index);
      row.forEach(
          (heading, text) ->
              write(cells.createCell(headings.indexOf(heading)), text, heading, styles));
      index++;
    }
  }

  private static void write(Cell cell, String text, String heading, BookStyles styles) {
    boolean number = NUMBERS.contains(heading) && text.matches("-?\\d{1,9}(\\.\\d{1,6})?");
    cell.setCellStyle(number ? styles.number() : styles.text());
    if (number) {
      cell.setCellValue(Double.parseDouble(text));
    } else if (!text.isEmpty()) {
      cell.setCellValue(text);
    }
  }
}
