package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.barsheet.plan.table.CsvTable;
import org.barsheet.plan.table.TableChange;

/** Changes fields and lines of a table in text, quoted as RFC 4180 says. */
final class CsvRows {

  /** A row: the line it begins on, counted from 1, and where its fields are. */
  private record Row(int line, List<CsvEdits.Field> fields) {

    int from() {
      return fields.get(0).from();
    }

    int to() {
      return fields.get(fields.size() - 1).to();
    }
  }

  private final String text;
  private final char delimiter;
  private final List<Row> rows = new ArrayList<>();
  private final List<Splice> splices = new ArrayList<>();

  private CsvRows(String text) {
    this.text = text;
    this.delimiter = CsvTable.delimiter(text);
    CsvEdits reader = new CsvEdits(text, List.of());
    int line = 1;
    for (int start = 0; start < text.length(); ) {
      Row row = new Row(line, reader.row(start));
      rows.add(row);
      line += 1 + (int) text.substring(start, row.to()).chars().filter(c -> c == '\n').count();
      start = row.to() + 1;
    }
  }

  /**
   * What to change.
   *
   * @param text a table that was read without fault, with line feeds as line ends
   */
  static List<Splice> of(String text, TableChange change) {
    CsvRows table = new CsvRows(text);
    Set<Integer> lines = new HashSet<>();
    for (TableChange.Cell cell : change.cells()) {
      if (lines.add(cell.row())) {
        table.change(
            table.row(cell.row()),
            change.cells().stream().filter(one -> one.row() == cell.row()).toList());
      }
    }
    Row above = table.row(change.behind());
    for (Map<Integer, String> fresh : change.fresh()) {
      table.splices.add(new Splice(above.to(), above.to(), "\n" + table.line(fresh, above)));
    }
    change.gone().forEach(line -> table.splices.add(table.without(table.row(line))));
    return table.splices;
  }

  private Row row(int line) {
    return rows.stream().filter(row -> row.line() == line).findFirst().orElseThrow();
  }

  private void change(Row row, List<TableChange.Cell> cells) {
    StringBuilder more = new StringBuilder();
    int last = row.fields().size() - 1;
    for (TableChange.Cell cell :
        cells.stream().sorted(Comparator.comparingInt(TableChange.Cell::column)).toList()) {
      if (cell.column() <= last) {
        CsvEdits.Field field = row.fields().get(cell.column());
        boolean quoted = text.startsWith("\"", field.from());
        splices.add(new Splice(field.from(), field.to(), written(cell.now(), quoted)));
      } else {
        more.append(String.valueOf(delimiter).repeat(cell.column() - last));
        more.append(written(cell.now(), false));
        last = cell.column();
      }
    }
    if (!more.isEmpty()) {
      splices.add(new Splice(row.to(), row.to(), more.toString()));
    }
  }

  /** A new line with as many fields as the one above it, quoted where all of those are. */
  private String line(Map<Integer, String> fresh, Row above) {
    boolean quoted =
        above.fields().size() > 1
            && above.fields().stream().allMatch(field -> text.startsWith("\"", field.from()));
    int last = fresh.keySet().stream().mapToInt(Integer::intValue).max().orElse(0);
    List<String> fields =
        IntStream.rangeClosed(0, Math.max(last, above.fields().size() - 1))
            .mapToObj(column -> written(fresh.getOrDefault(column, ""), quoted))
            .toList();
    return String.join("" + delimiter, fields);
  }

  private Splice without(Row row) {
    return new Lines(text).without(row.from(), row.to());
  }

  private String written(String now, boolean inQuotes) {
    boolean quoted = inQuotes || now.chars().anyMatch(c -> c == delimiter || c == '"' || c == '\n');
    return quoted ? "\"" + now.replace("\"", "\"\"") + "\"" : now;
  }
}
