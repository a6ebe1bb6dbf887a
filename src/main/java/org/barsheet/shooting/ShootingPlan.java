package org.barsheet.shooting;

import java.util.List;
import java.util.Optional;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.timing.TimingSheet;

/**
 * Everything that has to be photographed, in an order that can be followed from the top down. Each
 * movement is taken once, however many reveals show it, and the artwork at rest when it stands so.
 * Flaps only ever get more open, as paper rarely closes cleanly: what is wanted less open than it
 * stands is cut afresh. The order has the fewest setups, and of those the fewest fresh flaps.
 *
 * @param setups in the order of work
 * @param days the same work day by day
 * @param fewest whether the number of setups and of fresh flaps is known to be the smallest: models
 *     with very many movements are ordered by rule instead
 * @param movedApart photographs there would be to take if no two reveals shared any, plates left
 *     out
 * @param time for all of it, where the plan gives rates of work
 */
public record ShootingPlan(
    List<Setup> setups,
    List<WorkDay> days,
    boolean fewest,
    int movedApart,
    Optional<WorkTime> time) {

  public ShootingPlan {
    setups = List.copyOf(setups);
    days = List.copyOf(days);
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
    return new ShootingPlanner(timing.plan())
        .plan(works.of(movements), atRest, timing.shots(), apart);
  }

  /** Photographs of the whole artwork at rest, in the order of work. */
  public List<ArtworkPlate> atRest() {
    return setups.stream().flatMap(setup -> setup.atRest().stream()).toList();
  }

  /** Photographs in all, plates with them. */
  public int photographs() {
    return setups.stream().mapToInt(Setup::photographs).sum();
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
