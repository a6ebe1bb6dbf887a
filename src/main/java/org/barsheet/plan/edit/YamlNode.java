package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A value of a YAML text with its place in the text, as characters. */
sealed interface YamlNode {

  /** Index of its first character: of its anchor or tag, if it has one. */
  int start();

  /**
   * One text.
   *
   * @param value index of its first character behind anchor and tag
   * @param end index after its last character
   * @param flow whether it stands within brackets or braces
   * @param anchor the name that aliases repeat it by
   * @param text as it is read
   */
  record Scalar(int start, int value, int end, boolean flow, Optional<String> anchor, String text)
      implements YamlNode {}

  /** A place that repeats another value by its name. */
  record Alias(int start, int end, boolean flow, YamlNode of) implements YamlNode {}

  /**
   * Values one after another.
   *
   * @param end index after its last character
   * @param flow whether it stands in brackets
   */
  record Items(int start, int end, boolean flow, List<YamlNode> items) implements YamlNode {}

  /**
   * Keys and values in turn.
   *
   * @param end index after its last character
   * @param flow whether it stands in braces
   */
  record Keyed(int start, int end, boolean flow, List<Member> members) implements YamlNode {}

  /**
   * A key and its value.
   *
   * @param start where the key begins
   * @param end where it ends
   */
  record Member(String key, int start, int end, YamlNode value) {}

  /**
   * Index after its last character; the blank lines after a text in lines of its own are not in.
   */
  int end();

  /**
   * The nodes a path leads through, the one it ends at last; empty where it leads nowhere. An alias
   * is followed by what it repeats.
   */
  default List<YamlNode> along(PlanPath path) {
    List<YamlNode> way = new ArrayList<>(List.of(this));
    for (PlanPath.Step step : path.steps()) {
      YamlNode from = way.get(way.size() - 1);
      if (from instanceof Alias alias) {
        from = alias.of();
        way.add(from);
      }
      Optional<YamlNode> next = from.down(step);
      if (next.isEmpty()) {
        return List.of();
      }
      way.add(next.get());
    }
    return way;
  }

  private Optional<YamlNode> down(PlanPath.Step step) {
    if (step instanceof PlanPath.Key key) {
      return this instanceof Keyed keyed
          ? keyed.members().stream()
              .filter(member -> member.key().equals(key.name()))
              .findFirst()
              .map(Member::value)
          : Optional.empty();
    }
    int index = step instanceof PlanPath.Item item ? item.index() : Integer.MAX_VALUE;
    return this instanceof Items list && index < list.items().size()
        ? Optional.of(list.items().get(index))
        : Optional.empty();
  }
}
