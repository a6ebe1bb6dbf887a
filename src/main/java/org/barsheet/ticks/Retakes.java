package org.barsheet.ticks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barsheet.artwork.Measure;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.Setup.Plate;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.shooting.Step;

/** What photographs that have to be taken again need. */
final class Retakes {

  private final ShootingPlan shooting;
  private final List<TakenPhotograph> photographs;

  /** How far the artwork's openings stand open after what was taken. */
  private final Map<String, Double> open = new HashMap<>();

  private Retakes(ShootingPlan shooting, List<TakenPhotograph> photographs) {
    this.shooting = shooting;
    this.photographs = photographs;
  }

  static List<Retake> of(ShootingPlan shooting, List<TakenPhotograph> photographs) {
    return new Retakes(shooting, photographs).all();
  }

  private List<Retake> all() {
    for (Setup setup : shooting.setups()) {
      setup.steps().stream()
          .filter(step -> setup.model().enlarged() == 1 && reached(step) >= 0)
          .forEach(this::open);
    }
    List<Retake> all = new ArrayList<>();
    for (Setup setup : shooting.setups()) {
      for (Step step : setup.steps()) {
        if (of(step).stream().anyMatch(TakenPhotograph::isAgain)) {
          all.add(retake(setup, step));
        }
      }
    }
    return all;
  }

  private void open(Step step) {
    step.take().standing().forEach(one -> open.put(one.opening(), one.open()));
    if (step.take() instanceof Setup.Run run && reached(step) > 0) {
      open.put(run.movement().openings().get(0), 1.0);
    }
  }

  private List<TakenPhotograph> of(Step step) {
    return photographs.stream().filter(one -> one.take().equals(step.take().name())).toList();
  }

  /** The last photograph of a step of which anything was said, from 0; −1 where nothing was. */
  private int reached(Step step) {
    List<TakenPhotograph> its = of(step);
    int reached = its.size() - 1;
    while (reached >= 0 && its.get(reached).mark().isEmpty()) {
      reached--;
    }
    return reached;
  }

  private Retake retake(Setup setup, Step step) {
    List<String> order = of(step).stream().map(TakenPhotograph::name).toList();
    List<String> again =
        of(step).stream().filter(TakenPhotograph::isAgain).map(TakenPhotograph::name).toList();
    int first = order.indexOf(again.get(0));
    boolean returns =
        photographs.stream()
            .anyMatch(one -> one.setup() > setup.number() && one.mark().isPresent());
    Set<String> fresh = new LinkedHashSet<>();
    List<String> plates = new ArrayList<>();
    boolean moves = false;
    if (step.take() instanceof Setup.Run run) {
      moves = first > 0 && first <= run.moved();
      if (isPast(run, first, reached(step))) {
        fresh.add(run.movement().openings().get(0));
      }
      plates.addAll(plates(run, of(step), again, !fresh.isEmpty(), returns));
    }
    if (setup.model().enlarged() == 1) {
      step.take().standing().stream()
          .filter(one -> open.getOrDefault(one.opening(), 0.0) > one.open())
          .forEach(one -> fresh.add(one.opening()));
    }
    return new Retake(
        setup.number(),
        step.take().name(),
        again,
        step.take() instanceof Setup.Run run && !isLamp(run),
        List.copyOf(fresh),
        moves ? order.get(first - 1) : "",
        returns,
        plates);
  }

  /** Whether the flap has gone further than a photograph wants it; a lamp can be dimmed again. */
  private static boolean isPast(Setup.Run run, int first, int reached) {
    return !isLamp(run) && first <= run.moved() && first < Math.min(reached, run.moved());
  }

  private static boolean isLamp(Setup.Run run) {
    return run.movement().measure() instanceof Measure.Light;
  }

  /**
   * A fresh flap looks a little different, so the closed and the open plate go with it; where
   * camera and lamps have moved, all plates do.
   */
  private static List<String> plates(
      Setup.Run run,
      List<TakenPhotograph> its,
      List<String> again,
      boolean fresh,
      boolean returns) {
    return run.plates().stream()
        .filter(
            plate ->
                returns
                    || (fresh
                        && (plate.kind() == Plate.Kind.CLOSED || plate.kind() == Plate.Kind.OPEN)))
        .map(Plate::name)
        .filter(name -> !again.contains(name))
        .filter(name -> its.stream().anyMatch(one -> one.name().equals(name) && one.isTaken()))
        .toList();
  }
}
