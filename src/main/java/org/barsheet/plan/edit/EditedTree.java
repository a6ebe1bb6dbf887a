package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.plan.source.Entry;

/** What a plan is to be read as once it has changed. */
final class EditedTree {

  private final Map<PlanPath, Edit> edits = new HashMap<>();

  private EditedTree(List<Edit> edits) {
    edits.forEach(edit -> this.edits.put(edit.at(), edit));
  }

  /** Whether a plan is another one with these edits and nothing else changed. */
  static boolean isSo(Entry before, List<Edit> edits, Entry after) {
    return Values.areSame(new EditedTree(edits).edited(before, PlanPath.ROOT), after);
  }

  private Entry edited(Entry entry, PlanPath at) {
    if (entry instanceof Entry.Text text) {
      return Optional.ofNullable(edits.get(at))
          .flatMap(Edit::now)
          .map(now -> (Entry) new Entry.Text(now, text.where()))
          .orElse(text);
    }
    if (entry instanceof Entry.Items list) {
      List<Entry> items = new ArrayList<>();
      list.items().forEach(item -> items.add(edited(item, at.item(items.size()))));
      return new Entry.Items(items, list.where());
    }
    return keyed((Entry.Keyed) entry, at);
  }

  private Entry keyed(Entry.Keyed table, PlanPath at) {
    List<Entry.Member> members = new ArrayList<>();
    for (Entry.Member member : table.members()) {
      PlanPath inside = at.key(member.key());
      Edit edit = edits.get(inside);
      if (edit == null || edit.now().isPresent()) {
        members.add(new Entry.Member(member.key(), member.where(), edited(member.value(), inside)));
      }
    }
    for (Edit edit : edits.values()) {
      boolean put = edit.now().isPresent() && edit.at().isKeyOf(at);
      if (put && table.member(edit.at().lastKey()).isEmpty()) {
        Entry value = new Entry.Text(edit.now().orElseThrow(), table.where());
        members.add(new Entry.Member(edit.at().lastKey(), table.where(), value));
      }
    }
    return new Entry.Keyed(members, table.where());
  }
}
