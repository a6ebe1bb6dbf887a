package org.barsheet.revision;

import java.util.ArrayList;
import java.util.List;

/**
 * Bars of two versions laid against each other in order: the pairing with the most alike bars and
 * the fewest gaps, and for each bar every other pairing that is as good.
 *
 * <p>Global alignment with gaps that cost more to open than to widen (O. Gotoh, "An improved
 * algorithm for matching biological sequences", Journal of Molecular Biology 162, 1982); what every
 * best way has in common is told by running it from both ends.
 */
final class BarWindow {

  /** No bar. */
  static final int NONE = -1;

  /** Two bars less alike than this, in thousandths, are better left apart. */
  private static final int INDIFFERENT = 300;

  private static final int OPEN = 150;
  private static final int WIDEN = 200;

  /** Ways so close to the best, in thousandths of a bar, count as good as it. */
  private static final int AS_GOOD = 100;

  private static final int IMPOSSIBLE = Integer.MIN_VALUE / 4;
  private static final int PAIR = 0;
  private static final int GONE = 1;
  private static final int NEW = 2;

  private final int[][] worth;
  private final int was;
  private final int is;

  /** Best worth of what lies before, and of what lies behind, by the step just taken. */
  private final int[][][] before;

  private final int[][][] behind;

  /**
   * Two runs of bars.
   *
   * @param alike how alike each bar of the one is to each of the other, 0 to 1000; both at least
   *     one
   */
  BarWindow(int[][] alike) {
    was = alike.length;
    is = alike[0].length;
    worth = new int[was][is];
    for (int i = 0; i < was; i++) {
      for (int j = 0; j < is; j++) {
        worth[i][j] = alike[i][j] - INDIFFERENT;
      }
    }
    before = new int[3][was + 1][is + 1];
    behind = new int[3][was + 1][is + 1];
    lookBack();
    lookAhead();
  }

  private void lookBack() {
    for (int i = 0; i <= was; i++) {
      for (int j = 0; j <= is; j++) {
        boolean start = i == 0 && j == 0;
        before[PAIR][i][j] =
            start
                ? 0
                : i > 0 && j > 0 ? reached(i - 1, j - 1, PAIR) + worth[i - 1][j - 1] : IMPOSSIBLE;
        before[GONE][i][j] = i > 0 ? reached(i - 1, j, GONE) : IMPOSSIBLE;
        before[NEW][i][j] = j > 0 ? reached(i, j - 1, NEW) : IMPOSSIBLE;
      }
    }
  }

  private int reached(int i, int j, int step) {
    int best = IMPOSSIBLE;
    for (int last = PAIR; last <= NEW; last++) {
      best = Math.max(best, before[last][i][j] - cost(last, step));
    }
    return best;
  }

  private void lookAhead() {
    for (int i = was; i >= 0; i--) {
      for (int j = is; j >= 0; j--) {
        for (int last = PAIR; last <= NEW; last++) {
          behind[last][i][j] =
              i == was && j == is
                  ? 0
                  : Math.max(pairing(i, j), Math.max(leaving(last, i, j), adding(last, i, j)));
        }
      }
    }
  }

  private int pairing(int i, int j) {
    return i < was && j < is ? worth[i][j] + behind[PAIR][i + 1][j + 1] : IMPOSSIBLE;
  }

  private int leaving(int last, int i, int j) {
    return i < was ? behind[GONE][i + 1][j] - cost(last, GONE) : IMPOSSIBLE;
  }

  private int adding(int last, int i, int j) {
    return j < is ? behind[NEW][i][j + 1] - cost(last, NEW) : IMPOSSIBLE;
  }

  private static int cost(int last, int step) {
    if (step == PAIR) {
      return 0;
    }
    return last == step ? WIDEN : OPEN + WIDEN;
  }

  /** The best pairing, bars paired as early as may be: the bar of now for each bar before. */
  int[] best() {
    int[] best = new int[was];
    int last = PAIR;
    int i = 0;
    int j = 0;
    while (i < was) {
      int rest = behind[last][i][j];
      if (rest == pairing(i, j)) {
        best[i++] = j++;
        last = PAIR;
      } else if (rest == leaving(last, i, j)) {
        best[i++] = NONE;
        last = GONE;
      } else {
        j++;
        last = NEW;
      }
    }
    return best;
  }

  /** Every bar of now that a bar before is paired with in some way that is as good as the best. */
  List<Integer> asGood(int i) {
    int least = behind[PAIR][0][0] - AS_GOOD;
    List<Integer> found = new ArrayList<>();
    boolean gone = false;
    for (int j = 0; j <= is; j++) {
      int there = reached(i, j, PAIR);
      if (j < is && there + pairing(i, j) >= least) {
        found.add(j);
      }
      gone |= reached(i, j, GONE) + behind[GONE][i + 1][j] >= least;
    }
    if (gone) {
      found.add(NONE);
    }
    return found;
  }
}
