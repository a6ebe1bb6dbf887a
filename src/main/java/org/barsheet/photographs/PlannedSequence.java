package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.artwork.Measure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;

/**
 * Photographs that are taken one after another.
 *
 * @param name what they are photographs of: a movement or a plate
 * @param photographs in the order they are taken
 * @param plates that are taken after them, of the same movement
 * @param moving what moves in them, where something does
 */
public record PlannedSequence(
    String name,
    List<PlannedPhotograph> photographs,
    List<PlannedPhotograph> plates,
    Optional<Moving> moving) {

  public PlannedSequence {
    photographs = List.copyOf(photographs);
    plates = List.copyOf(plates);
  }

  /**
   * What moves.
   *
   * @param opening which
   * @param measure how far it goes
   * @param view what the camera sees, in squares of the artwork, where a panel says so
   * @param squareMillimeters side of a square on the model
   * @param distanceMillimeters from lens to model, or infinite where the camera is not known
   * @param backing color behind it, RRGGBB, where the plan tells one
   */
  public record Moving(
      Opening opening,
      Measure measure,
      Optional<Rect> view,
      double squareMillimeters,
      double distanceMillimeters,
      Optional<String> backing) {}

  /** A movement from its closed photograph to its last, and the plates taken after it. */
  static PlannedSequence of(Movement movement, List<String> plates, Moving moving) {
    List<PlannedPhotograph> photographs = new ArrayList<>();
    for (MovedPhotograph one : movement.photographs()) {
      photographs.add(
          new PlannedPhotograph(
              one.photograph().name(),
              one.photograph().number(),
              one.measures().set().doubleValue(),
              one.measures().heldBy().map(Opening.Support::text).orElse("")));
    }
    return new PlannedSequence(
        movement.name(),
        photographs,
        plates.stream().map(PlannedPhotograph::plate).toList(),
        Optional.of(moving));
  }

  static PlannedSequence ofPlate(String name) {
    return new PlannedSequence(
        name, List.of(PlannedPhotograph.plate(name)), List.of(), Optional.empty());
  }

  /** The same from one of its photographs on, or nothing where it has no such number. */
  public Optional<PlannedSequence> from(int number) {
    List<PlannedPhotograph> rest =
        photographs.stream().filter(one -> one.number() >= number).toList();
    return rest.isEmpty() || rest.get(0).number() != number
        ? Optional.empty()
        : Optional.of(new PlannedSequence(name, rest, plates, moving));
  }

  /** The same with its plates among its photographs. */
  PlannedSequence withPlates() {
    List<PlannedPhotograph> all = new ArrayList<>(photographs);
    all.addAll(plates);
    return new PlannedSequence(name, all, List.of(), moving);
  }

  /** The same without those past a count: a retake need not go to the end. */
  PlannedSequence first(int count) {
    return new PlannedSequence(name, photographs.subList(0, count), List.of(), moving);
  }
}
