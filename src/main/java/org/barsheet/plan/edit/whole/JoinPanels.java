package org.barsheet.plan.edit.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.plan.edit.PlanEdit;
import org.barsheet.plan.edit.PlanPath;
import org.barsheet.plan.edit.TreeEdit;
import org.barsheet.plan.edit.Values;
import org.barsheet.plan.source.Entry;

/**
 * Two panels, one right behind the other, that become one. The first keeps its name, cue, cut,
 * field and drawing; the second's action, reveals and performers come behind its own. A reveal that
 * landed on the second's cue goes on landing there. Lengths that were asked are taken out.
 *
 * @param first name of the panel that stays
 */
public record JoinPanels(String first) implements PlanEdit {

  private static final PlanPath PANELS = PlanPath.ROOT.key("panels");

  @Override
  public List<TreeEdit> in(Entry.Keyed plan) {
    int index = Panels.index(plan, first);
    PlanPath at = PANELS.item(index).in(plan);
    PlanPath behind = PANELS.item(index + 1).in(plan);
    Entry.Keyed one = Panels.named(plan, first);
    if (behind.entryIn(plan).isEmpty()) {
      throw Refusal.at(one, "no panel comes after panel " + first, "join it with the one before");
    }
    Entry.Keyed other = (Entry.Keyed) behind.entryIn(plan).orElseThrow();
    List<TreeEdit> edits = new ArrayList<>();
    action(one, other).ifPresent(both -> edits.add(new TreeEdit.Put(at.key("action"), both)));
    add(edits, at.key("reveals"), Panels.items(one, "reveals"), reveals(other));
    add(edits, at.key("appears"), Panels.items(one, "appears"), newcomers(one, other));
    edits.add(new TreeEdit.Remove(at.key("length")));
    edits.add(new TreeEdit.Remove(behind));
    return edits;
  }

  private static Optional<String> action(Entry.Keyed one, Entry.Keyed other) {
    String before = Panels.text(one, "action");
    String more = Panels.text(other, "action");
    boolean same = more.isEmpty() || more.equals(before);
    return same ? Optional.empty() : Optional.of(before.isEmpty() ? more : before + "; " + more);
  }

  private static void add(
      List<TreeEdit> edits, PlanPath list, List<Entry> before, List<Entry> more) {
    int index = before.size();
    for (Entry item : more) {
      edits.add(new TreeEdit.Insert(list.item(index), item));
      index++;
    }
  }

  private static List<Entry> reveals(Entry.Keyed panel) {
    String cue = Panels.text(panel, "cue");
    List<Entry> reveals = new ArrayList<>();
    for (Entry reveal : Panels.items(panel, "reveals")) {
      String lands = Panels.text(reveal, "lands-on");
      if (lands.equals("notes")) {
        throw Refusal.at(
            reveal,
            Panels.text(reveal, "opening") + " lands on the notes of its panel's own cue",
            "change lands-on before you join the panels");
      }
      boolean onCue = (lands.isEmpty() || lands.equals("accent")) && !cue.isEmpty();
      reveals.add(onCue ? Values.with((Entry.Keyed) reveal, "lands-on", Values.text(cue)) : reveal);
    }
    return reveals;
  }

  private static List<Entry> newcomers(Entry.Keyed one, Entry.Keyed other) {
    List<String> there =
        Panels.items(one, "appears").stream().map(it -> Panels.text(it, "performer")).toList();
    return Panels.items(other, "appears").stream()
        .filter(it -> !there.contains(Panels.text(it, "performer")))
        .toList();
  }
}
