package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.source.Entry;

/**
 * Edits that are one to the person who makes them.
 *
 * @param edits each is made in the plan that the one before left
 */
public record Together(List<PlanEdit> edits) implements PlanEdit {

  public Together {
    edits = List.copyOf(edits);
  }

  @Override
  public List<TreeEdit> in(Entry.Keyed plan) {
    List<TreeEdit> all = new ArrayList<>();
    Entry.Keyed now = plan;
    for (PlanEdit edit : edits) {
      for (TreeEdit one : edit.in(now)) {
        for (TreeEdit smallest : one.in(now)) {
          all.add(smallest);
          now = ChangedTree.of(now, smallest);
        }
      }
    }
    return all;
  }
}
