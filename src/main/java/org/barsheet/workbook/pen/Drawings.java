package org.barsheet.workbook.pen;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.ClientAnchor.AnchorType;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.streaming.SXSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.timing.Shot;

/** The drawings of the panels, each stored once, however many panels show it. */
public final class Drawings {

  /** Free space around a drawing, in points. */
  private static final double GAP = 1.25;

  private record Stored(int index, Drawing drawing) {}

  private final Book book;
  private final SheetFrame frame;
  private final SXSSFDrawing canvas;
  private final Map<Path, Optional<Stored>> stored = new HashMap<>();

  public Drawings(Book book, SheetFrame frame) {
    this.book = book;
    this.frame = frame;
    this.canvas = frame.sheet().createDrawingPatriarch();
  }

  /** Whether a panel has a drawing that can be shown. */
  public boolean has(Shot shot) {
    return of(shot).isPresent();
  }

  private Optional<Stored> of(Shot shot) {
    return shot.panel().drawing().flatMap(path -> stored.computeIfAbsent(path, this::store));
  }

  private Optional<Stored> store(Path path) {
    try {
      return Drawing.read(GivenFile.bytes(path, Limit.DRAWING))
          .map(
              drawing ->
                  new Stored(
                      book.stream().addPicture(drawing.png(), Workbook.PICTURE_TYPE_PNG), drawing));
    } catch (InputException unreadable) {
      return Optional.empty();
    }
  }

  /** Puts a panel's drawing into a cell, as large as it fits. */
  public void place(Shot shot, int row, int column, double rowPoints) {
    of(shot).ifPresent(one -> place(one, row, column, rowPoints));
  }

  private void place(Stored one, int row, int column, double rowPoints) {
    double room = frame.columns().points(column) - 2 * GAP;
    double scale =
        Math.min(room / one.drawing().width(), (rowPoints - 2 * GAP) / one.drawing().height());
    double width = one.drawing().width() * scale;
    double height = one.drawing().height() * scale;
    double top = (rowPoints - height) / 2;
    XSSFClientAnchor anchor =
        new XSSFClientAnchor(
            Units.toEMU(GAP),
            Units.toEMU(top),
            Units.toEMU(GAP + width),
            Units.toEMU(top + height),
            column,
            row,
            column,
            row);
    anchor.setAnchorType(AnchorType.MOVE_DONT_RESIZE);
    canvas.createPicture(anchor, one.index());
  }
}
