package org.barsheet.plan.edit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.source.YamlSource;

/** A plan's YAML and its smallest edits. */
final class YamlPlan {

  private final Path file;
  private final String text;
  private final YamlNode root;
  private final YamlWriter writer;

  private YamlPlan(Path file, String text) {
    this.file = file;
    this.text = text;
    this.root = new YamlTree(text).root();
    this.writer = new YamlWriter(text);
  }

  /**
   * What of the text changes with an edit.
   *
   * @param text a plan that was read without fault, with line feeds as line ends
   * @param edit one of the smallest
   * @throws InputException if the place can't be changed alone
   */
  static List<Splice> edited(Path file, String text, TreeEdit edit) {
    YamlPlan plan = new YamlPlan(file, text);
    if (edit instanceof TreeEdit.Put put
        && put.value() instanceof Entry.Text now
        && plan.scalar(edit.at()).isPresent()) {
      return YamlEdits.of(file, text, List.of(new Edit(edit.at(), now.text())));
    }
    List<Splice> splices = plan.splices(edit);
    plan.check(splices, edit);
    return splices;
  }

  private Optional<YamlNode> scalar(PlanPath at) {
    return node(at)
        .map(node -> node instanceof YamlNode.Alias alias ? alias.of() : node)
        .filter(YamlNode.Scalar.class::isInstance);
  }

  private Optional<YamlNode> node(PlanPath at) {
    List<YamlNode> way = root.along(at);
    return way.isEmpty() ? Optional.empty() : Optional.of(way.get(way.size() - 1));
  }

  private List<Splice> splices(TreeEdit edit) {
    YamlNode owner = edit.at().steps().isEmpty() ? root : node(edit.at().above()).orElseThrow();
    if (owner instanceof YamlNode.Items list) {
      return inList(list, edit);
    }
    if (owner instanceof YamlNode.Keyed table && !edit.at().lastKey().isEmpty()) {
      return inTable(table, edit);
    }
    throw repeated(owner);
  }

  private List<Splice> inTable(YamlNode.Keyed table, TreeEdit edit) {
    YamlKeys keys = new YamlKeys(text);
    String key = edit.at().lastKey();
    if (edit instanceof TreeEdit.Rename rename) {
      return List.of(keys.rename(table, key, rename.key()));
    }
    if (edit instanceof TreeEdit.Put put) {
      return node(edit.at()).isPresent()
          ? replace(table, key, put.value())
          : List.of(keys.put(table, key, put.value(), others(edit.at())));
    }
    return keys.without(table, key).map(List::of).orElseGet(() -> emptied(edit.at().above()));
  }

  private List<Splice> inList(YamlNode.Items list, TreeEdit edit) {
    YamlLists lists = new YamlLists(text);
    int index = edit.at().lastIndex();
    if (edit instanceof TreeEdit.Insert insert) {
      return List.of(lists.insert(list, index, insert.value()));
    }
    if (edit instanceof TreeEdit.Move move) {
      return lists.move(list, index, move.to());
    }
    if (edit instanceof TreeEdit.Put put) {
      YamlNode old = list.items().get(index);
      int column = new Lines(text).column(old.start());
      List<YamlNode> like = YamlLists.nearest(list.items(), index);
      String now =
          list.flow()
              ? writer.flow(put.value(), like, true)
              : writer.item(put.value(), like, column);
      return List.of(new Splice(old.start(), old.end(), now));
    }
    return list.items().size() == 1
        ? emptied(edit.at().above())
        : List.of(lists.without(list, index));
  }

  /** A list or table that holds nothing anymore, in brackets or braces. */
  private List<Splice> emptied(PlanPath at) {
    YamlNode old = node(at).orElseThrow();
    Entry empty = old instanceof YamlNode.Items ? Values.items() : Values.keyed();
    if (at.lastKey().isEmpty()) {
      return List.of(new Splice(old.start(), old.end(), writer.flow(empty, List.of(), false)));
    }
    YamlNode above = node(at.above()).orElseThrow();
    return replace((YamlNode.Keyed) above, at.lastKey(), empty);
  }

