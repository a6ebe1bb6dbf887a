package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.barsheet.artwork.Rects;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Field;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Slides;
import org.barsheet.plan.Plan;
import org.barsheet.shooting.Setup.Standing;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** Gathers the movements of a film as work to do. */
final class MovementWorks {

  private final TimingSheet timing;
  private final Plan plan;
  private final Map<String, List<PlannedReveal>> revealsOf;
  private final Map<Integer, List<PlannedReveal>> revealsIn;
  private final Map<Integer, List<OpeningState>> statesIn;
  private final Map<String, Opening> openings = new HashMap<>();

  MovementWorks(TimingSheet timing, List<PlannedReveal> reveals, List<OpeningState> states) {
    this.timing = timing;
    this.plan = timing.plan();
    this.revealsOf = reveals.stream().collect(Collectors.groupingBy(PlannedReveal::movement));
    this.revealsIn = reveals.stream().collect(Collectors.groupingBy(PlannedReveal::shot));
    this.statesIn = states.stream().collect(Collectors.groupingBy(OpeningState::shot));
    plan.workshop().openings().forEach(opening -> openings.putIfAbsent(opening.name(), opening));
  }

  /** One for each movement, in the order given. */
  List<MovementWork> of(List<Movement> movements) {
    return movements.stream().map(this::work).toList();
  }

  /** Shots in which nothing of the artwork itself is moved, in story order. */
  List<Shot> atRest() {
    return timing.shots().stream()
        .filter(shot -> revealsIn(shot).stream().noneMatch(this::isArtwork))
        .toList();
  }

  private List<PlannedReveal> revealsIn(Shot shot) {
    return revealsIn.getOrDefault(shot.index(), List.of());
  }

  private boolean isArtwork(PlannedReveal reveal) {
    return plan.workshop().artwork().model(reveal.opening().model()).orElseThrow().enlarged() == 1;
  }

  private MovementWork work(Movement movement) {
    List<PlannedReveal> shown = revealsOf.getOrDefault(movement.name(), List.of());
    PlannedReveal first = shown.get(0);
    Artwork.Model model = plan.workshop().artwork().model(movement.model()).orElseThrow();
    Set<String> panels = new LinkedHashSet<>();
    List<Field> fields = new ArrayList<>();
    for (PlannedReveal reveal : shown) {
      panels.add(shot(reveal).panel().name());
      shot(reveal)
          .panel()
          .field()
          .ifPresent(field -> fields.add(about(first.opening(), reveal.opening(), field)));
    }
    return new MovementWork(
        movement,
        model,
        first.opening(),
        flap(first.opening(), model),
        first.shot(),
        List.copyOf(panels),
        fields,
        model.enlarged() == 1 ? standing(shot(first)) : List.of());
  }

  /** A field that lies about one opening as another field lies about another. */
  private static Field about(Opening opening, Opening other, Field field) {
    double right = opening.rect().left() - other.rect().left();
    double down = opening.rect().top() - other.rect().top();
    boolean same = right == 0 && down == 0;
    return same
        ? field
        : new Field(
            Rects.moved(field.from(), right, down),
            Rects.moved(field.to(), right, down),
            field.slow());
  }

  private Shot shot(PlannedReveal reveal) {
    return timing.shots().get(reveal.shot());
  }

  /**
   * What moves on a model. In the artwork itself it is the opening; on a larger model, which stands
   * for several openings, the first opening whose flap has the same size and crease: one flap
   * serves them all.
   */
  private String flap(Opening opening, Artwork.Model model) {
    if (model.enlarged() == 1) {
      return opening.name();
    }
    return plan.workshop().openings().stream()
        .filter(other -> isCutAlike(opening, other))
        .findFirst()
        .orElse(opening)
        .name();
  }

  private static boolean isCutAlike(Opening one, Opening other) {
    return one.model().equals(other.model())
        && one.rect().width() == other.rect().width()
        && one.rect().height() == other.rect().height()
        && side(one).equals(side(other));
  }

  /** Where a flap bends or a shutter slides to. */
  private static String side(Opening opening) {
    String kind = opening.motion().getClass().getSimpleName();
    if (opening.motion() instanceof Hinged hinged) {
      return kind + hinged.hinge();
    }
    return opening.motion() instanceof Slides slides ? kind + slides.toward() : kind;
  }

  /** Openings seen in a shot that do not move in it, and how far they stand open. */
  List<Standing> standing(Shot shot) {
    Optional<Field> field = shot.panel().field();
    List<Standing> standing = new ArrayList<>();
    for (OpeningState state : statesIn.getOrDefault(shot.index(), List.of())) {
      Opening opening = Objects.requireNonNull(openings.get(state.opening()));
      if (!moves(opening, shot) && isSeen(opening, field)) {
        standing.add(new Standing(opening.name(), state.atFirstFrame()));
      }
    }
    return standing;
  }

  private boolean moves(Opening opening, Shot shot) {
    return revealsIn(shot).stream()
        .anyMatch(reveal -> reveal.opening().name().equals(opening.name()));
  }

  private static boolean isSeen(Opening opening, Optional<Field> field) {
    return field.isEmpty()
        || Rects.meet(opening.rect(), field.get().from())
        || Rects.meet(opening.rect(), field.get().to());
  }
}
