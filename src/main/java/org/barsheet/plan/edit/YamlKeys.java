package org.barsheet.plan.edit;

import java.util.List;
import java.util.Optional;
import org.barsheet.plan.source.Entry;

/** Puts keys into tables of keys and takes them out. */
final class YamlKeys {

  private final String text;
  private final Lines lines;
  private final YamlWriter writer;

  /**
   * Changes a text.
   *
   * @param text the plan's text as it is read
   */
  YamlKeys(String text) {
    this.text = text;
    this.lines = new Lines(text);
    this.writer = new YamlWriter(text);
  }

  /** A key behind those that come before it. */
  Splice put(YamlNode.Keyed table, String key, String value) {
    return put(table, key, Values.text(value), List.of());
  }

  /**
   * A key behind those that come before it.
   *
   * @param like values of that key in other tables, the nearest first
   */
  Splice put(YamlNode.Keyed table, String key, Entry value, List<YamlNode> like) {
    if (table.flow()) {
      return putInBraces(table, key, value, like);
    }
    int behind = KeyOrder.before(table, key);
    int column = lines.column(table.members().get(0).start());
    String member = writer.member(key, value, like, column);
    int end = lines.end(table.members().get(behind).value().end());
    end = lines.behindComments(end, column);
    return new Splice(end, end, "\n" + " ".repeat(column) + member);
  }

  private Splice putInBraces(YamlNode.Keyed table, String key, Entry value, List<YamlNode> like) {
    String member = YamlScalar.plain(key, true) + ": " + writer.flow(value, like, true);
    if (table.members().isEmpty()) {
      int brace = text.indexOf('{', table.start()) + 1;
      return new Splice(brace, brace, member);
    }
    int end = table.members().get(KeyOrder.before(table, key)).value().end();
    return new Splice(end, end, ", " + member);
  }

  /** Another name for a key, quoted as the one before. */
  Splice rename(YamlNode.Keyed table, String key, String now) {
    YamlNode.Member member = member(table, key);
    char sign = text.charAt(member.start());
    String written =
        sign == '"' || sign == '\''
            ? YamlScalar.quoted(now, sign)
            : YamlScalar.plain(now, table.flow());
    return new Splice(member.start(), member.end(), written);
  }

  private static YamlNode.Member member(YamlNode.Keyed table, String key) {
    return table.members().stream().filter(one -> one.key().equals(key)).findFirst().orElseThrow();
  }

  /** Takes a key out with its value; nothing where the table would have none left. */
  Optional<Splice> without(YamlNode.Keyed table, String key) {
    List<YamlNode.Member> members = table.members();
    YamlNode.Member gone = member(table, key);
    int index = members.indexOf(gone);
    boolean only = members.size() == 1;
    if (only && !table.flow()) {
      return Optional.empty();
    }
    if (!table.flow() && lines.isFirst(gone.start())) {
      int end = lines.end(gone.value().end());
      return Optional.of(lines.without(lines.start(gone.start()), end));
    }
    boolean last = index + 1 == members.size();
    int from = last && !only ? members.get(index - 1).value().end() : gone.start();
    int to = last ? gone.value().end() : members.get(index + 1).start();
    return Optional.of(new Splice(from, to, ""));
  }
}
