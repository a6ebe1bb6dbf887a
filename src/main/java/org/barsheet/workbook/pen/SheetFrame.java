package org.barsheet.workbook.pen;

import java.util.List;
import java.util.stream.DoubleStream;
import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.barsheet.workbook.typed.CarryingOver;

/**
 * What every sheet has around its content: title and heading, repeated on each page and frozen on
 * the screen, the footer with the page number, the paper and its margins.
 */
public final class SheetFrame {

  /** The rows of the title: the sheet, the film, the rule, a gap. */
  private static final double[] TITLE_ROWS = {20, 12, 13, 5};

  /** Height of the title block. */
  public static final double TITLE_POINTS = DoubleStream.of(TITLE_ROWS).sum();

  /** Row of the heading over the columns. */
  public static final int HEADING_ROW = TITLE_ROWS.length;

  /** First row of the content. */
  public static final int FIRST_ROW = HEADING_ROW + 1;

  private static final String FOOTER_LETTERS = "&\"Arial,Regular\"&8 ";

  private static final double MILLIMETERS_PER_INCH = 25.4;

  private final SXSSFSheet sheet;
  private final SheetPen pen;
  private final Columns columns;
  private final PageSize page;

  SheetFrame(
      SXSSFSheet sheet, Styles styles, CarryingOver carrying, PageSize page, List<Column> columns) {
    this.sheet = sheet;
    this.page = page;
    this.columns = new Columns(columns, page.width());
    this.pen = new SheetPen(sheet, styles, carrying, this.columns, page.height(), TITLE_POINTS);
    this.columns.applyTo(sheet);
    setupPrint();
  }

  public SheetPen pen() {
    return pen;
  }

  public Columns columns() {
    return columns;
  }

  public SXSSFSheet sheet() {
    return sheet;
  }

  private void setupPrint() {
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setLandscape(page.landscape());
    sheet.getPrintSetup().setPaperSize(page.code());
    sheet.setMargin(PageMargin.LEFT, inches(PageSize.MARGIN_MILLIMETERS));
    sheet.setMargin(PageMargin.RIGHT, inches(PageSize.MARGIN_MILLIMETERS));
    sheet.setMargin(PageMargin.TOP, inches(PageSize.MARGIN_MILLIMETERS));
    sheet.setMargin(PageMargin.BOTTOM, inches(PageSize.LOWER_MARGIN_MILLIMETERS));
    sheet.setMargin(PageMargin.HEADER, inches(PageSize.MARGIN_MILLIMETERS / 2));
    sheet.setMargin(PageMargin.FOOTER, inches(PageSize.FOOTER_MILLIMETERS));
    sheet.setDisplayGridlines(false);
  }

  private static double inches(double millimeters) {
    return millimeters / MILLIMETERS_PER_INCH;
  }

  /**
   * Writes the title block.
   *
   * @param film title of the film
   * @param facts up to three lines for the right side
   */
  void title(String film, List<String> facts) {
    int last = columns.lastPrinted();
    for (int line = 0; line < TITLE_ROWS.length; line++) {
      boolean ruled = line == TITLE_ROWS.length - 2;
      Look look = ruled ? Look.PENCIL.edged(Edges.NONE.bottom(Line.HEAVY)) : Look.PENCIL;
      pen.row(line, TITLE_ROWS[line]);
      if (ruled) {
        pen.blanks(0, last + 1, look);
      }
      if (line < facts.size()) {
        pen.text(last, facts.get(line), look.right().atBottom());
      }
      if (line == 0) {
        pen.text(0, sheet.getSheetName(), Look.TITLE.atBottom());
      } else if (line == 1) {
        pen.text(0, film, Look.PENCIL.atBottom());
      }
    }
  }

  /** Writes the heading over the columns. */
  public void heading(double points) {
    pen.row(HEADING_ROW, points);
    heading();
    pen.row(HEADING_ROW, points);
  }

  /** Writes the columns' headings into the present row. */
  void heading() {
    for (int index = 0; index < columns.count(); index++) {
      String heading = columns.heading(index);
      boolean numbers = columns.at(index).kind() == Column.Kind.NUMBERS;
      Look look = columns.at(index).isHidden() ? Look.HEADING.unwrapped() : Look.HEADING;
      pen.text(index, numbers ? heading + " " : heading, numbers ? look.right() : look);
    }
  }

  /**
   * Repeats and freezes the title with the heading, and prints the footer.
   *
   * @param note what the footer says beside the page number
   */
  public void finish(String note) {
    pen.finish();
    sheet.getPrintSetup().setFitHeight(pen.pagesIfShrunk());
    sheet.setRepeatingRows(new CellRangeAddress(0, HEADING_ROW, -1, -1));
    sheet.createFreezePane(0, FIRST_ROW);
    int number = sheet.getWorkbook().getSheetIndex(sheet);
    sheet.getWorkbook().setPrintArea(number, 0, columns.lastPrinted(), 0, pen.rowIndex());
    Footer footer = sheet.getFooter();
    footer.setLeft(FOOTER_LETTERS + note.replace("&", "&&"));
    footer.setRight(FOOTER_LETTERS + "page &P of &N");
  }
}
