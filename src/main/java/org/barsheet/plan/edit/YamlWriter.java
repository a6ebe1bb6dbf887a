package org.barsheet.plan.edit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.plan.source.Entry;

/**
 * Writes values as their neighbors are written: in braces or in lines of their own, with their
 * indents and quotes.
 */
final class YamlWriter {

  private static final int STEP = 2;

  private final String text;
  private final Lines lines;

  YamlWriter(String text) {
    this.text = text;
    this.lines = new Lines(text);
  }

  /**
   * A key and its value.
   *
   * @param like values of that key elsewhere, the nearest first
   * @param column of the key
   */
  String member(String key, Entry value, List<YamlNode> like, int column) {
    return YamlScalar.plain(key, false) + ":" + value(value, like, column);
  }

  /** What stands behind a key's colon: a space and a value, or lines below. */
  String value(Entry value, List<YamlNode> like, int column) {
    if (!hasLines(value, like)) {
      return " " + flow(value, like, false);
    }
    if (value instanceof Entry.Items items) {
      int dash = column + dashOffset(like);
      return items.items().stream()
          .map(item -> "\n" + " ".repeat(dash) + "- " + item(item, itemsOf(like), dash + STEP))
          .collect(Collectors.joining());
    }
    int inner = column + keyOffset(like);
    return "\n" + " ".repeat(inner) + members((Entry.Keyed) value, like, inner);
  }

  /**
   * An item, as it stands behind its dash.
   *
   * @param like items beside it, the nearest first
   * @param column where it begins
   */
  String item(Entry item, List<YamlNode> like, int column) {
    boolean inLines =
        item instanceof Entry.Keyed keyed
            && !keyed.members().isEmpty()
            && like.stream().limit(1).anyMatch(one -> one instanceof YamlNode.Keyed && !flow(one));
    return inLines ? members((Entry.Keyed) item, like, column) : flow(item, like, false);
  }

  private String members(Entry.Keyed table, List<YamlNode> like, int column) {
    return table.members().stream()
        .map(one -> member(one.key(), one.value(), valuesOf(like, one.key()), column))
        .collect(Collectors.joining("\n" + " ".repeat(column)));
  }

  /** A value on one line. */
  String flow(Entry value, List<YamlNode> like, boolean inFlow) {
    if (value instanceof Entry.Text text) {
      return scalar(text.text(), like, inFlow);
    }
    String space = padding(like);
    if (value instanceof Entry.Items items) {
      return items.items().stream()
          .map(item -> flow(item, itemsOf(like), true))
          .collect(Collectors.joining(", ", "[" + space, space + "]"));
    }
    return ((Entry.Keyed) value)
        .members().stream()
            .map(member -> flowMember(member, like))
            .collect(Collectors.joining(", ", "{" + space, space + "}"));
  }

  private String flowMember(Entry.Member member, List<YamlNode> like) {
    String key = YamlScalar.plain(member.key(), true);
    return key + ": " + flow(member.value(), valuesOf(like, member.key()), true);
  }

  /** A text, quoted as those of its kind are where all of them are. */
  String scalar(String value, List<YamlNode> like, boolean inFlow) {
    List<Character> signs = like.stream().map(this::quote).distinct().toList();
    char sign = signs.size() == 1 && like.size() > 1 ? signs.get(0) : ' ';
    return sign == ' ' ? YamlScalar.plain(value, inFlow) : YamlScalar.quoted(value, sign);
  }

  private char quote(YamlNode node) {
    boolean quoted =
        node instanceof YamlNode.Scalar scalar
            && scalar.value() < scalar.end()
            && "'\"".indexOf(text.charAt(scalar.value())) >= 0;
    return quoted ? text.charAt(((YamlNode.Scalar) node).value()) : ' ';
  }

  private static boolean flow(YamlNode node) {
    return (node instanceof YamlNode.Items items && items.flow())
        || (node instanceof YamlNode.Keyed keyed && keyed.flow());
  }

  /** Whether a value takes lines of its own: as values like it do, else where it holds tables. */
  private static boolean hasLines(Entry value, List<YamlNode> like) {
    List<Entry> inside =
        value instanceof Entry.Items items
            ? items.items()
            : value instanceof Entry.Keyed keyed
                ? keyed.members().stream().map(Entry.Member::value).toList()
                : List.of();
    Optional<YamlNode> model = model(value, like);
    return !inside.isEmpty()
        && model
            .map(node -> !flow(node))
            .orElse(inside.stream().anyMatch(one -> !(one instanceof Entry.Text)));
  }

  /** The nearest list for a list; for a table, the nearest one with a key of it. */
  private static Optional<YamlNode> model(Entry value, List<YamlNode> like) {
    return like.stream()
        .filter(
            node ->
                value instanceof Entry.Keyed table
                    ? node instanceof YamlNode.Keyed keyed && sharesKey(table, keyed)
                    : node instanceof YamlNode.Items)
        .findFirst();
  }

  private static boolean sharesKey(Entry.Keyed table, YamlNode.Keyed other) {
    return other.members().stream().anyMatch(member -> table.member(member.key()).isPresent());
  }

  private String padding(List<YamlNode> like) {
    boolean spaced =
        like.stream()
            .filter(YamlWriter::flow)
            .findFirst()
            .filter(
                node -> node.start() + 1 < text.length() && text.charAt(node.start() + 1) == ' ')
            .isPresent();
    return spaced ? " " : "";
  }

  private static List<YamlNode> itemsOf(List<YamlNode> lists) {
    return lists.stream()
        .filter(YamlNode.Items.class::isInstance)
        .flatMap(list -> ((YamlNode.Items) list).items().stream())
        .toList();
  }

  /** Values of a key in tables. */
  static List<YamlNode> valuesOf(List<YamlNode> tables, String key) {
    return tables.stream()
        .filter(YamlNode.Keyed.class::isInstance)
        .flatMap(table -> ((YamlNode.Keyed) table).members().stream())
        .filter(member -> member.key().equals(key))
        .map(YamlNode.Member::value)
        .toList();
  }

  /** How far dashes stand behind the key above them. */
  private int dashOffset(List<YamlNode> like) {
    return like.stream()
        .filter(node -> node instanceof YamlNode.Items && !flow(node))
        .findFirst()
        .map(list -> lines.column(list.start()) - keyAbove(list.start()))
        .filter(offset -> offset >= 0)
        .orElse(STEP);
  }

  private int keyOffset(List<YamlNode> like) {
    return like.stream()
        .filter(node -> node instanceof YamlNode.Keyed && !flow(node))
        .findFirst()
        .map(table -> lines.column(table.start()) - keyAbove(table.start()))
        .filter(offset -> offset > 0)
        .orElse(STEP);
  }

  /** Column of the key on the line above, behind dashes. */
  private int keyAbove(int index) {
    int line = lines.start(index);
    do {
      line = line == 0 ? 0 : lines.start(line - 1);
    } while (line > 0 && (lines.commentColumn(line) >= 0 || isBlank(line)));
    int at = line;
    while (at < text.length() && " -".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    return at - line;
  }

  private boolean isBlank(int lineStart) {
    return text.substring(lineStart, lines.end(lineStart)).isBlank();
  }
}
