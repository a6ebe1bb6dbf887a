package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.barsheet.plan.source.Entry;

/** Breaks edits down to the smallest, so that what stays the same stays as it is written. */
final class TreeDiff {

  private TreeDiff() {}

  /**
   * The same edit as the smallest ones, each at a place that is there: a value that is another, a
   * key or an item more, less or elsewhere.
   *
   * @throws IllegalArgumentException if it leads nowhere
   */
  static List<TreeEdit> smallest(Entry.Keyed plan, TreeEdit edit) {
    if (edit instanceof TreeEdit.Insert insert) {
      return insert(plan, insert);
    }
    PlanPath at = edit.at().in(plan);
    if (edit instanceof TreeEdit.Put put) {
      return put(plan, at, put.value());
    }
    if (at.entryIn(plan).isEmpty()) {
      return none(edit);
    }
    if (edit instanceof TreeEdit.Move move) {
      return List.of(new TreeEdit.Move(at, move.to()));
    }
    return edit instanceof TreeEdit.Rename rename
        ? List.of(new TreeEdit.Rename(at, rename.key()))
        : List.of(new TreeEdit.Remove(at));
  }

  private static List<TreeEdit> none(TreeEdit edit) {
    if (edit instanceof TreeEdit.Remove) {
      return List.of();
    }
    throw nowhere(edit.at());
  }

  private static IllegalArgumentException nowhere(PlanPath at) {
    return new IllegalArgumentException("nothing to change at " + at);
  }

  private static List<TreeEdit> put(Entry.Keyed plan, PlanPath at, Entry value) {
    Optional<Entry> before = at.entryIn(plan);
    if (before.isPresent()) {
      return between(before.get(), value, at);
    }
    if (at.lastKey().isEmpty()) {
      return insert(plan, new TreeEdit.Insert(at, value));
    }
    Optional<Entry> above = at.above().entryIn(plan);
    if (above.isEmpty() || above.get().isBlank()) {
      return put(plan, at.above(), Values.keyed(at.lastKey(), value));
    }
    if (above.get() instanceof Entry.Keyed) {
      return List.of(new TreeEdit.Put(at, value));
    }
    throw nowhere(at);
  }

  private static List<TreeEdit> insert(Entry.Keyed plan, TreeEdit.Insert insert) {
    PlanPath list = insert.at().above().in(plan);
    int index = insert.at().lastIndex();
    if (index < 0) {
      throw nowhere(insert.at());
    }
    Optional<Entry> before = list.entryIn(plan);
    if (before.isEmpty() || before.get().isBlank()) {
      return put(plan, list, Values.items(insert.value()));
    }
    if (before.get() instanceof Entry.Items items) {
      int last = Math.min(index, items.items().size());
      return List.of(new TreeEdit.Insert(list.item(last), insert.value()));
    }
    Entry only = before.get();
    Entry both =
        index == 0 ? Values.items(insert.value(), only) : Values.items(only, insert.value());
    return List.of(new TreeEdit.Put(list, both));
  }

  /** What makes one value another. */
  static List<TreeEdit> between(Entry before, Entry after, PlanPath at) {
    if (Values.areSame(before, after)) {
      return List.of();
    }
    if (before instanceof Entry.Keyed one && after instanceof Entry.Keyed other) {
      List<TreeEdit> keys = betweenKeys(one, other, at);
      boolean shared =
          one.members().stream().anyMatch(member -> other.member(member.key()).isPresent());
      return shared || at.equals(PlanPath.ROOT) ? keys : List.of(new TreeEdit.Put(at, after));
    }
    boolean lists = before instanceof Entry.Items && after instanceof Entry.Items;
    return lists
        ? betweenItems((Entry.Items) before, (Entry.Items) after, at)
        : List.of(new TreeEdit.Put(at, after));
  }

  private static List<TreeEdit> betweenKeys(Entry.Keyed before, Entry.Keyed after, PlanPath at) {
    List<TreeEdit> edits = new ArrayList<>();
    for (Entry.Member member : after.members()) {
      PlanPath key = at.key(member.key());
      edits.addAll(
          before
              .member(member.key())
              .map(old -> between(old.value(), member.value(), key))
              .orElse(List.of(new TreeEdit.Put(key, member.value()))));
    }
    for (Entry.Member member : before.members()) {
      if (after.member(member.key()).isEmpty()) {
        edits.add(new TreeEdit.Remove(at.key(member.key())));
      }
    }
    return edits;
  }

  private static List<TreeEdit> betweenItems(Entry.Items before, Entry.Items after, PlanPath at) {
    List<Entry> old = before.items();
    List<Entry> now = after.items();
    if (old.isEmpty() || now.isEmpty()) {
      return List.of(new TreeEdit.Put(at, after));
    }
    int start = alike(old, now);
    List<Entry> oldEnd = new ArrayList<>(old.subList(start, old.size()));
    List<Entry> nowEnd = new ArrayList<>(now.subList(start, now.size()));
    Collections.reverse(oldEnd);
    Collections.reverse(nowEnd);
    int end = alike(oldEnd, nowEnd);
    int oldTo = old.size() - end;
    int nowTo = now.size() - end;
    int both = Math.min(oldTo, nowTo);
    List<TreeEdit> edits = new ArrayList<>();
    for (int i = start; i < both; i++) {
      edits.addAll(between(old.get(i), now.get(i), at.item(i)));
    }
    for (int i = both; i < oldTo; i++) {
      edits.add(new TreeEdit.Remove(at.item(both)));
    }
    for (int i = both; i < nowTo; i++) {
      edits.add(new TreeEdit.Insert(at.item(i), now.get(i)));
    }
    return edits;
  }

  /** How many values two lists begin with alike. */
  private static int alike(List<Entry> one, List<Entry> other) {
    int alike = 0;
    while (alike < Math.min(one.size(), other.size())
        && Values.areSame(one.get(alike), other.get(alike))) {
      alike++;
    }
    return alike;
  }
}
