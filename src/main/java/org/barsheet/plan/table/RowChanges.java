package org.barsheet.plan.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.Problems;

/** What is to change in the rows of a table of things. */
final class RowChanges {

  private final SheetLayout layout;
  private final Grid grid;
  private final int heading;

  /** Columns by their headings, those added last. */
  private final Map<String, Integer> columns = new LinkedHashMap<>();

  private final List<TableChange.Cell> cells = new ArrayList<>();
  private final List<Map<Integer, String>> fresh = new ArrayList<>();

  private RowChanges(SheetLayout layout, Grid grid) {
    this.layout = layout;
    this.grid = grid;
    this.heading = TableReader.headingRow(layout, grid);
  }

  static TableChange of(
      SheetLayout layout, String sheet, Grid grid, Entry.Keyed before, Entry.Keyed wanted) {
    TableRows rows = new TableRows(layout);
    return new RowChanges(layout, grid).between(sheet, rows.things(before), rows.things(wanted));
  }

  private TableChange between(
      String sheet, List<List<Map<String, String>>> before, List<List<Map<String, String>>> now) {
    if (heading < 0) {
      String sentence = "there is no column '" + layout.name() + "'";
      throw refuse(grid.where(), sentence, "write it above the names in the first row");
    }
    readHeadings();
    List<List<Grid.Row>> things = things();
    if (things.size() != before.size()) {
      throw refuse(grid.where(), "these rows can't be changed alone", "change them in the file");
    }
    int start = alike(before, now);
    int end = alike(reversed(before, start), reversed(now, start));
    List<Grid.Row> old = flat(things.subList(start, before.size() - end));
    List<Map<String, String>> wanted = flat(now.subList(start, now.size() - end));
    checkOwnColumns(things.subList(start, before.size() - end), old);
    int both = Math.min(old.size(), wanted.size());
    for (int i = 0; i < both; i++) {
      change(old.get(i), wanted.get(i));
    }
    wanted.subList(both, wanted.size()).forEach(row -> fresh.add(inColumns(row)));
    List<Grid.Row> above = flat(things.subList(0, start));
    Grid.Row last = both > 0 ? old.get(both - 1) : above.isEmpty() ? headings() : lastOf(above);
    List<Integer> gone = old.subList(both, old.size()).stream().map(RowChanges::number).toList();
    return new TableChange(
        sheet, cells, number(last), fresh, gone, List.copyOf(new TreeSet<>(columns.values())));
  }

  private Grid.Row headings() {
    return grid.rows().get(heading);
  }

  private static Grid.Row lastOf(List<Grid.Row> rows) {
    return rows.get(rows.size() - 1);
  }

  private static int number(Grid.Row row) {
    return TableChanges.number(row.where().position());
  }

  private void readHeadings() {
    for (Grid.Cell cell : headings().cells()) {
      String name = TableReader.headingOf(cell);
      if (name.equals(layout.name()) || layout.column(name).isPresent()) {
        columns.putIfAbsent(name, cell.column());
      }
    }
  }

  /** The rows of each thing: the one with its name, and those below that add to it. */
  private List<List<Grid.Row>> things() {
    List<List<Grid.Row>> things = new ArrayList<>();
    int name = Objects.requireNonNull(columns.get(layout.name()));
    for (Grid.Row row : grid.rows().subList(heading + 1, grid.rows().size())) {
      boolean begins =
          row.cells().stream().anyMatch(cell -> cell.column() == name && !cell.covered());
      boolean adds = row.cells().stream().anyMatch(this::isRead);
      if (begins) {
        things.add(new ArrayList<>());
      }
      if (!things.isEmpty() && (begins || adds)) {
        things.get(things.size() - 1).add(row);
      }
    }
    return things;
  }

  private boolean isRead(Grid.Cell cell) {
    return columns.containsValue(cell.column());
  }

  private static int alike(
      List<List<Map<String, String>>> one, List<List<Map<String, String>>> other) {
    int alike = 0;
    while (alike < Math.min(one.size(), other.size()) && one.get(alike).equals(other.get(alike))) {
      alike++;
    }
    return alike;
  }

  private static <T> List<T> reversed(List<T> list, int from) {
    List<T> rest = new ArrayList<>(list.subList(from, list.size()));
    Collections.reverse(rest);
    return rest;
  }

  private static <T> List<T> flat(List<List<T>> lists) {
    return lists.stream().flatMap(List::stream).toList();
  }

  /** Things that change places would leave what people wrote beside them behind. */
  private void checkOwnColumns(List<List<Grid.Row>> things, List<Grid.Row> rows) {
    for (Grid.Row row : rows) {
      for (Grid.Cell cell : row.cells()) {
        if (things.size() > 1 && !isRead(cell)) {
          String sentence = "this cell would be beside another " + layout.name() + " afterwards";
          throw refuse(cell.where(), sentence, "move the rows in the table itself");
        }
      }
    }
  }

  private void change(Grid.Row row, Map<String, String> wanted) {
    CellTexts texts = new CellTexts(new Problems());
    Map<String, String> there = new LinkedHashMap<>();
    columns.forEach(
        (name, column) ->
            row.cells().stream()
                .filter(cell -> cell.column() == column && !cell.covered())
                .forEach(cell -> there.put(name, texts.of(cell, time(name)))));
    Set<String> names = new TreeSet<>(there.keySet());
    names.addAll(wanted.keySet());
    for (String name : names) {
      String now = wanted.getOrDefault(name, "");
      if (!now.equals(there.getOrDefault(name, ""))) {
        cells.add(new TableChange.Cell(number(row), column(name), now));
      }
    }
  }

  private TableColumn.TimeOfDay time(String name) {
    return layout.column(name).map(TableColumn::time).orElse(TableColumn.TimeOfDay.MISTAKEN);
  }

  private Map<Integer, String> inColumns(Map<String, String> row) {
    Map<Integer, String> texts = new LinkedHashMap<>();
    row.forEach((name, text) -> texts.put(column(name), text));
    return texts;
  }

  /** The column of a heading, which is written behind the others if it is missing. */
  private int column(String name) {
    Integer there = columns.get(name);
    if (there != null) {
      return there;
    }
    int free =
        1
            + grid.rows().stream()
                .flatMap(row -> row.cells().stream())
                .mapToInt(Grid.Cell::column)
                .max()
                .orElse(-1);
    int column = Math.max(free, 1 + Collections.max(columns.values()));
    columns.put(name, column);
    cells.add(new TableChange.Cell(number(headings()), column, name));
    return column;
  }

  private static InputException refuse(Where where, String sentence, String remedy) {
    return new InputException(Problem.at(where.file(), where.position(), sentence, remedy));
  }
}
