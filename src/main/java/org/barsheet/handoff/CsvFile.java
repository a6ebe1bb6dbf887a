package org.barsheet.handoff;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.barsheet.clock.FrameRate;

/**
 * Writes a table as comma-separated values (RFC 4180, UTF-8 behind a byte-order mark, by which
 * spreadsheet programs know it when it is opened by a double click; first row the column names).
 * Every row ends with the film's rate and how its timecode counts, because a timecode without them
 * is a guess.
 */
final class CsvFile implements AutoCloseable {

  /** The two columns every table ends with. */
  static final List<String> RATE_COLUMNS = List.of("frame_rate", "timecode_counts");

  /** What a table in a file begins with. */
  static final String BYTE_ORDER_MARK = "\uFEFF";

  private static final String FORMULA_SIGNS = "=+-@＝＋－＠";

  private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}+");

  private static final CSVFormat RFC_4180 =
      CSVFormat.RFC4180.builder().setRecordSeparator("\r\n").get();

  private final CSVPrinter rows;
  private final FrameRate rate;

  CsvFile(OutputStream out, FrameRate rate, List<String> columns) throws IOException {
    Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    text.write(BYTE_ORDER_MARK);
    this.rows = new CSVPrinter(text, RFC_4180);
    this.rate = rate;
    List<String> header = new ArrayList<>(columns);
    header.addAll(RATE_COLUMNS);
    rows.printRecord(header);
  }

  /** A row; texts that a spreadsheet could take for a formula are defused, numbers stay numbers. */
  void row(Object... cells) throws IOException {
    row(Arrays.asList(cells));
  }

  void row(List<?> cells) throws IOException {
    List<Object> row = new ArrayList<>(cells.size() + RATE_COLUMNS.size());
    for (Object cell : cells) {
      row.add(cell instanceof String text ? harmless(text) : cell);
    }
    row.add(rate.exactName());
    row.add(FilmWords.counting(rate));
    rows.printRecord(row);
  }

  /**
   * A text on one line that no spreadsheet takes for a formula: one that begins with {@code = +
   * - @} or their full-width forms gets a single quote in front (OWASP, CSV Injection).
   */
  static String harmless(String text) {
    String line = CONTROL.matcher(text).replaceAll(" ");
    int ink = 0;
    while (ink < line.length() && Character.isWhitespace(line.charAt(ink))) {
      ink++;
    }
    boolean formula = ink < line.length() && FORMULA_SIGNS.indexOf(line.charAt(ink)) >= 0;
    return formula ? "'" + line : line;
  }

  @Override
  public void close() throws IOException {
    rows.flush();
  }
}
