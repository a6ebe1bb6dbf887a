package org.barsheet.plan.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.input.Problem;
import org.barsheet.plan.PlanNote;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.PlanFile;
import org.barsheet.plan.source.PlanReading;

/**
 * Reads a table of values parted by commas, semicolons or tabs, quoted as RFC 4180 says. Which of
 * them it is follows from the first line.
 */
public final class CsvTable {

  /** Rows of one table. */
  public static final int MOST_ROWS = 20_000;

  private static final Map<Character, String> DELIMITERS =
      Map.of(',', "commas", ';', "semicolons", '\t', "tabs");

  private CsvTable() {}

  public static Grid read(Path file, PlanReading reading) {
    String name = file.toString();
    String text = PlanFile.text(file, reading.bytes(file, Limit.TABLE));
    char delimiter = delimiter(text);
    Where whole = new Where(name, "");
    reading
        .notes()
        .add(new PlanNote(whole, "the columns are separated by " + DELIMITERS.get(delimiter)));
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(delimiter).setRecordSeparator('\n').get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      return new Grid(whole, rows(parser, name));
    } catch (IOException | UncheckedIOException wrong) {
      throw new InputException(
          Problem.ofFile(
              name,
              "a quote is not closed, or there is text after a closing quote",
              "write a quote inside a quoted text twice: \"the \"\"big\"\" lamp\""));
    }
  }

  /** The sign between values: the one that parts the first line most often outside quotes. */
  public static char delimiter(String text) {
    char best = ',';
    int most = 0;
    for (char candidate : new char[] {',', ';', '\t'}) {
      int count = count(text, candidate);
      if (count > most) {
        most = count;
        best = candidate;
      }
    }
    return best;
  }

  private static int count(String text, char wanted) {
    int count = 0;
    boolean quoted = false;
    for (int i = 0; i < text.length() && (quoted || text.charAt(i) != '\n'); i++) {
      quoted ^= text.charAt(i) == '"';
      count += !quoted && text.charAt(i) == wanted ? 1 : 0;
    }
    return count;
  }

  private static List<Grid.Row> rows(CSVParser parser, String file) {
    List<Grid.Row> rows = new ArrayList<>();
    long line = 1;
    for (CSVRecord record : parser) {
      if (rows.size() >= MOST_ROWS) {
        throw new InputException(
            Problem.at(
                file,
                "line " + line,
                "the table has more than " + MOST_ROWS + " rows",
                "check the file; this is the limit"));
      }
      Grid.Row row = row(record, new Where(file, "line " + line), rows);
      if (!row.cells().isEmpty()) {
        rows.add(row);
      }
      line = parser.getCurrentLineNumber() + 1;
    }
    return rows;
  }

  private static Grid.Row row(CSVRecord record, Where where, List<Grid.Row> above) {
    List<Grid.Cell> cells = new ArrayList<>();
    for (int i = 0; i < record.size(); i++) {
      if (!record.get(i).isBlank()) {
        Where cellWhere = new Where(where.file(), position(where.position(), heading(i, above)));
        cells.add(new Grid.Cell(i, new Grid.Written(record.get(i)), false, cellWhere));
      }
    }
    return new Grid.Row(where, cells);
  }

  /** How messages call a field: {@code line 3, column cue}. */
  public static String position(String line, String heading) {
    return line + ", column " + heading;
  }

  /** What stands above a column in the first row, or its number from 1. */
  private static String heading(int column, List<Grid.Row> above) {
    if (!above.isEmpty()) {
      for (Grid.Cell cell : above.get(0).cells()) {
        if (cell.column() == column && cell.value() instanceof Grid.Written written) {
          return written.text().strip();
        }
      }
    }
    return Integer.toString(column + 1);
  }
}
