package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.barsheet.plan.table.CsvTable;

/** Changes fields of a table in text, quoted as RFC 4180 says. */
final class CsvEdits {

  /**
   * A field as it stands in the text, with its quotes.
   *
   * @param from index of its first character
   * @param to index after its last character
   */
  record Field(int from, int to) {}

  private final String text;
  private final char delimiter;
  private final Map<String, CellEdit> edits;
  private final List<Splice> splices = new ArrayList<>();
  private List<String> headings = List.of();

  CsvEdits(String text, List<CellEdit> edits) {
    this.text = text;
    this.delimiter = CsvTable.delimiter(text);
    this.edits = edits.stream().collect(Collectors.toMap(CellEdit::position, edit -> edit));
  }

  /**
   * What to change.
   *
   * @param text a table that was read without fault, with line feeds as line ends
   */
  static List<Splice> of(String text, List<CellEdit> edits) {
    CsvEdits changes = new CsvEdits(text, edits);
    int line = 1;
    for (int start = 0; start < text.length(); ) {
      List<Field> row = changes.row(start);
      changes.change(row, "line " + line);
      int end = row.get(row.size() - 1).to();
      line += 1 + (int) text.substring(start, end).chars().filter(c -> c == '\n').count();
      start = end + 1;
    }
    return changes.splices;
  }

  /** The fields of the row that begins there. */
  List<Field> row(int start) {
    List<Field> row = new ArrayList<>();
    int end = start - 1;
    do {
      int from = end + 1;
      end = from;
      if (charAt(from) == '"') {
        end = text.indexOf('"', from + 1) + 1;
        while (charAt(end) == '"') {
          end = text.indexOf('"', end + 1) + 1;
        }
      }
      while (charAt(end) != delimiter && charAt(end) != '\n') {
        end++;
      }
      row.add(new Field(from, end));
    } while (charAt(end) == delimiter);
    return row;
  }

  private char charAt(int index) {
    return index < text.length() ? text.charAt(index) : '\n';
  }

  private void change(List<Field> row, String line) {
    for (int column = 0; column < row.size(); column++) {
      Field field = row.get(column);
      CellEdit edit = edits.get(CsvTable.position(line, heading(column)));
      if (edit != null) {
        splices.add(new Splice(field.from(), field.to(), written(edit.now(), field)));
      }
    }
    boolean blank = row.stream().allMatch(field -> value(field).isBlank());
    if (headings.isEmpty() && !blank) {
      headings = row.stream().map(field -> value(field).strip()).toList();
    }
  }

  /** As {@link CsvTable} names a column: after the first row that is not blank. */
  private String heading(int column) {
    boolean named = column < headings.size() && !headings.get(column).isEmpty();
    return named ? headings.get(column) : Integer.toString(column + 1);
  }

  private String value(Field field) {
    String raw = text.substring(field.from(), field.to());
    return raw.startsWith("\"") ? raw.replaceAll("^\"|\"$", "").replace("\"\"", "\"") : raw;
  }

  /** The text in quotes where the field had them or a sign in it would end the field. */
  private String written(String now, Field field) {
    boolean quoted =
        charAt(field.from()) == '"' || now.chars().anyMatch(c -> c == delimiter || c == '"');
    return quoted ? "\"" + now.replace("\"", "\"\"") + "\"" : now;
  }
}