  /** Another value of a key, where what it becomes is written otherwise than what it was. */
  private List<Splice> replace(YamlNode.Keyed table, String key, Entry value) {
    YamlNode.Member member =
        table.members().stream().filter(one -> one.key().equals(key)).findFirst().orElseThrow();
    YamlNode old = member.value();
    Lines lines = new Lines(text);
    if (table.flow()) {
      return List.of(new Splice(old.start(), old.end(), writer.flow(value, List.of(old), true)));
    }
    int colon = text.indexOf(':', member.end()) + 1;
    String now = writer.value(value, List.of(), lines.column(member.start()));
    boolean below = lines.end(colon) < old.start();
    List<Splice> splices = new ArrayList<>();
    if (now.startsWith("\n")) {
      int end = lines.end(below ? colon : old.end());
      splices.add(below ? new Splice(end, old.end(), now) : new Splice(end, end, now));
      if (!below) {
        splices.add(new Splice(colon, old.end(), ""));
      }
    } else if (below) {
      splices.add(new Splice(colon, colon, now));
      splices.add(new Splice(lines.end(colon), old.end(), ""));
    } else {
      splices.add(new Splice(colon, old.end(), now));
    }
    return splices;
  }

  /** What a key is in the tables beside the one it is put into, the nearest first. */
  private List<YamlNode> others(PlanPath at) {
    if (at.steps().size() < 2) {
      return List.of();
    }
    PlanPath table = at.above();
    Optional<YamlNode> around = node(table.above());
    List<YamlNode> tables =
        around
            .map(
                node ->
                    node instanceof YamlNode.Items list
                        ? YamlLists.nearest(list.items(), table.lastIndex())
                        : node instanceof YamlNode.Keyed keyed
                            ? keyed.members().stream().map(YamlNode.Member::value).toList()
                            : List.<YamlNode>of())
            .orElse(List.of());
    return YamlWriter.valuesOf(tables, at.lastKey());
  }

  /** Makes sure that the changed text is read as asked, and that nothing else changed with it. */
  private void check(List<Splice> splices, TreeEdit edit) {
    Entry.Keyed before = new YamlSource(new PlanReading(file)).read(text);
    boolean same;
    try {
      PlanReading reading = new PlanReading(file);
      Entry after = new YamlSource(reading).read(Splice.apply(text, splices));
      reading.problems().throwIfAny();
      same = Values.areSame(ChangedTree.of(before, edit), after);
    } catch (InputException noPlan) {
      same = false;
    }
    if (!same) {
      throw repeatsAround(edit.at())
          .orElseGet(
              () ->
                  refuse(
                      splices.get(0).from(),
                      "this place can't be changed safely as it's written",
                      "write it as key: value on a line of its own"));
    }
  }

  private Optional<InputException> repeatsAround(PlanPath at) {
    List<YamlNode> way = node(at).isPresent() ? root.along(at) : root.along(at.above());
    return new YamlTree(text)
        .aliases().stream()
            .filter(alias -> way.stream().anyMatch(one -> isPartOf(one, alias.of())))
            .findFirst()
            .map(this::repeated);
  }

  private static boolean isPartOf(YamlNode one, YamlNode whole) {
    return one.start() >= whole.start() && one.end() <= whole.end();
  }

  private InputException repeated(YamlNode place) {
    return refuse(
        place.start(),
        "this value also counts where an alias (*) repeats it",
        "write it out there, then try again");
  }

  private InputException refuse(int start, String sentence, String remedy) {
    long line = text.substring(0, start).chars().filter(c -> c == '\n').count() + 1;
    return new InputException(Problem.at(file.toString(), "line " + line, sentence, remedy));
  }
}
