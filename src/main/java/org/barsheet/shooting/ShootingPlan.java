package org.barsheet.shooting;

import java.util.List;
import java.util.Optional;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.timing.TimingSheet;

/**
 * Everything that has to be photographed, in the order of work. Each movement is taken once,
 * however many reveals show it. On one model openings only ever get more open, as paper rarely
 * closes cleanly; the order has the fewest setups that this allows.
 *
 * @param setups in the order of work
 * @param fewest whether the number of setups is known to be the smallest: models with very many
 *     movements are ordered by rule instead
 * @param movedApart photographs there would be to take if no two reveals shared any, plates left
 *     out
 * @param atRest photographs of the whole artwork at rest, in story order: one more setup, though
 *     each is taken when the artwork stands so
 * @param atRestTime for those, where the plan gives rates of work
 * @param time for all of it, where the plan gives rates of work
 */
public record ShootingPlan(
    List<Setup> setups,
    boolean fewest,
    int movedApart,
    List<ArtworkPlate> atRest,
    Optional<WorkTime> atRestTime,
    Optional<WorkTime> time) {

  public ShootingPlan {
    setups = List.copyOf(setups);
    atRest = List.copyOf(atRest);
  }

  /**
   * Plans the shooting of a film.
   *
   * @param timing panels on frames
   * @param movements what has to be photographed, in story order
   * @param reveals every reveal on its frames
   * @param states every opening in every shot
   */
  public static ShootingPlan of(
      TimingSheet timing,
      List<Movement> movements,
      List<PlannedReveal> reveals,
      List<OpeningState> states) {
    MovementWorks works = new MovementWorks(timing, reveals, states);
    int apart = reveals.stream().mapToInt(reveal -> reveal.reveal().photographs()).sum();
    List<ArtworkPlate> atRest = new ArtworkPlates(timing, works).all();
    return ShootingPlanner.of(timing.plan(), works.of(movements)).plan(apart, atRest);
  }

  /** When the artwork stands as one of its photographs at rest wants it. */
  public RestTurn turnOf(ArtworkPlate plate) {
    return RestTurn.of(plate, setups);
  }

  /** How often something is set up: the whole artwork at rest counts as one. */
  public int setupCount() {
    return setups.size() + (atRest.isEmpty() ? 0 : 1);
  }

  /** Photographs in all, plates with them. */
  public int photographs() {
    return setups.stream().mapToInt(Setup::photographs).sum() + atRest.size();
  }

  /** Photographs that show a step of a movement. */
  public int moved() {
    return setups.stream().flatMap(one -> one.runs().stream()).mapToInt(Setup.Run::moved).sum();
  }

  /** Photographs without a movement, the closed ones with them. */
  public int plates() {
    return photographs() - moved();
  }
}
