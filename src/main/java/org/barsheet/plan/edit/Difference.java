package org.barsheet.plan.edit;

import java.util.List;
import org.barsheet.plan.source.Entry;

/**
 * What makes one version of a plan another. In a third version it is made where the two differ,
 * whatever else that one says.
 */
public record Difference(Entry.Keyed from, Entry.Keyed to) implements PlanEdit {

  @Override
  public List<TreeEdit> in(Entry.Keyed plan) {
    List<TreeEdit> edits = TreeDiff.between(from, to, PlanPath.ROOT);
    return Values.areSame(plan, from) ? edits : Carried.over(edits, from, plan).edits();
  }
}
