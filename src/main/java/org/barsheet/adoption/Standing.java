package org.barsheet.adoption;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Measures;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.edit.PlanPath;
import org.barsheet.pulse.TempoRequest;

/**
 * Something of the plan that stands on the music.
 *
 * @param at its place's text in the plan
 * @param of what it is: {@code panel 6 cue}, {@code panel 6 lamp-1}, {@code pin 61.04 s}
 * @param place where it stands
 * @param number whether the plan gives only the number of the bar
 */
record Standing(PlanPath at, String of, Place place, boolean number) {

  private Standing(PlanPath at, String of, Place place) {
    this(at, of, place, false);
  }

  /** How the plan writes a place of its kind. */
  String words(Place where) {
    return number && where instanceof Place.AtBar bar ? "" + bar.bar() : where.toString();
  }

  /** What a pin is called. */
  static String pin(Seconds at) {
    return "pin " + Measures.plain(at.toDecimal(3).doubleValue()) + " s";
  }

  /** Every place that can be carried before the returns of the new version are known. */
  static List<Standing> all(Plan plan) {
    List<Standing> all = new ArrayList<>(pins(plan));
    for (MotifRequest motif : plan.motifs()) {
      for (int i = 0; i < motif.shapes().size(); i++) {
        if (motif.shapes().get(i) instanceof MotifRequest.HeardAt at) {
          all.add(heard(motif.name(), i, at.place()));
        }
      }
    }
    all.addAll(panels(plan));
    return all;
  }

  /** A shape of a motif that is heard somewhere: the first, or one of its further ones. */
  static Standing heard(String motif, int index, Place place) {
    return new Standing(shape(motif, index).key("place"), "motif " + motif + " heard-at", place);
  }

  static PlanPath shape(String motif, int index) {
    PlanPath of = PlanPath.ROOT.key("motifs").key(motif);
    return index == 0 ? of.key("heard-at") : of.key("also").item(index - 1);
  }

  /** Every pinned bar, in the plan's order. */
  static List<Standing> pins(Plan plan) {
    List<Standing> standings = new ArrayList<>();
    for (TempoRequest.Pin pin : plan.music().tempo().pins()) {
      PlanPath at = PlanPath.ROOT.key("music").key("pins").item(standings.size()).key("bar");
      Place bar = new Place.AtBar(pin.bar(), OptionalInt.empty(), BigFraction.ONE);
      standings.add(new Standing(at, pin(pin.at()), bar, true));
    }
    return standings;
  }

  /** Every cue, cut and landing that the plan puts on a place, panel by panel. */
  static List<Standing> panels(Plan plan) {
    List<Standing> standings = new ArrayList<>();
    for (int p = 0; p < plan.panels().size(); p++) {
      addPanel(plan.panels().get(p), PlanPath.ROOT.key("panels").item(p), standings);
    }
    return standings;
  }

  private static void addPanel(Panel panel, PlanPath at, List<Standing> standings) {
    String of = "panel " + panel.name() + " ";
    if (!(panel.cue() instanceof Place.Anywhere)) {
      standings.add(new Standing(at.key("cue"), of + "cue", panel.cue()));
    }
    if (panel.cut() instanceof Panel.AtPlace cut) {
      standings.add(new Standing(at.key("cut"), of + "cut", cut.place()));
    }
    for (int r = 0; r < panel.reveals().size(); r++) {
      Reveal reveal = panel.reveals().get(r);
      if (reveal.landsOn() instanceof Reveal.OnPlace on) {
        PlanPath lands = at.key("reveals").item(r).key("lands-on");
        standings.add(new Standing(lands, of + reveal.opening(), on.place()));
      }
    }
  }
}
