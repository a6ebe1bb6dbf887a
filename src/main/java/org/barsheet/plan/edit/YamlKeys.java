package org.barsheet.plan.edit;

import java.util.List;
import java.util.Optional;

/** Puts keys into tables of keys and takes them out. */
final class YamlKeys {

  private final String text;

  /**
   * Changes a text.
   *
   * @param text the plan's text as it is read
   */
  YamlKeys(String text) {
    this.text = text;
  }

  /** A key behind those that are there. */
  Splice put(YamlNode.Keyed table, String key, String value) {
    String member =
        YamlScalar.plain(key, table.flow()) + ": " + YamlScalar.plain(value, table.flow());
    if (table.members().isEmpty()) {
      int brace = text.indexOf('{', table.start()) + 1;
      return new Splice(brace, brace, member);
    }
    int end = table.members().get(table.members().size() - 1).value().end();
    if (table.flow()) {
      return new Splice(end, end, ", " + member);
    }
    int first = table.members().get(0).start();
    String indent = " ".repeat(first - lineStart(first));
    int lineEnd = lineEnd(end);
    return new Splice(lineEnd, lineEnd, "\n" + indent + member);
  }

  /** Takes a key out with its value; nothing where the table would have none left. */
  Optional<Splice> without(YamlNode.Keyed table, String key) {
    List<YamlNode.Member> members = table.members();
    int index = 0;
    while (!members.get(index).key().equals(key)) {
      index++;
    }
    YamlNode.Member gone = members.get(index);
    boolean only = members.size() == 1;
    boolean ownLine = text.substring(lineStart(gone.start()), gone.start()).isBlank();
    if (only && !table.flow()) {
      return Optional.empty();
    }
    if (!table.flow() && ownLine) {
      return Optional.of(lines(lineStart(gone.start()), lineEnd(gone.value().end())));
    }
    boolean last = index + 1 == members.size();
    int from = last && !only ? members.get(index - 1).value().end() : gone.start();
    int to = last ? gone.value().end() : members.get(index + 1).start();
    return Optional.of(new Splice(from, to, ""));
  }

  /** Whole lines that go, with the end of the line before where they are the last. */
  private Splice lines(int from, int end) {
    return end < text.length()
        ? new Splice(from, end + 1, "")
        : new Splice(Math.max(0, from - 1), end, "");
  }

  private int lineStart(int index) {
    return text.lastIndexOf('\n', index - 1) + 1;
  }

  private int lineEnd(int index) {
    int end = text.indexOf('\n', index);
    return end < 0 ? text.length() : end;
  }
}
