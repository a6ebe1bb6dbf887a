package org.barsheet.plan.edit.whole;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.barsheet.plan.edit.PlanPath;
import org.barsheet.plan.source.Entry;

/** The panels of a plan that isn't understood yet. */
final class Panels {

  private Panels() {}

  /** All of them. */
  private static List<Entry> all(Entry.Keyed plan) {
    Entry panels =
        PlanPath.ROOT.key("panels").entryIn(plan).orElse(new Entry.Items(List.of(), plan.where()));
    return panels instanceof Entry.Items items ? items.items() : List.of(panels);
  }

  /**
   * The place of a panel among them, from 0.
   *
   * @throws org.barsheet.input.InputException if none is called so
   */
  static int index(Entry.Keyed plan, String name) {
    List<Entry> all = all(plan);
    return IntStream.range(0, all.size())
        .filter(i -> text(all.get(i), "panel").equals(name))
        .findFirst()
        .orElseThrow(
            () -> Refusal.at(plan, "no panel is called " + name, "check the panel's name"));
  }

  /** A panel by its name. */
  static Entry.Keyed named(Entry.Keyed plan, String name) {
    return (Entry.Keyed) all(plan).get(index(plan, name));
  }

  /** The text of a key; "" where it has none. */
  static String text(Entry table, String key) {
    return PlanPath.ROOT.key(key).textIn(table).map(text -> text.text().strip()).orElse("");
  }

  /** The value of a key, if it says anything. */
  static Optional<Entry> value(Entry.Keyed table, String key) {
    return table.member(key).map(Entry.Member::value).filter(value -> !value.isBlank());
  }

  /** The items of a list, however it is written. */
  static List<Entry> items(Entry.Keyed table, String key) {
    return value(table, key)
        .map(value -> value instanceof Entry.Items items ? items.items() : List.of(value))
        .orElse(List.of());
  }
}
