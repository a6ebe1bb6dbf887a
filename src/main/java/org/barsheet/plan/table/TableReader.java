package org.barsheet.plan.table;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.input.Nearest;
import org.barsheet.plan.PlanNote;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.EntryBuilder;
import org.barsheet.plan.source.PlanReading;

/**
 * Reads a table of things, one or more rows each. A row whose name is empty adds to the thing above
 * it: a further reveal of a panel, a further shape of a motif.
 */
final class TableReader {

  private final SheetLayout layout;
  private final Grid grid;
  private final PlanReading reading;
  private final CellTexts texts;
  private final Map<Integer, TableColumn> columns = new LinkedHashMap<>();
  private int nameColumn = -1;
  private Optional<EntryBuilder> current = Optional.empty();

  TableReader(SheetLayout layout, Grid grid, PlanReading reading) {
    this.layout = layout;
    this.grid = grid;
    this.reading = reading;
    this.texts = new CellTexts(reading.problems());
  }

  /** Adds what the table holds to the plan. */
  void readInto(EntryBuilder plan) {
    grid.reportSeen(reading.problems());
    int heading = headingRow(layout, grid);
    if (heading < 0) {
      if (!grid.rows().isEmpty()) {
        reading
            .problems()
            .add(
                grid.where(),
                "there is no column '" + layout.name() + "'",
                "name the columns: " + String.join(", ", layout.headings()));
      }
      return;
    }
    readHeadings(grid.rows().get(heading));
    for (Grid.Row row : grid.rows().subList(heading + 1, grid.rows().size())) {
      readRow(row, plan);
    }
  }

  /** The first row that has the name's heading; titles may stand above it. */
  static int headingRow(SheetLayout layout, Grid grid) {
    for (int i = 0; i < grid.rows().size(); i++) {
      for (Grid.Cell cell : grid.rows().get(i).cells()) {
        if (headingOf(cell).equals(layout.name())) {
          return i;
        }
      }
    }
    return -1;
  }

  static String headingOf(Grid.Cell cell) {
    return cell.value() instanceof Grid.Written written
        ? SheetLayout.plainHeading(written.text())
        : "";
  }

  private void readHeadings(Grid.Row row) {
    Map<String, Where> seen = new HashMap<>();
    for (Grid.Cell cell : row.cells()) {
      String heading = headingOf(cell);
      if (seen.putIfAbsent(heading, cell.where()) != null) {
        String sentence = "there are two columns '" + heading + "'";
        reading.problems().add(cell.where(), sentence, "delete or rename one of them");
      } else if (heading.equals(layout.name())) {
        nameColumn = cell.column();
      } else {
        layout.column(heading).ifPresent(column -> columns.put(cell.column(), column));
      }
    }
    for (Grid.Cell cell : row.cells()) {
      String heading = headingOf(cell);
      if (!heading.equals(layout.name()) && layout.column(heading).isEmpty()) {
        setAside(cell, heading, seen);
      }
    }
  }

  /** A column nobody knows is set aside, unless it looks like a mistyped one. */
  private void setAside(Grid.Cell cell, String heading, Map<String, Where> seen) {
    List<String> missing =
        layout.headings().stream().filter(known -> !seen.containsKey(known)).toList();
    Optional<String> near = Nearest.to(heading, missing);
    if (near.isPresent()) {
      String sentence = "no column is called '" + heading + "'";
      String remedy = "did you mean " + near.get() + "?";
      reading.problems().add(cell.where(), sentence, remedy);
    } else {
      String sentence = "the column '" + heading + "' is ignored";
      reading.notes().add(new PlanNote(cell.where(), sentence));
    }
  }

  private void readRow(Grid.Row row, EntryBuilder plan) {
    Optional<Grid.Cell> name =
        row.cells().stream()
            .filter(cell -> cell.column() == nameColumn && !cell.covered())
            .findFirst();
    name.ifPresent(cell -> begin(cell, row, plan));
    Map<String, EntryBuilder> items = new HashMap<>();
    for (Grid.Cell cell : row.cells()) {
      TableColumn column = columns.get(cell.column());
      boolean ownRow = name.isPresent() || !cell.covered();
      if (column != null && ownRow) {
        readCell(cell, column, name.isPresent(), row, items);
      }
    }
  }

  private void begin(Grid.Cell cell, Grid.Row row, EntryBuilder plan) {
    EntryBuilder above = plan;
    List<String> root = layout.root();
    for (String key : root.subList(0, root.size() - 1)) {
      above = above.at(key, grid.where());
    }
    String last = root.get(root.size() - 1);
    String text = texts.of(cell, TableColumn.TimeOfDay.MISTAKEN);
    if (layout.kind() == SheetLayout.Kind.LISTED) {
      EntryBuilder item = above.append(last, row.where());
      item.put(layout.name(), cell.where(), new Entry.Text(text, cell.where()));
      current = Optional.of(item);
      return;
    }
    if (above.isText(last)) {
      String sentence = "'" + last + "' is already given as text on another sheet";
      reading.problems().add(cell.where(), sentence, "empty that cell, or leave this table empty");
      current = Optional.of(new EntryBuilder(row.where()));
      return;
    }
    String name = text.strip();
    EntryBuilder things = above.at(last, grid.where());
    if (things.has(name)) {
      String remedy = "delete one, or leave the name empty in a row that adds to the one above";
      reading.problems().add(cell.where(), "'" + name + "' is given twice", remedy);
      current = Optional.of(new EntryBuilder(row.where()));
      return;
    }
    current = Optional.of(things.at(name, cell.where()));
  }

  private void readCell(
      Grid.Cell cell,
      TableColumn column,
      boolean firstRow,
      Grid.Row row,
      Map<String, EntryBuilder> items) {
    Entry value = new Entry.Text(texts.of(cell, column.time()), cell.where());
    boolean own = !column.path().isEmpty() && (firstRow || column.group().isEmpty());
    if (current.isEmpty() || (own && !firstRow)) {
      String sentence = "this row has no '" + layout.name() + "'";
      String remedy = "fill it in; a row without it adds to the one above";
      reading.problems().add(row.where(), sentence, remedy);
    } else if (own) {
      putBelow(current.get(), column.path(), cell, value);
    } else {
      items
          .computeIfAbsent(column.group(), group -> current.get().append(group, row.where()))
          .put(column.groupKey(), cell.where(), value);
    }
  }

  /** Puts a value where a path of keys leads. */
  private static void putBelow(EntryBuilder from, List<String> path, Grid.Cell cell, Entry value) {
    EntryBuilder at = from;
    for (String key : path.subList(0, path.size() - 1)) {
      at = at.at(key, cell.where());
    }
    at.put(path.get(path.size() - 1), cell.where(), value);
  }
}
