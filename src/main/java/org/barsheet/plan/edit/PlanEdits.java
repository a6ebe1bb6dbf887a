package org.barsheet.plan.edit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.input.GivenFile;
import org.barsheet.input.Limit;
import org.barsheet.plan.Where;
import org.barsheet.plan.read.PlanSource;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.table.CellPlace;

/**
 * Changes single values in a plan's files, be it YAML, a workbook or a table of panels: comments,
 * order, spacing, quotes, line ends, styles and all that is not asked for stay byte for byte.
 * Nothing is written.
 */
public final class PlanEdits {

  private PlanEdits() {}

  /**
   * The plan's files that change, as they are and as they are to be.
   *
   * @param plan the plan's file
   * @param edits each leads to a text of the plan, no two to the same
   * @throws org.barsheet.input.InputException if a file cannot be read, or a value cannot be
   *     changed without changing others
   * @throws IllegalArgumentException if an edit leads to no text
   */
  public static List<EditedFile> of(Path plan, List<Edit> edits) {
    PlanReading reading = new PlanReading(plan);
    Entry.Keyed tree = PlanSource.read(reading);
    reading.problems().throwIfAny();
    Map<String, List<CellEdit>> cells = new LinkedHashMap<>();
    List<Edit> yaml = new ArrayList<>();
    for (Edit edit : edits) {
      PlanPath at = edit.at().in(tree);
      Entry.Text text =
          at.textIn(tree)
              .orElseThrow(() -> new IllegalArgumentException("nothing to change at " + at));
      Where where = text.where();
      boolean table =
          CellPlace.of(where.position()).isPresent() || !where.file().equals(plan.toString());
      if (table) {
        CellEdit cell = new CellEdit(where.position(), text.text(), edit.now());
        cells.computeIfAbsent(where.file(), file -> new ArrayList<>()).add(cell);
      } else {
        yaml.add(new Edit(at, edit.now()));
      }
    }
    List<EditedFile> files = new ArrayList<>();
    if (!yaml.isEmpty()) {
      files.add(inYaml(plan, yaml));
    }
    cells.forEach((file, own) -> files.add(inTable(Path.of(file), own)));
    return files;
  }

  private static EditedFile inYaml(Path plan, List<Edit> edits) {
    byte[] bytes = GivenFile.bytes(plan, Limit.PLAN);
    FileText text = FileText.of(plan, bytes);
    return new EditedFile(plan, bytes, text.with(YamlEdits.of(plan, text.read(), edits)));
  }

  private static EditedFile inTable(Path file, List<CellEdit> edits) {
    if (CellPlace.of(edits.get(0).position()).isPresent()) {
      byte[] bytes = GivenFile.bytes(file, Limit.WORKBOOK);
      return new EditedFile(file, bytes, BookEdits.of(file, bytes, edits));
    }
    byte[] bytes = GivenFile.bytes(file, Limit.TABLE);
    FileText text = FileText.of(file, bytes);
    return new EditedFile(file, bytes, text.with(CsvEdits.of(text.read(), edits)));
  }
}
