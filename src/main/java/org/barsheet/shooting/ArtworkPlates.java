package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.barsheet.artwork.ArtworkMeasures;
import org.barsheet.plan.Field;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Plan;
import org.barsheet.shooting.Setup.Standing;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/**
 * The photographs of the artwork at rest that a film needs. Panels share one where nothing that
 * both see stands differently.
 */
final class ArtworkPlates {

  /** A plate while its panels are gathered: what they see, and how far it stands open. */
  private static final class Draft {
    private final Map<String, Double> seen = new LinkedHashMap<>();
    private final List<String> panels = new ArrayList<>();
    private double narrowest = Double.POSITIVE_INFINITY;

    boolean serves(Map<String, Double> wanted) {
      return wanted.entrySet().stream()
          .allMatch(e -> seen.getOrDefault(e.getKey(), e.getValue()).equals(e.getValue()));
    }

    void add(Shot shot, Map<String, Double> wanted) {
      seen.putAll(wanted);
      panels.add(shot.panel().name());
      shot.panel().field().ifPresent(field -> narrowest = Math.min(narrowest, narrowest(field)));
    }

    private static double narrowest(Field field) {
      return Math.min(field.from().width(), field.to().width());
    }
  }

  private final Plan plan;
  private final ArtworkMeasures measures;
  private final MovementWorks works;
  private final List<Draft> drafts = new ArrayList<>();

  ArtworkPlates(TimingSheet timing, MovementWorks works) {
    this.plan = timing.plan();
    this.measures = ArtworkMeasures.of(plan);
    this.works = works;
  }

  /** One for each state of the artwork that some panel at rest shows, in story order. */
  List<ArtworkPlate> all() {
    for (Shot shot : works.atRest()) {
      Map<String, Double> wanted = new LinkedHashMap<>();
      works.standing(shot).forEach(one -> wanted.put(one.opening(), one.open()));
      draftFor(wanted).add(shot, wanted);
    }
    return drafts.stream().map(this::plate).toList();
  }

  private Draft draftFor(Map<String, Double> wanted) {
    for (Draft draft : drafts) {
      if (draft.serves(wanted)) {
        return draft;
      }
    }
    Draft fresh = new Draft();
    drafts.add(fresh);
    return fresh;
  }

  private ArtworkPlate plate(Draft draft) {
    List<Standing> standing = new ArrayList<>();
    for (Opening opening : plan.workshop().openings()) {
      Double open = draft.seen.get(opening.name());
      if (open != null) {
        standing.add(new Standing(opening.name(), open));
      }
    }
    boolean known = measures.headroom().isPresent() && Double.isFinite(draft.narrowest);
    return new ArtworkPlate(
        "artwork as in panel " + draft.panels.get(0),
        standing,
        draft.panels,
        known
            ? OptionalDouble.of(
                measures.wholeWide() / draft.narrowest / measures.headroom().getAsDouble())
            : OptionalDouble.empty());
  }
}
