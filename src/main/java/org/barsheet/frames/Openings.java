package org.barsheet.frames;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.Photographs;
import org.barsheet.frames.SeenOpening.Insert;
import org.barsheet.frames.SeenOpening.Shown;
import org.barsheet.plan.Opening;
import org.barsheet.timing.Shot;

/** How every opening stands on every frame, and who is seen in it. */
final class Openings {

  private final FilmSheet sheet;
  private final Photographs photographs;
  private final List<OpeningShape> shapes;
  private final Map<String, Movement> movements = new HashMap<>();
  private final Map<Integer, List<Appearance>> appearances = new HashMap<>();

  Openings(FilmSheet sheet, Photographs photographs) {
    this.sheet = sheet;
    this.photographs = photographs;
    List<Opening> openings = sheet.plan().workshop().openings();
    this.shapes = openings.stream().map(one -> OpeningShape.of(sheet, one)).toList();
    sheet.movements().forEach(movement -> movements.put(movement.name(), movement));
    for (Appearance appearance : sheet.appearances()) {
      appearances.computeIfAbsent(appearance.shot(), shot -> new ArrayList<>()).add(appearance);
    }
  }

  List<OpeningShape> shapes() {
    return shapes;
  }

  /** Every opening on a frame of a shot, in the plan's order. */
  List<SeenOpening> at(ShotView view, long frame) {
    return shapes.stream().map(shape -> at(view, shape, frame)).toList();
  }

  private SeenOpening at(ShotView view, OpeningShape shape, long frame) {
    String name = shape.opening().name();
    Optional<PlannedReveal> reveal = inForce(view.shot(), name, frame);
    Optional<Exposure> exposure = reveal.map(moves -> exposureAt(moves, frame));
    double amount =
        exposure.isPresent()
            ? amount(reveal.orElseThrow(), exposure.get())
            : view.standing().getOrDefault(name, 0.0);
    return new SeenOpening(
        shape,
        amount,
        view.asDrawn().contains(name),
        exposure.map(shown -> shown(reveal.orElseThrow(), shown, frame)),
        amount > 0 ? inserts(view.shot(), name, frame) : List.of());
  }

  /** Of several reveals of one opening the one that has begun last; before any the first. */
  private Optional<PlannedReveal> inForce(Shot shot, String opening, long frame) {
    PlannedReveal first = null;
    PlannedReveal begun = null;
    for (PlannedReveal reveal : sheet.revealsOf(shot)) {
      if (reveal.opening().name().equals(opening)) {
        long begins = begins(reveal);
        first = first == null || begins < begins(first) ? reveal : first;
        boolean later = begun == null || begins >= begins(begun);
        begun = begins <= frame && later ? reveal : begun;
      }
    }
    return Optional.ofNullable(begun == null ? first : begun);
  }

  private static long begins(PlannedReveal reveal) {
    return reveal.exposures().get(0).frames().start();
  }

  /** The last exposure that begins at or before a frame; before any the first. */
  private static Exposure exposureAt(PlannedReveal reveal, long frame) {
    List<Exposure> exposures = reveal.exposures();
    int low = 0;
    int high = exposures.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (exposures.get(middle).frames().start() <= frame) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return exposures.get(low);
  }

  private double amount(PlannedReveal reveal, Exposure exposure) {
    Movement movement = Objects.requireNonNull(movements.get(reveal.movement()));
    int number = exposure.photograph().number();
    return movement.photographs().get(number).measures().amount();
  }

  private Shown shown(PlannedReveal reveal, Exposure exposure, long frame) {
    return new Shown(exposure.photograph().name(), reveal.layer(), photographs.crop(reveal, frame));
  }

  private List<Insert> inserts(Shot shot, String opening, long frame) {
    return appearances.getOrDefault(shot.index(), List.of()).stream()
        .filter(seen -> seen.opening().name().equals(opening) && seen.frames().contains(frame))
        .map(seen -> new Insert(seen.performer(), seen.clipFrameAt(sheet.timing().clock(), frame)))
        .toList();
  }

  /**
   * The amounts at which openings stand in a shot that they do not move in; closed ones are left
   * out.
   */
  Map<String, Double> standing(Shot shot) {
    Map<String, Double> standing = new LinkedHashMap<>();
    for (OpeningState state : sheet.statesOf(shot)) {
      boolean moves =
          sheet.revealsOf(shot).stream().anyMatch(r -> r.opening().name().equals(state.opening()));
      if (!moves && state.atFirstFrame() != 0) {
        standing.put(state.opening(), amount(state));
      }
    }
    return standing;
  }

  /** The amount of the photograph whose progress is nearest to the state's. */
  private double amount(OpeningState state) {
    double nearest = Double.POSITIVE_INFINITY;
    double amount = 0;
    for (Movement movement : sheet.movements()) {
      if (!movement.openings().contains(state.opening())) {
        continue;
      }
      for (Movement.MovedPhotograph photograph : movement.photographs()) {
        double away = Math.abs(photograph.progress() - state.atFirstFrame());
        if (away < nearest) {
          nearest = away;
          amount = photograph.measures().amount();
        }
      }
    }
    return amount;
  }
}
