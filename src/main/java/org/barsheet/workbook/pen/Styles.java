package org.barsheet.workbook.pen;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.DefaultIndexedColorMap;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.extensions.XSSFCellBorder.BorderSide;

/** The styles of one workbook, one for each look. A workbook holds at most 64,000 of them. */
public final class Styles {

  public static final String TYPEFACE = "Arial";

  private record Letters(double points, boolean bold, Ink ink) {}

  private final XSSFWorkbook book;
  private final Map<Look, XSSFCellStyle> styles = new HashMap<>();
  private final Map<Letters, XSSFFont> fonts = new HashMap<>();

  Styles(XSSFWorkbook book) {
    this.book = book;
    XSSFFont standard = book.getFontAt(0);
    standard.setFontName(TYPEFACE);
    standard.setFontHeightInPoints((short) 10);
  }

  /** The style of a look; the same object for equal looks. */
  XSSFCellStyle of(Look look) {
    return styles.computeIfAbsent(look, this::make);
  }

  private XSSFCellStyle make(Look look) {
    XSSFCellStyle style = book.createCellStyle();
    Letters letters = new Letters(look.points(), look.bold(), look.ink());
    style.setFont(fonts.computeIfAbsent(letters, this::makeFont));
    look.fill()
        .ifPresent(
            ink -> {
              style.setFillForegroundColor(color(ink));
              style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            });
    style.setAlignment(look.across());
    style.setVerticalAlignment(look.upright());
    style.setWrapText(look.wraps());
    style.setDataFormat(book.createDataFormat().getFormat(look.format()));
    style.setQuotePrefixed(look.quoted());
    drawEdges(style, look.edges());
    return style;
  }

  private static void drawEdges(XSSFCellStyle style, Edges edges) {
    if (edges.top() != Line.NONE) {
      style.setBorderTop(edges.top().style());
      style.setBorderColor(BorderSide.TOP, color(edges.top().ink()));
    }
    if (edges.right() != Line.NONE) {
      style.setBorderRight(edges.right().style());
      style.setBorderColor(BorderSide.RIGHT, color(edges.right().ink()));
    }
    if (edges.bottom() != Line.NONE) {
      style.setBorderBottom(edges.bottom().style());
      style.setBorderColor(BorderSide.BOTTOM, color(edges.bottom().ink()));
    }
    if (edges.left() != Line.NONE) {
      style.setBorderLeft(edges.left().style());
      style.setBorderColor(BorderSide.LEFT, color(edges.left().ink()));
    }
  }

  private XSSFFont makeFont(Letters letters) {
    XSSFFont font = book.createFont();
    font.setFontName(TYPEFACE);
    font.setFontHeight(letters.points());
    font.setBold(letters.bold());
    font.setColor(color(letters.ink()));
    return font;
  }

  private static XSSFColor color(Ink ink) {
    return new XSSFColor(ink.rgb(), new DefaultIndexedColorMap());
  }
}
