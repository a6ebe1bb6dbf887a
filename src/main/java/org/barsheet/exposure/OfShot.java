package org.barsheet.exposure;

import java.util.List;
import java.util.function.ToIntFunction;

/** Finds what belongs to one shot among things that stand in order of shot. */
public final class OfShot {

  private OfShot() {}

  /**
   * The reveals of a shot.
   *
   * @param reveals in order of shot
   * @param shot its index
   */
  public static List<PlannedReveal> reveals(List<PlannedReveal> reveals, int shot) {
    return run(reveals, PlannedReveal::shot, shot);
  }

  /**
   * The openings in a shot.
   *
   * @param states in order of shot
   * @param shot its index
   */
  public static List<OpeningState> states(List<OpeningState> states, int shot) {
    return run(states, OpeningState::shot, shot);
  }

  private static <T> List<T> run(List<T> inOrder, ToIntFunction<T> shotOf, int shot) {
    int from = firstFrom(inOrder, shotOf, shot);
    return inOrder.subList(from, firstFrom(inOrder, shotOf, shot + 1));
  }

  private static <T> int firstFrom(List<T> inOrder, ToIntFunction<T> shotOf, int shot) {
    int low = 0;
    int high = inOrder.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (shotOf.applyAsInt(inOrder.get(middle)) < shot) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
