package org.barsheet.shooting.order;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Which views the camera can have from one position, and how few positions serve some of them. */
final class ViewGroups {

  /** So many views are weighed in all their divisions: 3 to this power. */
  static final int MOST = 12;

  private final boolean[] together;
  private final int[] fewest;

  /**
   * Views to divide.
   *
   * @param views how many, at most {@value #MOST}
   * @param oneView whether one position of the camera serves some of them; what serves many serves
   *     fewer
   */
  ViewGroups(int views, Predicate<List<Integer>> oneView) {
    int all = 1 << views;
    together = new boolean[all];
    fewest = new int[all];
    Arrays.fill(fewest, 1, all, Integer.MAX_VALUE / 2);
    for (int set = 1; set < all; set++) {
      together[set] = oneView.test(members(set));
      int earliest = Integer.lowestOneBit(set);
      for (int part = set; part != 0; part = (part - 1) & set) {
        if (together[part] && (part & earliest) != 0) {
          fewest[set] = Math.min(fewest[set], 1 + fewest[set & ~part]);
        }
      }
    }
  }

  static List<Integer> members(int set) {
    return IntStream.range(0, Integer.SIZE).filter(bit -> (set >> bit & 1) == 1).boxed().toList();
  }

  boolean isOne(int set) {
    return together[set];
  }

  /** How few positions serve all views of a set. */
  int fewest(int set) {
    return fewest[set];
  }
}
