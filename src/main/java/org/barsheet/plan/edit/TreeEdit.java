package org.barsheet.plan.edit;

import java.util.List;
import org.barsheet.plan.source.Entry;

/** One edit of what a plan says, wherever and however its files write it. */
public sealed interface TreeEdit extends PlanEdit {

  /** Where it changes the plan. */
  PlanPath at();

  /**
   * A value that is to be another: of a key, which need not be there yet, or of an item. What it
   * has in common with the value before stays as it is written.
   *
   * @param value its places don't matter
   */
  record Put(PlanPath at, Entry value) implements TreeEdit {

    /** A text. */
    public Put(PlanPath at, String text) {
      this(at, Values.text(text));
    }
  }

  /** A key or an item that is to go; what is not there is gone already. */
  record Remove(PlanPath at) implements TreeEdit {}

  /**
   * A new item.
   *
   * @param at the item it is to be; that one and those behind it move down. The list may be missing
   * @param value its places don't matter
   */
  record Insert(PlanPath at, Entry value) implements TreeEdit {}

  /**
   * An item that is to stand elsewhere in its list.
   *
   * @param to its index once it has moved, from 0
   */
  record Move(PlanPath at, int to) implements TreeEdit {}

  /** A key that is to be called otherwise; its value stays. */
  record Rename(PlanPath at, String key) implements TreeEdit {}

  @Override
  default List<TreeEdit> in(Entry.Keyed plan) {
    return TreeDiff.smallest(plan, this);
  }
}
