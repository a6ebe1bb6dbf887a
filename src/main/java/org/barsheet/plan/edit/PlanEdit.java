package org.barsheet.plan.edit;

import java.util.List;
import org.barsheet.plan.source.Entry;

/** Something a person changes in a plan, as a small value. */
public interface PlanEdit {

  /**
   * What is to change, one after another, each in the plan that the one before left.
   *
   * @param plan as it is now
   * @throws org.barsheet.input.InputException if this plan can't be changed so
   */
  List<TreeEdit> in(Entry.Keyed plan);
}
