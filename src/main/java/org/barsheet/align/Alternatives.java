package org.barsheet.align;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.Costs;

/** The second-best place of each panel, and what it would cost. */
final class Alternatives {

  /** A place that makes the whole film dearer by more, in millionths, is no alternative. */
  static final long DEAREST = 3 * Costs.ONE;

  private final AlignerInput input;
  private final List<Stage> stages;
  private final AlignerTable table;
  private final int[] best;

  Alternatives(AlignerInput input, List<Stage> stages, AlignerTable table, int[] best) {
    this.input = input;
    this.stages = stages;
    this.table = table;
    this.best = best;
  }

  /** The alternative of each panel, where it has another place at all. */
  List<Optional<Alternative>> all() {
    List<Optional<Alternative>> alternatives = new ArrayList<>();
    for (int p = 0; p < stages.size(); p++) {
      int panel = p;
      alternatives.add(secondBest(p).map(i -> alternative(panel, i)));
    }
    return List.copyOf(alternatives);
  }

  /** The place, on another cue than the best layout's, that costs least in all. */
  private Optional<Integer> secondBest(int p) {
    Stage stage = stages.get(p);
    Candidate chosen = stage.candidate(best[p]);
    Row places = table.near(p);
    int found = -1;
    for (int i = places.from(); i < places.to(); i++) {
      long cost = table.bestThrough(p, i);
      boolean cheaper = found < 0 || cost < table.bestThrough(p, found);
      if (cost < Costs.IMPOSSIBLE && cheaper && isOther(stage.candidate(i), chosen)) {
        found = i;
      }
    }
    boolean near = found >= 0 && table.bestThrough(p, found) - table.best() <= DEAREST;
    return near ? Optional.of(found) : Optional.empty();
  }

  /** Whether a place is on another cue. */
  static boolean isOther(Candidate one, Candidate chosen) {
    return one.cue().frame() != chosen.cue().frame() || !one.cue().id().equals(chosen.cue().id());
  }

  private Alternative alternative(int p, int i) {
    double margin = (double) (table.bestThrough(p, i) - table.best()) / Costs.ONE;
    String place = Reasons.placeName(stages.get(p).candidate(i), input);
    if (margin < Alternative.FREE_CHOICE) {
      return new Alternative(place + " is as good", margin);
    }
    Optional<String> why =
        CostItem.mainReason(stages, best, table.layoutThrough(p, i, best), input.filmFrames());
    String cost = String.format(Locale.ROOT, "%.1f", Math.max(margin, 0.1));
    String sentence = place + " would cost " + cost + " more" + why.map(w -> ": " + w).orElse("");
    return new Alternative(sentence, margin);
  }
}
