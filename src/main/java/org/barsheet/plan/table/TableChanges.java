package org.barsheet.plan.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;

/** What is to change in spreadsheets and tables so that a plan says something else. */
public final class TableChanges {

  private TableChanges() {}

  /**
   * Changes of a plan that is a workbook.
   *
   * @throws InputException if a worksheet is missing, or its rows can't be changed alone
   */
  public static List<TableChange> inBook(
      PlanReading reading, Entry.Keyed before, Entry.Keyed wanted) {
    Map<String, Grid> sheets = BookReader.read(reading.file(), reading);
    List<TableChange> changes = new ArrayList<>();
    for (SheetLayout layout : SheetLayout.ALL) {
      Optional<Map.Entry<String, Grid>> sheet =
          sheets.entrySet().stream()
              .filter(one -> SheetLayout.named(one.getKey()).filter(layout::equals).isPresent())
              .findFirst();
      if (differs(layout, before, wanted)) {
        Map.Entry<String, Grid> there = sheet.orElseThrow(() -> noSheet(reading, layout));
        changes.add(of(layout, there.getKey(), there.getValue(), before, wanted));
      }
    }
    return changes;
  }

  /** Changes of a plan's table of panels. */
  public static TableChange inTable(
      Path file, PlanReading reading, Entry.Keyed before, Entry.Keyed wanted) {
    if (file.toString().toLowerCase(Locale.ROOT).matches(".*\\.xls[xm]")) {
      Grid grid = BookSource.panelsGrid(file, reading);
      String sheet = grid.where().position().replaceFirst("sheet ", "");
      return of(SheetLayout.PANELS, sheet, grid, before, wanted);
    }
    return of(SheetLayout.PANELS, "", CsvTable.read(file, reading), before, wanted);
  }

  private static TableChange of(
      SheetLayout layout, String sheet, Grid grid, Entry.Keyed before, Entry.Keyed wanted) {
    return layout.kind() == SheetLayout.Kind.SETTINGS
        ? SettingChanges.of(layout, sheet, grid, before, wanted)
        : RowChanges.of(layout, sheet, grid, before, wanted);
  }

  private static boolean differs(SheetLayout layout, Entry.Keyed before, Entry.Keyed wanted) {
    return layout.kind() == SheetLayout.Kind.SETTINGS
        ? layout.columns().stream()
            .anyMatch(
                row ->
                    !TableRows.setting(before, row.path())
                        .equals(TableRows.setting(wanted, row.path())))
        : !new TableRows(layout).things(before).equals(new TableRows(layout).things(wanted));
  }

  private static InputException noSheet(PlanReading reading, SheetLayout layout) {
    return new InputException(
        Problem.ofFile(
            reading.file().toString(),
            "the workbook has no sheet '" + layout.sheet() + "'",
            "add one with the column '" + layout.name() + "'"));
  }

  /** The number of a row that a place names: {@code sheet Panels, row 4}, {@code line 4}. */
  static int number(String position) {
    return Integer.parseInt(position.replaceFirst("(?s).*?(\\d+)$", "$1"));
  }
}
