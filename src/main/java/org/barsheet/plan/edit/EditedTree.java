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
    return isSame(new EditedTree(edits).edited(before, PlanPath.ROOT), after);
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

  /** Keys of a table may stand in any order. */
  private static boolean isSame(Entry one, Entry other) {
    if (one instanceof Entry.Text text) {
      return other instanceof Entry.Text read && read.text().equals(text.text());
    }
    if (one instanceof Entry.Items items && other instanceof Entry.Items others) {
      boolean same = items.items().size() == others.items().size();
      for (int i = 0; same && i < items.items().size(); i++) {
        same = isSame(items.items().get(i), others.items().get(i));
      }
      return same;
    }
    return one instanceof Entry.Keyed keyed
        && other instanceof Entry.Keyed others
        && keyed.members().size() == others.members().size()
        && keyed.members().stream()
            .allMatch(
                member ->
                    others
                        .member(member.key())
                        .map(found -> isSame(member.value(), found.value()))
                        .orElse(false));
  }
}
