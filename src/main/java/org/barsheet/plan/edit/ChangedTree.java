package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.source.Entry;

/** What a plan says once it has changed. */
public final class ChangedTree {

  private ChangedTree() {}

  /**
   * The plan after an edit.
   *
   * @param edit one of the smallest
   */
  public static Entry.Keyed of(Entry.Keyed plan, TreeEdit edit) {
    PlanPath owner = edit.at().steps().isEmpty() ? PlanPath.ROOT : edit.at().above();
    return (Entry.Keyed) down(plan, owner.steps(), edit);
  }

  private static Entry down(Entry from, List<PlanPath.Step> way, TreeEdit edit) {
    if (way.isEmpty()) {
      return from instanceof Entry.Items list
          ? inList(list, edit)
          : inTable((Entry.Keyed) from, edit);
    }
    List<PlanPath.Step> rest = way.subList(1, way.size());
    if (way.get(0) instanceof PlanPath.Key key) {
      Entry.Keyed table = (Entry.Keyed) from;
      Entry value = table.member(key.name()).orElseThrow().value();
      return Values.with(table, key.name(), down(value, rest, edit));
    }
    int index = ((PlanPath.Item) way.get(0)).index();
    Entry.Items list = (Entry.Items) from;
    List<Entry> items = new ArrayList<>(list.items());
    items.set(index, down(items.get(index), rest, edit));
    return new Entry.Items(items, list.where());
  }

  private static Entry inList(Entry.Items list, TreeEdit edit) {
    List<Entry> items = new ArrayList<>(list.items());
    int index = edit.at().lastIndex();
    if (edit instanceof TreeEdit.Put put) {
      items.set(index, put.value());
    } else if (edit instanceof TreeEdit.Insert insert) {
      items.add(index, insert.value());
    } else {
      Entry item = items.remove(index);
      if (edit instanceof TreeEdit.Move move) {
        items.add(move.to(), item);
      }
    }
    return new Entry.Items(items, list.where());
  }

  private static Entry inTable(Entry.Keyed table, TreeEdit edit) {
    String key = edit.at().lastKey();
    if (edit instanceof TreeEdit.Put put) {
      return Values.with(table, key, put.value());
    }
    if (edit instanceof TreeEdit.Rename rename) {
      return renamed(table, key, rename.key());
    }
    return Values.without(table, key);
  }

  private static Entry renamed(Entry.Keyed table, String before, String now) {
    List<Entry.Member> members = new ArrayList<>();
    for (Entry.Member member : table.members()) {
      String key = member.key().equals(before) ? now : member.key();
      members.add(new Entry.Member(key, member.where(), member.value()));
    }
    return new Entry.Keyed(members, table.where());
  }
}
