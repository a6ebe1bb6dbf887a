package org.barsheet.plan.edit.whole;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.edit.PlanPath;
import org.barsheet.plan.source.Entry;

/**
 * A text of the plan that names something of it.
 *
 * @param at where it stands
 * @param of what it names; a place names motifs and panels
 * @param place whether it is a place
 */
record NamingText(PlanPath at, String text, NewName.Of of, boolean place) {

  /** All of them, panel by panel. */
  static List<NamingText> all(Entry.Keyed plan) {
    List<NamingText> all = new ArrayList<>();
    PlanPath openings = PlanPath.ROOT.key("openings");
    if (openings.entryIn(plan).orElse(plan) instanceof Entry.Keyed table) {
      for (Entry.Member opening : table.members()) {
        add(all, plan, openings.key(opening.key()).key("model"), NewName.Of.MODEL, false);
      }
    }
    PlanPath panels = PlanPath.ROOT.key("panels");
    for (int p = 0; p < size(plan, panels); p++) {
      addPanel(all, plan, panels.item(p));
    }
    return all;
  }

  private static void addPanel(List<NamingText> all, Entry.Keyed plan, PlanPath panel) {
    add(all, plan, panel.key("panel"), NewName.Of.PANEL, false);
    add(all, plan, panel.key("cue"), NewName.Of.MOTIF, true);
    add(all, plan, panel.key("cut"), NewName.Of.MOTIF, true);
    for (int r = 0; r < size(plan, panel.key("reveals")); r++) {
      PlanPath reveal = panel.key("reveals").item(r);
      add(all, plan, reveal.key("opening"), NewName.Of.OPENING, false);
      add(all, plan, reveal.key("lands-on"), NewName.Of.MOTIF, true);
    }
    for (int a = 0; a < size(plan, panel.key("appears")); a++) {
      PlanPath seen = panel.key("appears").item(a);
      add(all, plan, seen.key("performer"), NewName.Of.PERFORMER, false);
      add(all, plan, seen.key("opening"), NewName.Of.OPENING, false);
    }
  }

  private static void add(
      List<NamingText> all, Entry.Keyed plan, PlanPath at, NewName.Of of, boolean place) {
    at.in(plan).textIn(plan).ifPresent(text -> all.add(new NamingText(at, text.text(), of, place)));
  }

  /** Items of a list; 1 where its only item stands without a dash. */
  private static int size(Entry.Keyed plan, PlanPath list) {
    Entry entry = list.in(plan).entryIn(plan).orElse(new Entry.Items(List.of(), plan.where()));
    return entry instanceof Entry.Items items ? items.items().size() : 1;
  }
}
