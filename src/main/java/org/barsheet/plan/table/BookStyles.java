package org.barsheet.plan.table;

import java.util.List;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.CreationHelper;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;

/** How the cells of a plan look, and the notes on its headings. */
public final class BookStyles {

  private static final int NOTE_COLUMNS = 3;
  private static final int NOTE_ROWS = 5;

  private final CreationHelper helper;
  private final CellStyle head;
  private final CellStyle text;
  private final CellStyle number;

  public BookStyles(Workbook book) {
    helper = book.getCreationHelper();
    Font bold = book.createFont();
    bold.setBold(true);
    head = book.createCellStyle();
    head.setFont(bold);
    head.setFillForegroundColor(IndexedColors.GREY_25_PERCENT.getIndex());
    head.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    text = book.createCellStyle();
    text.setDataFormat((short) BuiltinFormats.getBuiltinFormat("@"));
    number = book.createCellStyle();
  }

  /** Cells whose content stays as typed. */
  public CellStyle text() {
    return text;
  }

  public CellStyle number() {
    return number;
  }

  public void head(Cell cell, String heading) {
    cell.setCellValue(heading);
    cell.setCellStyle(head);
  }

  /** Hangs a note on a column's heading that teaches it. */
  public void note(Row row, List<String> headings, TableColumn column) {
    int index = headings.indexOf(column.heading());
    ClientAnchor anchor = helper.createClientAnchor();
    anchor.setCol1(index);
    anchor.setCol2(index + NOTE_COLUMNS);
    anchor.setRow1(row.getRowNum());
    anchor.setRow2(row.getRowNum() + NOTE_ROWS);
    Comment note = row.getSheet().createDrawingPatriarch().createCellComment(anchor);
    String example = column.key().example();
    String lesson = example.isEmpty() ? "" : "\nFor example: " + example;
    note.setString(helper.createRichTextString(column.key().note() + lesson));
    note.setAuthor("barsheet");
    row.getCell(index).setCellComment(note);
  }
}
