package org.barsheet.plan.edit;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.table.TableChange;
import org.barsheet.plan.table.TableChanges;
import org.barsheet.plan.table.TableRows;

/**
 * Where in a plan's files an edit is made.
 *
 * @param where what it changes, or the nearest around it that is there
 * @param yaml whether it is written as YAML
 * @param book whether the whole plan is a workbook
 */
record EditPlace(Where where, boolean yaml, boolean book) {

  static EditPlace of(Path plan, Entry.Keyed tree, TreeEdit edit) {
    Where where = nearest(tree, edit.at()).where();
    boolean inTable = !where.file().equals(plan.toString());
    return new EditPlace(where, !inTable && !isBook(tree), isBook(tree));
  }

  private static boolean isBook(Entry.Keyed tree) {
    return tree.members().stream()
        .anyMatch(member -> member.where().position().startsWith("sheet "));
  }

  private static Entry nearest(Entry.Keyed tree, PlanPath at) {
    PlanPath way = at;
    Optional<Entry> entry = way.entryIn(tree);
    while (entry.isEmpty()) {
      way = way.above();
      entry = way.entryIn(tree);
    }
    return entry.get();
  }

  Path file() {
    return Path.of(where.file());
  }

  /**
   * The file's bytes after the edit.
   *
   * @throws InputException if it can't be made alone
   */
  byte[] edited(byte[] bytes, Entry.Keyed tree, TreeEdit edit) {
    if (yaml) {
      FileText text = FileText.of(file(), bytes);
      return text.with(YamlPlan.edited(file(), text.read(), edit));
    }
    Entry.Keyed wanted = ChangedTree.of(tree, edit);
    PlanReading held = new PlanReading(file(), Map.of(file(), bytes));
    if (book) {
      return BookEdits.with(file(), bytes, TableChanges.inBook(held, tree, wanted));
    }
    TableChange change = TableChanges.inTable(file(), held, tree, wanted);
    if (!change.sheet().isEmpty()) {
      return BookEdits.with(file(), bytes, List.of(change));
    }
    FileText text = FileText.of(file(), bytes);
    return text.with(CsvRows.of(text.read(), change));
  }

  /** Whether the plan is read as it is to be. */
  boolean isSo(Entry.Keyed wanted, Entry.Keyed read) {
    return yaml
        ? Values.areSame(wanted, read)
        : Values.areSame(TableRows.inCells(wanted), TableRows.inCells(read));
  }

  InputException refuse() {
    return new InputException(
        Problem.at(
            where.file(),
            where.position(),
            "this place can't be changed safely as it's written",
            "change it in the file itself"));
  }
}
