package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening.Brightens;
import org.barsheet.plan.Plan;
import org.barsheet.shooting.Draft.Work;
import org.barsheet.shooting.Setup.Plate;
import org.barsheet.shooting.order.Job;
import org.barsheet.shooting.order.Job.Level;
import org.barsheet.shooting.order.WorkOrder;
import org.barsheet.timing.Shot;

/** Plans what is photographed when: what belongs together, in which order, with which plates. */
final class ShootingPlanner {

  /** The model that is the artwork itself, where the plan names none. */
  private static final Artwork.Model ITSELF = new Artwork.Model("artwork", 1, "", "");

  /** The paper that all models of the artwork itself are. */
  private static final String ARTWORK = "";

  private final Plan plan;
  private final CameraViews views;
  private final Optional<Rates> rates;
  private final Map<String, List<Work>> papers = new LinkedHashMap<>();
  private boolean fewest = true;

  ShootingPlanner(Plan plan) {
    this.plan = plan;
    this.views = new CameraViews(plan);
    this.rates = plan.workshop().shoot().map(Rates::of);
  }

  /**
   * Everything a film needs.
   *
   * @param works movements in story order
   * @param atRest photographs of the artwork at rest, in story order
   * @param movedApart photographs there would be to take if no two reveals shared any
   */
  ShootingPlan plan(
      List<MovementWork> works, List<ArtworkPlate> atRest, List<Shot> shots, int movedApart) {
    works.forEach(this::add);
    Map<String, Integer> shotOf = new HashMap<>();
    shots.forEach(shot -> shotOf.putIfAbsent(shot.panel().name(), shot.index()));
    atRest.forEach(plate -> add(plate, Objects.requireNonNull(shotOf.get(plate.panels().get(0)))));
    List<Draft> drafts = new ArrayList<>();
    papers.forEach((paper, all) -> drafts.addAll(setups(paper, all)));
    List<Slot> slots = slots(drafts);
    List<Setup> setups = new SetupWriter(views, rates, drafts, slots).all();
    return new ShootingPlan(
        setups, WorkDays.of(setups, slots, rates), fewest, movedApart, WorkTimes.of(slots, rates));
  }

  private void add(MovementWork work) {
    boolean artwork = work.model().enlarged() == 1;
    papers
        .computeIfAbsent(artwork ? ARTWORK : work.model().name(), paper -> new ArrayList<>())
        .add(new Work(work.shot(), run(work), views.of(work), job(work), List.of(work)));
  }

  private void add(ArtworkPlate plate, int shot) {
    Artwork.Model itself =
        plan.workshop().artwork().models().stream()
            .filter(model -> model.enlarged() == 1)
            .findFirst()
            .orElse(ITSELF);
    Job job = new Job(0, levels(plate.standing()));
    papers
        .computeIfAbsent(ARTWORK, paper -> new ArrayList<>())
        .add(new Work(shot, plate, views.ofWhole(itself), job, List.of()));
  }

  private Job job(MovementWork work) {
    Map<String, Level> levels = levels(work.standing());
    if (!(work.opening().motion() instanceof Brightens)) {
      levels.put(work.flap(), new Level(0, 1));
    }
    return new Job(0, levels);
  }

  /** A lamp is dimmed as easily as it is lit; all else is paper. */
  private Map<String, Level> levels(List<Setup.Standing> standing) {
    Map<String, Level> levels = new TreeMap<>();
    for (Setup.Standing one : standing) {
      boolean lamp =
          plan.workshop().opening(one.opening()).orElseThrow().motion() instanceof Brightens;
      if (!lamp) {
        levels.put(one.opening(), Level.at(one.open()));
      }
    }
    return levels;
  }

  /** The setups on one piece of paper, in an order in which nothing closes. */
  private List<Draft> setups(String paper, List<Work> all) {
    List<Work> works = all.stream().sorted(Comparator.comparingInt(Work::shot)).toList();
    List<Sight> sights = works.stream().map(Work::sight).distinct().toList();
    List<Job> jobs =
        works.stream()
            .map(work -> new Job(sights.indexOf(work.sight()), work.job().flaps()))
            .toList();
    WorkOrder order =
        WorkOrder.of(jobs, seen -> views.one(seen.stream().map(sights::get).toList()));
    fewest &= order.fewest();
    return order.setups().stream()
        .map(setup -> new Draft(paper, setup.stream().map(works::get).toList()))
        .toList();
  }

  private List<Slot> slots(List<Draft> drafts) {
    return new Calendar(
            rates.orElse(Rates.NONE),
            drafts.stream().map(draft -> draft.works().stream().map(Work::piece).toList()).toList(),
            (setup, other) -> other < setup && drafts.get(setup).sharesPaperWith(drafts.get(other)))
        .slots();
  }

  private Setup.Run run(MovementWork work) {
    List<Plate> plates = plates(work);
    Setup.Run run =
        new Setup.Run(
            work.movement(), work.panels(), work.standing(), plates, OptionalDouble.empty());
    return rates
        .map(pace -> run.taking(pace.photographs(run.photographs()).doubleValue()))
        .orElse(run);
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
