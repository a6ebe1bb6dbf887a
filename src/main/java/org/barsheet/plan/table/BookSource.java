package org.barsheet.plan.table;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.input.Nearest;
import org.barsheet.plan.PlanNote;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.EntryBuilder;
import org.barsheet.plan.source.PlanReading;

/** Makes entries of a workbook: a worksheet for each section of the plan. */
public final class BookSource {

  private final PlanReading reading;
  private final Where whole;

  public BookSource(PlanReading reading) {
    this.reading = reading;
    this.whole = new Where(reading.file().toString(), "");
  }

  public Entry.Keyed read() {
    reading.problems().seen(whole);
    EntryBuilder plan = new EntryBuilder(whole);
    Map<String, Grid> sheets = BookReader.read(reading.file(), reading);
    sheets.forEach((name, grid) -> readSheet(name, grid, List.copyOf(sheets.keySet()), plan));
    return plan.build();
  }

  private void readSheet(String name, Grid grid, List<String> all, EntryBuilder plan) {
    Optional<SheetLayout> layout = SheetLayout.named(name);
    if (layout.isEmpty()) {
      reading.problems().seen(grid.where());
      setAside(name, grid, all);
    } else if (layout.get().kind() == SheetLayout.Kind.SETTINGS) {
      new SettingsReader(layout.get(), grid, reading).readInto(plan);
    } else {
      new TableReader(layout.get(), grid, reading).readInto(plan);
    }
  }

  private void setAside(String name, Grid grid, List<String> all) {
    List<String> missing =
        SheetLayout.ALL.stream()
            .map(SheetLayout::sheet)
            .filter(sheet -> all.stream().noneMatch(sheet::equalsIgnoreCase))
            .toList();
    Optional<String> near = Nearest.to(name, missing);
    if (near.isPresent()) {
      String remedy = "did you mean " + near.get() + "?";
      reading.problems().add(grid.where(), "no sheet of a plan is called '" + name + "'", remedy);
    } else {
      String sentence = "the sheet '" + name + "' is ignored";
      reading.notes().add(new PlanNote(grid.where(), sentence));
    }
  }

  /** The panels of a table in a file of its own: the sheet Panels, or the only sheet. */
  public static Entry panels(Path file, PlanReading reading) {
    return panels(panelsGrid(file, reading), reading);
  }

  static Grid panelsGrid(Path file, PlanReading reading) {
    Map<String, Grid> sheets = BookReader.read(file, reading);
    return sheets.entrySet().stream()
        .filter(sheet -> sheet.getKey().equalsIgnoreCase(SheetLayout.PANELS.sheet()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElseGet(
            () ->
                sheets.values().stream()
                    .findFirst()
                    .orElse(new Grid(new Where(file.toString(), ""), List.of())));
  }

  public static Entry panels(Grid grid, PlanReading reading) {
    EntryBuilder plan = new EntryBuilder(grid.where());
    new TableReader(SheetLayout.PANELS, grid, reading).readInto(plan);
    return plan.build()
        .member("panels")
        .map(Entry.Member::value)
        .orElse(new Entry.Items(List.of(), grid.where()));
  }
}
