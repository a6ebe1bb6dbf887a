package org.barsheet.plan.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.source.Problems;

/** What is to change in a worksheet of settings. */
final class SettingChanges {

  private SettingChanges() {}

  static TableChange of(
      SheetLayout layout, String sheet, Grid grid, Entry.Keyed before, Entry.Keyed wanted) {
    SettingsReader reader = new SettingsReader(layout, grid, new PlanReading(Path.of(sheet)));
    int first = reader.headings();
    List<Grid.Row> rows = grid.rows().subList(first, grid.rows().size());
    List<TableChange.Cell> cells = new ArrayList<>();
    List<Map<Integer, String>> fresh = new ArrayList<>();
    for (TableColumn setting : layout.columns()) {
      String now = TableRows.setting(wanted, setting.path());
      if (!now.equals(TableRows.setting(before, setting.path()))) {
        Optional<Integer> row = row(rows, reader.settingColumn(), setting.heading());
        row.ifPresentOrElse(
            it -> cells.add(new TableChange.Cell(it, reader.valueColumn(), now)),
            () ->
                fresh.add(
                    Map.of(reader.settingColumn(), setting.heading(), reader.valueColumn(), now)));
      }
    }
    int last = grid.rows().isEmpty() ? 0 : number(grid.rows().get(grid.rows().size() - 1));
    List<Integer> columns = List.of(reader.settingColumn(), reader.valueColumn());
    return new TableChange(sheet, cells, last, fresh, List.of(), columns);
  }

  private static Optional<Integer> row(List<Grid.Row> rows, int column, String setting) {
    CellTexts texts = new CellTexts(new Problems());
    for (Grid.Row row : rows) {
      for (Grid.Cell cell : row.cells()) {
        boolean named =
            cell.column() == column
                && SheetLayout.plainHeading(texts.of(cell, TableColumn.TimeOfDay.MISTAKEN))
                    .equals(setting);
        if (named) {
          return Optional.of(number(row));
        }
      }
    }
    return Optional.empty();
  }

  private static int number(Grid.Row row) {
    return TableChanges.number(row.where().position());
  }
}
