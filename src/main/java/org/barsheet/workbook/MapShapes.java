package org.barsheet.workbook;

import java.util.List;
import org.apache.poi.ss.usermodel.ShapeTypes;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.TextAlign;
import org.apache.poi.xssf.usermodel.TextAutofit;
import org.apache.poi.xssf.usermodel.TextHorizontalOverflow;
import org.apache.poi.xssf.usermodel.TextVerticalOverflow;
import org.apache.poi.xssf.usermodel.XSSFChildAnchor;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFConnector;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.apache.poi.xssf.usermodel.XSSFTextBox;
import org.apache.poi.xssf.usermodel.XSSFTextParagraph;
import org.apache.poi.xssf.usermodel.XSSFTextRun;
import org.barsheet.artwork.MapMark;
import org.barsheet.workbook.pen.SafeText;
import org.barsheet.workbook.pen.Styles;
import org.openxmlformats.schemas.drawingml.x2006.main.CTLineProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.STLineEndType;

/** Draws marks on a worksheet, as shapes that stay one group and keep their scale. */
final class MapShapes {

  private static final double POINTS_PER_MILLIMETER = 72 / 25.4;
  private static final double TEXT_WIDE = 32;
  private static final double TEXT_HIGH = 4.4;
  private static final int BLACK = 0;
  private static final int GRAY = 0xB0;
  private static final int WHITE = 0xFF;

  private final XSSFShapeGroup group;

  private MapShapes(XSSFShapeGroup group) {
    this.group = group;
  }

  /**
   * Draws marks into an anchor.
   *
   * @param width of all they stand on, in millimeters, which the anchor has too
   * @param height likewise
   */
  static void draw(
      XSSFDrawing drawing,
      XSSFClientAnchor anchor,
      double width,
      double height,
      List<MapMark> marks) {
    XSSFShapeGroup group = drawing.createGroup(anchor);
    group.setCoordinates(0, 0, units(width), units(height));
    MapShapes shapes = new MapShapes(group);
    marks.forEach(shapes::mark);
  }

  /** Millimeters on paper as the file format counts lengths. */
  private static int units(double millimeters) {
    return Units.toEMU(millimeters * POINTS_PER_MILLIMETER);
  }

  private static XSSFChildAnchor anchor(double left, double top, double width, double height) {
    return new XSSFChildAnchor(units(left), units(top), units(left + width), units(top + height));
  }

  private void mark(MapMark mark) {
    if (mark instanceof MapMark.Box box) {
      XSSFSimpleShape shape =
          group.createSimpleShape(
              anchor(box.rect().left(), box.rect().top(), box.rect().width(), box.rect().height()));
      shape.setShapeType(ShapeTypes.RECT);
      fill(shape, box.opaque(), WHITE);
      line(shape, box.weight(), BLACK);
    } else if (mark instanceof MapMark.Stroke stroke) {
      stroke(stroke);
    } else if (mark instanceof MapMark.Ring ring) {
      double size = 2 * ring.radius();
      XSSFSimpleShape shape =
          group.createSimpleShape(
              anchor(ring.x() - ring.radius(), ring.y() - ring.radius(), size, size));
      shape.setShapeType(ShapeTypes.ELLIPSE);
      fill(shape, ring.solid(), BLACK);
      line(shape, ring.weight(), BLACK);
    } else if (mark instanceof MapMark.Text text) {
      text(text);
    }
  }

  private static void fill(XSSFShape shape, boolean filled, int level) {
    if (filled) {
      shape.setFillColor(level, level, level);
    } else {
      shape.setNoFill(true);
    }
  }

  private static void line(XSSFShape shape, double weight, int level) {
    shape.setLineWidth(weight * POINTS_PER_MILLIMETER);
    shape.setLineStyleColor(level, level, level);
  }

  private void stroke(MapMark.Stroke stroke) {
    boolean leftwards = stroke.toX() < stroke.fromX();
    boolean upwards = stroke.toY() < stroke.fromY();
    XSSFConnector line =
        group.createConnector(
            anchor(
                Math.min(stroke.fromX(), stroke.toX()),
                Math.min(stroke.fromY(), stroke.toY()),
                Math.abs(stroke.toX() - stroke.fromX()),
                Math.abs(stroke.toY() - stroke.fromY())));
    line.setShapeType(ShapeTypes.LINE);
    line(line, stroke.weight(), stroke.gray() ? GRAY : BLACK);
    line.getCTConnector().getSpPr().getXfrm().setFlipH(leftwards);
    line.getCTConnector().getSpPr().getXfrm().setFlipV(upwards);
    if (stroke.arrow()) {
      CTLineProperties properties = line.getCTConnector().getSpPr().getLn();
      properties.addNewTailEnd().setType(STLineEndType.TRIANGLE);
    }
  }

  private void text(MapMark.Text text) {
    XSSFTextBox box =
        group.createTextbox(
            anchor(text.x() - TEXT_WIDE / 2, text.y() - TEXT_HIGH / 2, TEXT_WIDE, TEXT_HIGH));
    box.setNoFill(true);
    box.setTextAutofit(TextAutofit.NONE);
    box.setTextHorizontalOverflow(TextHorizontalOverflow.OVERFLOW);
    box.setTextVerticalOverflow(TextVerticalOverflow.OVERFLOW);
    box.setVerticalAlignment(VerticalAlignment.CENTER);
    box.setTopInset(0);
    box.setBottomInset(0);
    box.setLeftInset(0);
    box.setRightInset(0);
    box.setText(SafeText.of(text.words()));
    XSSFTextParagraph paragraph = box.getTextParagraphs().get(0);
    paragraph.setTextAlign(TextAlign.CENTER);
    for (XSSFTextRun run : paragraph.getTextRuns()) {
      run.setFontFamily(Styles.TYPEFACE, (byte) 0, (byte) 0, false);
      run.setFontSize(text.points());
      run.setBold(text.bold());
    }
  }
}
