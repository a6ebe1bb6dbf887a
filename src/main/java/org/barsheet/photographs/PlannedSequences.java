package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.barsheet.artwork.KeyColor;
import org.barsheet.artwork.ModelScale;
import org.barsheet.exposure.Movement;
import org.barsheet.input.InputException;
import org.barsheet.input.Nearest;
import org.barsheet.input.Problem;
import org.barsheet.input.Prose;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Plan;
import org.barsheet.shooting.CameraView;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.ShootingPlan;

/** Finds what a person means by the name of photographs. */
public final class PlannedSequences {

  private final Plan plan;
  private final Map<String, PlannedSequence> byName = new LinkedHashMap<>();
  private final Map<String, List<String>> movementsOf = new LinkedHashMap<>();

  /** Everything that is to be photographed. */
  public PlannedSequences(Plan plan, ShootingPlan shooting) {
    this.plan = plan;
    for (Setup setup : shooting.setups()) {
      for (Setup.Run run : setup.runs()) {
        add(setup, run);
      }
    }
    shooting
        .atRest()
        .forEach(plate -> byName.put(plate.name(), PlannedSequence.ofPlate(plate.name())));
  }

  private void add(Setup setup, Setup.Run run) {
    Movement movement = run.movement();
    List<String> plates =
        run.plates().stream()
            .filter(plate -> plate.kind() != Setup.Plate.Kind.CLOSED)
            .map(Setup.Plate::name)
            .toList();
    byName.put(
        movement.name(), PlannedSequence.of(movement, plates, moving(movement, setup.view())));
    plates.forEach(plate -> byName.put(plate, PlannedSequence.ofPlate(plate)));
    movement.openings().forEach(opening -> isAlso(opening, movement.name()));
    isAlso("setup " + setup.number(), movement.name());
  }

  private void isAlso(String name, String movement) {
    movementsOf.computeIfAbsent(name, none -> new ArrayList<>()).add(movement);
  }

  private PlannedSequence.Moving moving(Movement movement, Optional<CameraView> view) {
    Opening opening = plan.workshop().opening(movement.openings().get(0)).orElseThrow();
    Artwork artwork = plan.workshop().artwork();
    Artwork.Model model = artwork.model(movement.model()).orElseThrow();
    return new PlannedSequence.Moving(
        opening,
        movement.measure(),
        view.map(CameraView::field),
        ModelScale.of(model, artwork).squareMillimeters(),
        view.map(seen -> seen.distanceMillimeters().orElse(Double.POSITIVE_INFINITY))
            .orElse(Double.POSITIVE_INFINITY),
        KeyColor.hexOf(model.backing()));
  }

  /** Every sequence there is, in the order of work. */
  public List<PlannedSequence> all() {
    return List.copyOf(byName.values());
  }

  /**
   * The photographs of a movement, an opening, a setup or a plate.
   *
   * @throws InputException if nothing is called so, or several movements are
   */
  public PlannedSequence called(String name) {
    PlannedSequence known = byName.get(name);
    if (known != null) {
      return known;
    }
    List<String> movements = movementsOf.getOrDefault(name, List.of());
    if (movements.size() == 1) {
      return byName.getOrDefault(movements.get(0), PlannedSequence.ofPlate(name));
    }
    throw new InputException(movements.isEmpty() ? unknown(name) : several(name, movements));
  }

  private Problem unknown(String name) {
    Set<String> names = new LinkedHashSet<>(byName.keySet());
    names.addAll(movementsOf.keySet());
    return Problem.ofFile(
        plan.text().file().toString(),
        "nothing to photograph is called '" + name + "'",
        Nearest.remedy(
            name, List.copyOf(names), "give an opening, a movement, a setup or a plate"));
  }

  private Problem several(String name, List<String> movements) {
    return Problem.ofFile(
        plan.text().file().toString(),
        name + " has " + movements.size() + " movements",
        "name one: " + Prose.listed(movements));
  }
}
