package org.barsheet.plan.table;

import java.util.Optional;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.EntryBuilder;
import org.barsheet.plan.source.PlanKey;
import org.barsheet.plan.source.PlanReading;

/** Reads a worksheet of settings: a setting and its value on each row. */
final class SettingsReader {

  private final SheetLayout layout;
  private final Grid grid;
  private final PlanReading reading;
  private final CellTexts texts;
  private int settingColumn;
  private int valueColumn = 1;

  SettingsReader(SheetLayout layout, Grid grid, PlanReading reading) {
    this.layout = layout;
    this.grid = grid;
    this.reading = reading;
    this.texts = new CellTexts(reading.problems());
  }

  /** Adds the settings to the plan. */
  void readInto(EntryBuilder plan) {
    grid.reportSeen(reading.problems());
    int first = headings();
    for (Grid.Row row : grid.rows().subList(first, grid.rows().size())) {
      Optional<Grid.Cell> setting = cell(row, settingColumn);
      Optional<Grid.Cell> value = cell(row, valueColumn);
      if (setting.isPresent() && value.isPresent()) {
        read(setting.get(), value.get(), plan);
      } else if (value.isPresent()) {
        String sentence = "this value has no setting beside it";
        reading
            .problems()
            .add(value.get().where(), sentence, "write its name in the column 'setting'");
      }
    }
  }

  /** Finds the headings, which may stand below a title; returns the first row after them. */
  int headings() {
    for (int i = 0; i < grid.rows().size(); i++) {
      Grid.Row row = grid.rows().get(i);
      Optional<Grid.Cell> setting = headed(row, SheetLayout.SETTING);
      Optional<Grid.Cell> value = headed(row, SheetLayout.VALUE);
      if (setting.isPresent() && value.isPresent()) {
        settingColumn = setting.get().column();
        valueColumn = value.get().column();
        return i + 1;
      }
    }
    return 0;
  }

  /** Column of the settings' names, once the headings are found. */
  int settingColumn() {
    return settingColumn;
  }

  /** Column of their values. */
  int valueColumn() {
    return valueColumn;
  }

  private static Optional<Grid.Cell> headed(Grid.Row row, String heading) {
    return row.cells().stream()
        .filter(
            cell ->
                cell.value() instanceof Grid.Written written
                    && SheetLayout.plainHeading(written.text()).equals(heading))
        .findFirst();
  }

  private static Optional<Grid.Cell> cell(Grid.Row row, int column) {
    return row.cells().stream()
        .filter(cell -> cell.column() == column && !cell.covered())
        .findFirst();
  }

  private void read(Grid.Cell setting, Grid.Cell value, EntryBuilder plan) {
    String name = SheetLayout.plainHeading(texts.of(setting, TableColumn.TimeOfDay.MISTAKEN));
    TableColumn known =
        layout
            .column(name)
            .orElseGet(
                () -> TableColumn.own(new PlanKey(name, "", ""), layout.root().get(0), name));
    EntryBuilder above = plan;
    for (String key : known.path().subList(0, known.path().size() - 1)) {
      above = above.at(key, grid.where());
    }
    String key = known.path().get(known.path().size() - 1);
    String text = texts.of(value, known.time());
    if (above.has(key) && text.isBlank()) {
      return;
    }
    if (above.has(key)) {
      reading
          .problems()
          .add(setting.where(), "'" + name + "' is given twice", "delete one of the rows");
      return;
    }
    above.put(key, setting.where(), new Entry.Text(text, value.where()));
  }
}
