package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening.Brightens;
import org.barsheet.plan.Plan;
import org.barsheet.shooting.Setup.Plate;

/** Plans what is photographed when: what belongs together, in which order, with which plates. */
final class ShootingPlanner {

  private final Plan plan;
  private final CameraViews views;
  private final Map<Artwork.Model, List<MovementWork>> works = new LinkedHashMap<>();
  private final List<Setup> setups = new ArrayList<>();
  private final WorkClock clock;
  private boolean fewest = true;

  private ShootingPlanner(Plan plan, List<MovementWork> all) {
    this.plan = plan;
    this.views = new CameraViews(plan);
    this.clock = new WorkClock(plan.workshop().shoot());
    for (MovementWork work : all) {
      works.computeIfAbsent(work.model(), model -> new ArrayList<>()).add(work);
    }
  }

  /** Plans a film's movements, model by model in story order. */
  static ShootingPlanner of(Plan plan, List<MovementWork> works) {
    ShootingPlanner planner = new ShootingPlanner(plan, works);
    planner.works.values().forEach(planner::addModel);
    return planner;
  }

  ShootingPlan plan(int movedApart, List<ArtworkPlate> atRest) {
    Optional<WorkTime> time = atRest.isEmpty() ? Optional.empty() : clock.take(atRest.size());
    return new ShootingPlan(setups, fewest, movedApart, atRest, time, clock.total());
  }

  private void addModel(List<MovementWork> model) {
    WorkOrder order =
        new WorkOrder(
            MovementWork.mayPrecede(model),
            set -> views.one(set.stream().map(model::get).toList()));
    fewest &= order.isExact();
    List<MovementWork> before = List.of();
    for (List<List<Integer>> piece : order.pieces()) {
      List<MovementWork> now = piece.stream().flatMap(List::stream).map(model::get).toList();
      List<String> open = openTooFar(before, now);
      for (List<Integer> setup : piece) {
        add(setup.stream().map(model::get).toList(), open);
        open = List.of();
      }
      before = now;
    }
  }

  /** Openings that the piece before leaves further open than what is taken now wants them. */
  private static List<String> openTooFar(List<MovementWork> before, List<MovementWork> now) {
    return before.stream()
        .flatMap(earlier -> now.stream().flatMap(later -> earlier.openTooFarFor(later).stream()))
        .distinct()
        .toList();
  }

  private void add(List<MovementWork> together, List<String> openBefore) {
    Artwork.Model model = together.get(0).model();
    List<Setup.Run> runs = together.stream().map(this::run).toList();
    int photographs = runs.stream().mapToInt(Setup.Run::photographs).sum();
    setups.add(
        new Setup(
            setups.size() + 1,
            model,
            openBefore,
            views.of(together),
            runs,
            SetupCautions.of(together, photographs),
            clock.take(photographs)));
  }

  private Setup.Run run(MovementWork work) {
    List<Plate> plates = plates(work);
    int photographs = work.movement().moved().size() + plates.size();
    return new Setup.Run(
        work.movement(), work.panels(), work.standing(), plates, clock.hoursOf(photographs));
  }

  /**
   * Every movement has a closed, an open and a clean plate; one with lamps seen in it also one
   * without.
   */
  private List<Plate> plates(MovementWork work) {
    String name = work.movement().name();
    List<Plate> plates = new ArrayList<>();
    plates.add(
        new Plate(Plate.Kind.CLOSED, work.movement().photographs().get(0).photograph().name()));
    plates.add(new Plate(Plate.Kind.OPEN, name + " open"));
    plates.add(new Plate(Plate.Kind.CLEAN, name + " clean"));
    boolean lamps =
        work.movement().openings().stream()
            .map(opening -> plan.workshop().opening(opening).orElseThrow())
            .anyMatch(opening -> opening.motion() instanceof Brightens);
    if (lamps || !work.model().light().isEmpty()) {
      plates.add(new Plate(Plate.Kind.LAMP_OFF, name + " lamp off"));
    }
    return plates;
  }
}
