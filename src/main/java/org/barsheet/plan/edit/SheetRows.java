package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.barsheet.plan.table.CellPlace;
import org.barsheet.plan.table.TableChange;

/**
 * Changes cells and rows in the XML of one worksheet (Office Open XML, ECMA-376 Part 1, 18.3.1). A
 * new cell looks as the nearest one above it; a row that goes is left blank, so that no other row
 * moves; new rows take blank ones where there are, else those below move down.
 */
final class SheetRows {

  private final String file;
  private final TableChange change;
  private final SheetNeeds needs;

  /** What cells are to hold, by row counted from 1, then by column. */
  private final TreeMap<Integer, TreeMap<Integer, String>> wanted = new TreeMap<>();

  private String xml;

  /** How far rows behind the new ones moved down. */
  private int moved;

  private SheetRows(String file, String xml, TableChange change, SheetNeeds needs) {
    this.file = file;
    this.needs = needs;
    this.xml = xml;
    this.change = change;
  }

  /**
   * The XML with what is to change.
   *
   * @param needs what else of the workbook stands on its rows
   * @throws org.barsheet.input.InputException if rows can't move down, or a cell holds a formula
   */
  static String of(String file, String xml, TableChange change, SheetNeeds needs) {
    SheetRows rows = new SheetRows(file, xml, change, needs);
    rows.makeRoom();
    rows.collect();
    rows.wanted.forEach(rows::write);
    return rows.xml;
  }

  private void makeRoom() {
    int first = change.behind() + 1;
    int count = change.fresh().size();
    boolean blank =
        new SheetGrid(xml)
            .rows().stream()
                .filter(row -> row.number() >= first && row.number() < first + count)
                .allMatch(SheetGrid.Row::isBlank);
    if (!blank || SheetShift.isMergedOver(xml, first, count)) {
      if (needs.lastRow() >= first) {
        throw SheetShift.held(file, change.sheet(), first);
      }
      xml = SheetShift.down(file, change.sheet(), xml, first, count);
      moved = count;
    }
  }

  private void collect() {
    for (TableChange.Cell cell : change.cells()) {
      put(cell.row(), cell.column(), cell.now());
    }
    int row = change.behind();
    for (Map<Integer, String> fresh : change.fresh()) {
      row++;
      for (Map.Entry<Integer, String> cell : fresh.entrySet()) {
        wanted.computeIfAbsent(row, none -> new TreeMap<>()).put(cell.getKey(), cell.getValue());
      }
    }
    for (int gone : change.gone()) {
      change.columns().forEach(column -> put(gone, column, ""));
    }
  }

  private void put(int row, int column, String now) {
    int there = row > change.behind() ? row + moved : row;
    wanted.computeIfAbsent(there, none -> new TreeMap<>()).put(column, now);
  }

  private void write(int number, Map<Integer, String> cells) {
    SheetGrid grid = new SheetGrid(xml);
    List<Splice> splices = new ArrayList<>();
    SheetGrid.Row row = grid.row(number);
    Map<Integer, String> missing = new TreeMap<>();
    Map<Integer, SheetGrid.Cell> there = new HashMap<>();
    row.cells().forEach(cell -> there.put(cell.column(), cell));
    cells.forEach(
        (column, now) -> {
          SheetGrid.Cell cell = there.get(column);
          if (cell == null) {
            missing.put(column, now);
          } else if (!now.isEmpty() || !cell.isBlank()) {
            splices.add(replaced(grid, number, Objects.requireNonNull(cell), now));
          }
        });
    missing.values().removeIf(String::isEmpty);
    Map<Integer, String> written = new TreeMap<>();
    missing.forEach((column, now) -> written.put(column, fresh(grid, number, column, now)));
    splices.addAll(grid.insert(row, written));
    xml = Splice.apply(xml, splices);
  }

  private Splice replaced(SheetGrid grid, int row, SheetGrid.Cell cell, String now) {
    if (now.isEmpty()) {
      if (cell.isFormula()) {
        throw SheetShift.refuse(
            file, place(row, cell.column()), "this cell holds a formula", "type the text itself");
      }
      String p = cell.tag().prefix();
      String attributes = withoutType(cell.tag().attributes());
      return new Splice(cell.from(), cell.to(), "<" + p + "c" + attributes + "/>");
    }
    if (cell.isBlank()) {
      String attributes = withoutType(cell.tag().attributes());
      boolean number = isNumber(grid, row, cell.column(), now);
      String text = content(cell.tag().prefix(), attributes, now, number);
      return new Splice(cell.from(), cell.to(), text);
    }
    CellEdit edit = new CellEdit(place(row, cell.column()), cell.isNumber() ? "0" : "", now);
    return SheetEdits.of(file, change.sheet(), xml, List.of(edit)).get(0);
  }

  private String place(int row, int column) {
    return new CellPlace(change.sheet(), row - 1, column).toString();
  }

  private static String withoutType(String attributes) {
    return attributes.replaceAll("\\st\\s*=\\s*(\"[^\"]*\"|'[^']*')", "");
  }

  private String fresh(SheetGrid grid, int row, int column, String now) {
    String style = grid.above(row, column).map(cell -> cell.tag().attribute("s")).orElse("");
    String reference = place(row, column).replaceFirst("(?s).*, cell ", "");
    String attributes =
        " r=\"" + reference + "\"" + (style.isEmpty() ? "" : " s=\"" + style + "\"");
    return content(grid.prefix(), attributes, now, isNumber(grid, row, column, now));
  }

  /** Whether a whole number is kept as one, as the cell above is. */
  private static boolean isNumber(SheetGrid grid, int row, int column, String now) {
    return SheetEdits.isWhole(now)
        && grid.above(row, column).filter(SheetGrid.Cell::isNumber).isPresent();
  }

  private static String content(String p, String attributes, String now, boolean number) {
    if (number) {
      return "<" + p + "c" + attributes + "><" + p + "v>" + now + "</" + p + "v></" + p + "c>";
    }
    String space = now.equals(now.strip()) ? "" : " xml:space=\"preserve\"";
    String text = "<" + p + "t" + space + ">" + SheetEdits.escaped(now) + "</" + p + "t>";
    String inline = "<" + p + "is>" + text + "</" + p + "is>";
    return "<" + p + "c" + attributes + " t=\"inlineStr\">" + inline + "</" + p + "c>";
  }
}
