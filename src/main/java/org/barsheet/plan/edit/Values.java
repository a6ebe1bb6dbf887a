package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.Entry;

/** Makes values that stand nowhere yet. */
public final class Values {

  private static final Where NOWHERE = new Where("", "");

  private Values() {}

  /** One text. */
  public static Entry.Text text(String text) {
    return new Entry.Text(text, NOWHERE);
  }

  /** Values one after another. */
  public static Entry.Items items(Entry... items) {
    return new Entry.Items(Arrays.asList(items), NOWHERE);
  }

  /** A table of one key. */
  public static Entry.Keyed keyed(String key, Entry value) {
    return new Entry.Keyed(List.of(new Entry.Member(key, NOWHERE, value)), NOWHERE);
  }

  /** A table of texts: key, text, key, text and so on. */
  public static Entry.Keyed keyed(String... keysAndTexts) {
    Entry.Keyed table = new Entry.Keyed(List.of(), NOWHERE);
    for (int i = 0; i < keysAndTexts.length; i += 2) {
      table = with(table, keysAndTexts[i], text(keysAndTexts[i + 1]));
    }
    return table;
  }

  /** A table with a key more, or another value of it. */
  public static Entry.Keyed with(Entry.Keyed table, String key, Entry value) {
    List<Entry.Member> members = new ArrayList<>();
    for (Entry.Member member : table.members()) {
      boolean changed = member.key().equals(key);
      members.add(changed ? new Entry.Member(key, member.where(), value) : member);
    }
    if (table.member(key).isEmpty()) {
      members.add(new Entry.Member(key, table.where(), value));
    }
    return new Entry.Keyed(members, table.where());
  }

  /** A table without a key. */
  public static Entry.Keyed without(Entry.Keyed table, String key) {
    return new Entry.Keyed(
        table.members().stream().filter(member -> !member.key().equals(key)).toList(),
        table.where());
  }

  /** A value on one line, as YAML writes it. */
  public static String words(Entry value) {
    return value instanceof Entry.Text text
        ? text.text()
        : new YamlWriter("").flow(value, List.of(), false);
  }

  /** Whether two values are read alike; keys of a table may stand in any order. */
  public static boolean areSame(Entry one, Entry other) {
    if (one instanceof Entry.Text text) {
      return other instanceof Entry.Text read && read.text().equals(text.text());
    }
    if (one instanceof Entry.Items items && other instanceof Entry.Items others) {
      boolean same = items.items().size() == others.items().size();
      for (int i = 0; same && i < items.items().size(); i++) {
        same = areSame(items.items().get(i), others.items().get(i));
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
                        .map(found -> areSame(member.value(), found.value()))
                        .orElse(false));
  }
}
