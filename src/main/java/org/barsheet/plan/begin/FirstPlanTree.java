package org.barsheet.plan.begin;

import org.barsheet.plan.Where;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.EntryBuilder;

/** A first plan as entries. */
final class FirstPlanTree {

  private static final Where NOWHERE = new Where("", "");

  private FirstPlanTree() {}

  static Entry.Keyed of(FirstPlan plan) {
    EntryBuilder tree = new EntryBuilder(NOWHERE);
    put(tree, "title", plan.title());
    put(tree, "score", plan.score());
    plan.film().forEach((key, value) -> put(tree.at("film", NOWHERE), key, value));
    for (FirstPlan.FirstMotif motif : plan.motifs()) {
      EntryBuilder one = tree.at("motifs", NOWHERE).at(motif.name(), NOWHERE);
      put(one, "notes", motif.notes());
      if (motif.notes().isEmpty()) {
        EntryBuilder heard = one.at("heard-at", NOWHERE);
        put(heard, "place", motif.place());
        put(heard, "length", motif.length());
        put(heard, "part", motif.part());
      }
    }
    for (FirstPlan.FirstPanel panel : plan.panels()) {
      EntryBuilder one = tree.append("panels", NOWHERE);
      put(one, "panel", panel.name());
      put(one, "action", panel.action());
      put(one, "cue", panel.cue());
      put(one, "length", panel.length());
    }
    return tree.build();
  }

  private static void put(EntryBuilder at, String key, String text) {
    if (!text.isEmpty()) {
      at.put(key, NOWHERE, new Entry.Text(text, NOWHERE));
    }
  }
}
