package org.barsheet.plan.table;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DateUtil;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** What numbers in cells mean: their formats say whether they are times, shares or amounts. */
final class CellFormats extends DefaultHandler {

  /** Digits a spreadsheet program keeps of a number. */
  private static final MathContext DIGITS = new MathContext(15);

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final boolean from1904;
  private final Map<Integer, String> own = new HashMap<>();
  private final List<Integer> styles = new ArrayList<>();
  private boolean inCellStyles;

  CellFormats(boolean from1904) {
    this.from1904 = from1904;
  }

  @Override
  public void startElement(String uri, String name, String qualified, Attributes attributes) {
    if (name.equals("numFmt") && attributes.getValue("formatCode") != null) {
      own.put(CellPlace.whole(attributes.getValue("numFmtId")), attributes.getValue("formatCode"));
    } else if (name.equals("cellXfs")) {
      inCellStyles = true;
    } else if (name.equals("xf") && inCellStyles) {
      styles.add(Math.max(0, CellPlace.whole(attributes.getValue("numFmtId"))));
    }
  }

  @Override
  public void endElement(String uri, String name, String qualified) {
    if (name.equals("cellXfs")) {
      inCellStyles = false;
    }
  }

  /** The meaning of a number in a cell of a style. */
  Grid.Value value(double number, int style) {
    int id = style >= 0 && style < styles.size() ? styles.get(style) : 0;
    String builtIn = BuiltinFormats.getBuiltinFormat(id);
    String format = own.getOrDefault(id, builtIn == null ? "General" : builtIn);
    if (DateUtil.isADateFormat(id, format) && DateUtil.isValidExcelDate(number)) {
      return moment(number, format);
    }
    if (format.contains("%")) {
      return new Grid.Written(plain(number * 100) + " %");
    }
    boolean withWords = format.contains("\"");
    return new Grid.Written(
        withWords
            ? new DataFormatter(Locale.ROOT).formatRawCellContents(number, id, format)
            : plain(number));
  }

  private static String plain(double number) {
    return new BigDecimal(number).round(DIGITS).stripTrailingZeros().toPlainString();
  }

  private Grid.Value moment(double number, String format) {
    String letters = format.replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.", "");
    boolean date = letters.toLowerCase(Locale.ROOT).matches("(?s).*[yd].*");
    LocalDateTime moment = DateUtil.getLocalDateTime(number, from1904, true);
    String shown = date ? moment.toLocalDate().toString() : moment.toLocalTime().format(CLOCK);
    return new Grid.Moment(number, date, shown);
  }
}
