package org.barsheet.plan.edit;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.Entry;

/**
 * Where in a plan's files an edit is made.
 *
 * @param where what it changes, or the nearest around it that is there
 * @param yaml whether it is written as YAML
 */
record EditPlace(Where where, boolean yaml) {

  static EditPlace of(Path plan, Entry.Keyed tree, TreeEdit edit) {
    Where where = nearest(tree, edit.at()).where();
    boolean inTable = !where.file().equals(plan.toString());
    return new EditPlace(where, !inTable && !isBook(tree));
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
    Optional<Entry.Text> before = edit.at().textIn(tree);
    if (edit instanceof TreeEdit.Put put
        && before.isPresent()
        && put.value() instanceof Entry.Text now) {
      CellEdit cell = new CellEdit(where.position(), before.get().text(), now.text());
      return PlanEdits.inTable(file(), bytes, List.of(cell));
    }
    throw refuse();
  }

  /** Whether the plan is read as it is to be. */
  boolean isSo(Entry.Keyed wanted, Entry.Keyed read) {
    return Values.areSame(wanted, read);
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
