package org.barsheet.plan.edit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.source.YamlSource;

/** Changes texts of a YAML plan where they stand. */
final class YamlEdits {

  private final Path file;
  private final String text;
  private final YamlTree tree;
  private final YamlScalar writer;
  private final List<Splice> splices = new ArrayList<>();

  /** What is asked of each place of the file, by where it begins. */
  private final Map<Integer, List<Edit>> asked = new TreeMap<>();

  private final Map<Integer, YamlNode> places = new HashMap<>();

  private YamlEdits(Path file, String text) {
    this.file = file;
    this.text = text;
    this.tree = new YamlTree(text);
    this.writer = new YamlScalar(text);
  }

  /**
   * What to change.
   *
   * @param text a plan that was read without fault, with line feeds as line ends
   * @param edits all put a value, or all take one out
   * @throws InputException if a place cannot be changed alone
   */
  static List<Splice> of(Path file, String text, List<Edit> edits) {
    YamlEdits changes = new YamlEdits(file, text);
    edits.forEach(changes::ask);
    changes.checkShared();
    changes.change();
    changes.checkRead(edits);
    return changes.splices;
  }

  private void ask(Edit edit) {
    List<YamlNode> way = tree.root().along(edit.at());
    if (way.isEmpty() || edit.now().isEmpty()) {
      changeKeys(edit);
      return;
    }
    YamlNode place = way.get(way.size() - 1);
    places.put(place.start(), place);
    asked.computeIfAbsent(place.start(), start -> new ArrayList<>()).add(edit);
  }

  private void changeKeys(Edit edit) {
    List<YamlNode> way = tree.root().along(edit.at().above());
    YamlNode above = way.get(way.size() - 1);
    YamlNode.Keyed table =
        (YamlNode.Keyed) (above instanceof YamlNode.Alias alias ? alias.of() : above);
    YamlKeys keys = new YamlKeys(text);
    String key = edit.at().lastKey();
    splices.add(
        edit.now().isPresent()
            ? keys.put(table, key, edit.now().get())
            : keys.without(table, key)
                .orElseThrow(
                    () ->
                        refuse(
                            table.start(),
                            "'" + key + "' is the only key there",
                            "take out what it belongs to")));
  }

  /** Refuses a place inside a list or a table that is repeated, unless all of it changes alike. */
  private void checkShared() {
    Map<Integer, Integer> ways = new HashMap<>();
    countWays(tree.root(), ways);
    asked.forEach(
        (start, edits) -> {
          boolean alike = edits.stream().map(Edit::now).distinct().count() == 1;
          if (!alike || edits.size() != ways.getOrDefault(start, 1)) {
            throw refuse(
                start,
                "this value also counts where an alias (*) repeats it",
                "write it out there, then try again");
          }
        });
  }

  private static void countWays(YamlNode node, Map<Integer, Integer> ways) {
    if (node instanceof YamlNode.Items list) {
      list.items().forEach(item -> countWays(item, ways));
    } else if (node instanceof YamlNode.Keyed keyed) {
      keyed.members().forEach(member -> countWays(member.value(), ways));
    } else {
      ways.merge(node.start(), 1, Integer::sum);
      if (node instanceof YamlNode.Alias alias && !(alias.of() instanceof YamlNode.Scalar)) {
        countWays(alias.of(), ways);
      }
    }
  }

  private void change() {
    Map<Integer, YamlNode.Scalar> anchored = new LinkedHashMap<>();
    for (YamlNode place : places.values()) {
      if (place instanceof YamlNode.Alias alias) {
        YamlNode.Scalar of = (YamlNode.Scalar) alias.of();
        anchored.put(of.start(), of);
      } else {
        YamlNode.Scalar scalar = (YamlNode.Scalar) place;
        splices.addAll(writer.replace(scalar, now(scalar, scalar.text())));
        scalar.anchor().ifPresent(name -> anchored.put(scalar.start(), scalar));
      }
    }
    anchored.values().forEach(this::changeAliases);
  }

  private String now(YamlNode place, String before) {
    List<Edit> edits = asked.getOrDefault(place.start(), List.of());
    return edits.stream().findFirst().flatMap(Edit::now).orElse(before);
  }

  /** Aliases that are no longer what they repeat are written out; an anchor nobody needs goes. */
  private void changeAliases(YamlNode.Scalar anchored) {
    String repeated = now(anchored, anchored.text());
    boolean needed = false;
    for (YamlNode.Alias alias : tree.aliases()) {
      if (alias.of().start() == anchored.start()) {
        String own = now(alias, anchored.text());
        needed |= own.equals(repeated);
        if (!own.equals(repeated)) {
          splices.add(new Splice(alias.start(), alias.end(), YamlScalar.plain(own, alias.flow())));
        }
      }
    }
    if (!needed) {
      removeAnchor(anchored);
    }
  }

  private void removeAnchor(YamlNode.Scalar anchored) {
    String sign = "&" + anchored.anchor().orElseThrow();
    int from = text.indexOf(sign, anchored.start());
    int to = from + sign.length();
    while (to < anchored.value() && text.charAt(to) == ' ') {
      to++;
    }
    splices.add(new Splice(from, to, ""));
  }

  /** Makes sure that the changed text is read as asked, and that nothing else changed with it. */
  private void checkRead(List<Edit> edits) {
    Entry before = new YamlSource(new PlanReading(file)).read(text);
    boolean same;
    try {
      PlanReading reading = new PlanReading(file);
      Entry after = new YamlSource(reading).read(Splice.apply(text, splices));
      reading.problems().throwIfAny();
      same = EditedTree.isSo(before, edits, after);
    } catch (InputException noPlan) {
      same = false;
    }
    if (!same) {
      throw refuse(
          splices.get(0).from(),
          "this place can't be changed safely as it's written",
          "write it as key: value on a line of its own");
    }
  }

  private InputException refuse(int start, String sentence, String remedy) {
    long line = text.substring(0, start).chars().filter(c -> c == '\n').count() + 1;
    return new InputException(Problem.at(file.toString(), "line " + line, sentence, remedy));
  }
}
