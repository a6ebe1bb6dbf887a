package org.barsheet.adoption;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.edit.Edit;
import org.barsheet.plan.edit.PlanPath;

/** Takes down what becomes of each place, and what to change for it. */
final class Ledger {

  private final OldMusic old;
  private final List<Carried> carried = new ArrayList<>();
  private final List<Edit> edits = new ArrayList<>();

  Ledger(OldMusic old) {
    this.old = old;
  }

  List<Carried> carried() {
    return List.copyOf(carried);
  }

  List<Edit> edits() {
    return List.copyOf(edits);
  }

  void add(Standing standing, Outcome outcome, NewMusic now) {
    String before = standing.words(standing.place());
    String beforeAt = old.barOf(standing.place());
    if (outcome instanceof Outcome.Asked asked) {
      carried.add(Carried.asked(standing.of(), before, beforeAt, asked));
      return;
    }
    Outcome.Found found = (Outcome.Found) outcome;
    String is = standing.words(found.now());
    String isAt = beforeAt.isEmpty() ? "" : now.barOf(found.now());
    carried.add(
        new Carried(standing.of(), before, beforeAt, is, isAt, found.otherNotes(), "", List.of()));
    edit(standing.at(), before, is);
  }

  /** A setting that is no place; told only where it changes. */
  void setting(PlanPath at, String of, String before, String is) {
    if (!before.equals(is)) {
      carried.add(new Carried(of, before, "", is, "", false, "", List.of()));
      edit(at, before, is);
    }
  }

  private void edit(PlanPath at, String before, String is) {
    if (!before.equals(is)) {
      edits.add(new Edit(at, is));
    }
  }
}
