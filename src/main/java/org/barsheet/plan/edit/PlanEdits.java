package org.barsheet.plan.edit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.input.Problem;
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
   * @param edits no two of the same value; in a table or a workbook each leads to a text
   * @throws org.barsheet.input.InputException if a file cannot be read, or a value cannot be
   *     changed without changing others
   * @throws IllegalArgumentException if an edit leads nowhere
   */
  public static List<EditedFile> of(Path plan, List<Edit> edits) {
    PlanReading reading = new PlanReading(plan);
    Entry.Keyed tree = PlanSource.read(reading);
    reading.problems().throwIfAny();
    Map<String, List<CellEdit>> cells = new LinkedHashMap<>();
    List<Edit> yaml = new ArrayList<>();
    for (Edit edit : edits) {
      PlanPath at = edit.at().in(tree);
      Optional<Entry.Text> text = at.textIn(tree);
      Where where = text.map(Entry.Text::where).orElseGet(() -> table(at, tree).where());
      boolean cell =
          CellPlace.of(where.position()).isPresent() || !where.file().equals(plan.toString());
      if (cell && edit.now().isPresent() && text.isPresent()) {
        CellEdit inCell = new CellEdit(where.position(), text.get().text(), edit.now().get());
        cells.computeIfAbsent(where.file(), file -> new ArrayList<>()).add(inCell);
      } else if (cell || where.position().startsWith("sheet ")) {
        throw new InputException(
            Problem.at(
                where.file(),
                where.position(),
                "'" + at.lastKey() + "' has no cell of its own to change",
                "type it into the table"));
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

  /** The keys that a key is to be put among. */
  private static Entry.Keyed table(PlanPath at, Entry plan) {
    return at.above()
        .entryIn(plan)
        .filter(Entry.Keyed.class::isInstance)
        .map(Entry.Keyed.class::cast)
        .orElseThrow(() -> new IllegalArgumentException("nothing to change at " + at));
  }

  private static EditedFile inYaml(Path plan, List<Edit> edits) {
    byte[] bytes = GivenFile.bytes(plan, Limit.PLAN);
    byte[] put = inYaml(plan, bytes, edits, true);
    return new EditedFile(plan, bytes, inYaml(plan, put, edits, false));
  }

  /** What is put first, then what is taken out, each from a text that is read anew. */
  private static byte[] inYaml(Path plan, byte[] bytes, List<Edit> edits, boolean puts) {
    List<Edit> own = edits.stream().filter(edit -> edit.now().isPresent() == puts).toList();
    if (own.isEmpty()) {
      return bytes;
    }
    FileText text = FileText.of(plan, bytes);
    return text.with(YamlEdits.of(plan, text.read(), own));
  }

  private static EditedFile inTable(Path file, List<CellEdit> edits) {
    boolean book = CellPlace.of(edits.get(0).position()).isPresent();
    byte[] bytes = GivenFile.bytes(file, book ? Limit.WORKBOOK : Limit.TABLE);
    return new EditedFile(file, bytes, inTable(file, bytes, edits));
  }

  /** A workbook's or a table's bytes with some cells changed. */
  static byte[] inTable(Path file, byte[] bytes, List<CellEdit> edits) {
    if (CellPlace.of(edits.get(0).position()).isPresent()) {
      return BookEdits.of(file, bytes, edits);
    }
    FileText text = FileText.of(file, bytes);
    return text.with(CsvEdits.of(text.read(), edits));
  }
}
