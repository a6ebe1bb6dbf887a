package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.barsheet.plan.source.Entry;

/** Puts items into lists, takes them out and moves them. */
final class YamlLists {

  private final String text;
  private final Lines lines;
  private final YamlWriter writer;

  YamlLists(String text) {
    this.text = text;
    this.lines = new Lines(text);
    this.writer = new YamlWriter(text);
  }

  /** An item that comes to stand at an index, laid out as the one before it is. */
  Splice insert(YamlNode.Items list, int index, Entry value) {
    List<YamlNode> like = nearest(list.items(), Math.max(0, index - 1));
    if (list.flow()) {
      return insertInBrackets(list, index, writer.flow(value, like, true));
    }
    int dash = dash(like.get(0));
    int column = lines.column(like.get(0).start());
    boolean below = lines.start(dash) != lines.start(like.get(0).start());
    int inner = below ? lines.column(dash) + 2 : column;
    String gap = " ".repeat(inner - lines.column(dash) - 1);
    String line = " ".repeat(lines.column(dash)) + "-" + gap + writer.item(value, like, inner);
    if (index == 0) {
      int start = lines.start(dash);
      return new Splice(start, start, line + "\n");
    }
    int end = tail(like.get(0));
    return new Splice(end, end, "\n" + line);
  }

  private Splice insertInBrackets(YamlNode.Items list, int index, String item) {
    if (list.items().isEmpty()) {
      int bracket = text.indexOf('[', list.start()) + 1;
      return new Splice(bracket, bracket, item);
    }
    if (index == 0) {
      int start = list.items().get(0).start();
      return new Splice(start, start, item + ", ");
    }
    int end = list.items().get(index - 1).end();
    return new Splice(end, end, ", " + item);
  }

  /** The values of a list, those nearest to one of them first. */
  static List<YamlNode> nearest(List<YamlNode> items, int index) {
    return IntStream.range(0, items.size())
        .boxed()
        .sorted((one, other) -> Math.abs(one - index) - Math.abs(other - index))
        .map(items::get)
        .toList();
  }

  /** Takes an item out that isn't the only one; the comments above it stay. */
  Splice without(YamlNode.Items list, int index) {
    List<YamlNode> items = list.items();
    if (!list.flow()) {
      int dash = dash(items.get(index));
      return lines.without(lines.start(dash), tail(items.get(index)));
    }
    boolean last = index + 1 == items.size();
    int from = last ? items.get(index - 1).end() : items.get(index).start();
    int to = last ? items.get(index).end() : items.get(index + 1).start();
    return new Splice(from, to, "");
  }

  /** Moves an item; in lines of their own, the comments right above an item go with it. */
  List<Splice> move(YamlNode.Items list, int from, int to) {
    List<Integer> order = new ArrayList<>(IntStream.range(0, list.items().size()).boxed().toList());
    order.add(to, order.remove(from));
    List<Splice> splices = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      if (order.get(i) != i) {
        Splice here = whole(list, i);
        Splice there = whole(list, order.get(i));
        String moved = text.substring(there.from(), there.to());
        splices.add(new Splice(here.from(), here.to(), moved));
      }
    }
    return splices;
  }

  /** The stretch of an item, without the end of its last line. */
  private Splice whole(YamlNode.Items list, int index) {
    YamlNode item = list.items().get(index);
    if (list.flow()) {
      return new Splice(item.start(), item.end(), "");
    }
    int dash = dash(item);
    int start = lines.start(dash);
    while (index > 0 && lines.commentColumn(lines.start(start - 1)) == lines.column(dash)) {
      start = lines.start(start - 1);
    }
    return new Splice(start, tail(item), "");
  }

  /** The end of an item's last line, or of the comments that belong to it. */
  private int tail(YamlNode item) {
    return lines.behindComments(lines.end(item.end()), lines.column(dash(item)));
  }

  /** The dash before an item, on its line or, with a comment, further above. */
  private int dash(YamlNode item) {
    int at = item.start();
    String before = text.substring(lines.start(at), at).stripTrailing();
    while (!before.endsWith("-") && lines.start(at) > 0) {
      at = lines.start(at) - 1;
      before = text.substring(lines.start(at), at).replaceAll("(?<=^|\\s)#.*", "").stripTrailing();
    }
    return lines.start(at) + before.length() - 1;
  }
}
