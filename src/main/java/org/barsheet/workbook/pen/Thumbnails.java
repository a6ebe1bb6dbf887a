package org.barsheet.workbook.pen;

import org.apache.poi.ss.usermodel.ClientAnchor.AnchorType;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.streaming.SXSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;

/** Small photographs in the cells of a sheet. */
public final class Thumbnails {

  private static final double GAP = 2;

  private final Book book;
  private final SheetFrame frame;
  private final SXSSFDrawing canvas;

  public Thumbnails(Book book, SheetFrame frame) {
    this.book = book;
    this.frame = frame;
    this.canvas = frame.sheet().createDrawingPatriarch();
  }

  /**
   * Puts a photograph into a cell, as large as it fits.
   *
   * @param jpeg its file's bytes
   * @param highPerWide its height for each unit of its width
   */
  public void place(byte[] jpeg, double highPerWide, int row, int column, double rowPoints) {
    double wide =
        Math.min(frame.columns().points(column) - 2 * GAP, (rowPoints - 2 * GAP) / highPerWide);
    XSSFClientAnchor anchor =
        new XSSFClientAnchor(
            Units.toEMU(GAP),
            Units.toEMU(GAP),
            Units.toEMU(GAP + wide),
            Units.toEMU(GAP + wide * highPerWide),
            column,
            row,
            column,
            row);
    anchor.setAnchorType(AnchorType.MOVE_DONT_RESIZE);
    canvas.createPicture(anchor, book.stream().addPicture(jpeg, Workbook.PICTURE_TYPE_JPEG));
  }
}
