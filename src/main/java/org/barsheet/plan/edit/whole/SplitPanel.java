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
 * A panel that becomes two. Reveals, performers and cue stay in the first; the second shows the
 * same action and drawing in the field the first ended with. A length asked for both is taken out.
 *
 * @param panel its name
 * @param second name of the one behind it
 * @param cue where the second goes
 */
public record SplitPanel(String panel, String second, String cue) implements PlanEdit {

  private static final PlanPath PANELS = PlanPath.ROOT.key("panels");

  @Override
  public List<TreeEdit> in(Entry.Keyed plan) {
    PlanPath at = PANELS.named("panel", panel).in(plan);
    Entry.Keyed whole = Panels.named(plan, panel);
    Optional<Entry> taken = PANELS.named("panel", second).in(plan).entryIn(plan);
    if (taken.isPresent()) {
      throw Refusal.at(taken.get(), "'" + second + "' is already there", "choose another name");
    }
    Entry.Keyed part = Values.keyed("panel", second);
    part = with(part, "action", whole);
    part = Values.with(part, "cue", Values.text(cue));
    Optional<Entry> field = Panels.value(whole, "field").map(SplitPanel::last);
    part = field.isPresent() ? Values.with(part, "field", field.get()) : part;
    part = with(part, "drawing", whole);
    List<TreeEdit> edits = new ArrayList<>();
    edits.add(new TreeEdit.Insert(PANELS.item(Panels.index(plan, panel) + 1), part));
    edits.add(new TreeEdit.Remove(at.key("length")));
    return edits;
  }

  private static Entry.Keyed with(Entry.Keyed part, String key, Entry.Keyed whole) {
    return Panels.value(whole, key).map(value -> Values.with(part, key, value)).orElse(part);
  }

  /** Where a field that moves ends. */
  private static Entry last(Entry field) {
    return field instanceof Entry.Keyed moving
        ? moving.member("to").map(Entry.Member::value).orElse(field)
        : field;
  }
}
