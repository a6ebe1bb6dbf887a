package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The order in which the movements on one model are photographed. A model is used up piece by
 * piece: on one piece of paper openings only ever get more open, and what has to be closed again
 * begins a fresh piece. A setup ends where the camera has to see something else, and where a fresh
 * piece begins.
 *
 * <p>Up to {@value #MOST_EXACT} movements the order has the fewest setups, and of those orders the
 * fewest fresh pieces: every division of the movements into pieces, and of a piece into setups, is
 * weighed (dynamic programming over sets). More are taken in story order, each on the first piece
 * that can still take it.
 */
final class WorkOrder {

  /** So many movements on a model are ordered exactly: 3 to this power divisions are weighed. */
  static final int MOST_EXACT = 14;

  private static final int IMPOSSIBLE = Integer.MAX_VALUE / 8;

  /** Any setup costs more than all fresh pieces together. */
  private static final int SET_UP = 1 << 10;

  private final int count;
  private final boolean[][] before;
  private final Predicate<List<Integer>> oneView;

  /**
   * Work to order.
   *
   * @param before {@code before[i][j]}: whether i may be taken before j on the same piece
   * @param oneView whether one view of the camera serves all of some movements
   */
  WorkOrder(boolean[][] before, Predicate<List<Integer>> oneView) {
    this.count = before.length;
    this.before = before;
    this.oneView = oneView;
  }

  boolean isExact() {
    return count <= MOST_EXACT;
  }

  /** Pieces, each of setups, each of movements, all in the order they are taken. */
  List<List<List<Integer>>> pieces() {
    return isExact() ? exact() : byRule();
  }

  private List<List<List<Integer>>> exact() {
    int all = 1 << count;
    boolean[] orderly = orderly(all);
    int[] lastSetup = new int[all];
    int[] onOnePiece = setups(all, orderly, lastSetup);
    int[] piece = new int[all];
    pieces(all, onOnePiece, piece);
    List<List<List<Integer>>> pieces = new ArrayList<>();
    for (int left = all - 1; left != 0; left &= ~piece[left]) {
      List<List<Integer>> setups = new ArrayList<>();
      for (int set = piece[left]; set != 0; set &= ~lastSetup[set]) {
        setups.add(0, ordered(lastSetup[set]));
      }
      pieces.add(setups);
    }
    return pieces;
  }

  /** Which sets can be taken in some order on one piece. */
  private boolean[] orderly(int all) {
    boolean[] orderly = new boolean[all];
    orderly[0] = true;
    for (int set = 1; set < all; set++) {
      orderly[set] = last(set, orderly) >= 0;
    }
    return orderly;
  }

  /** The latest movement that can be the last one of a set, or −1. */
  private int last(int set, boolean[] orderly) {
    for (int last = count - 1; last >= 0; last--) {
      int rest = set & ~(1 << last);
      if (rest != set && orderly[rest] && mayAllPrecede(rest, last)) {
        return last;
      }
    }
    return -1;
  }

  /** The movements of a set given as bits. */
  private static List<Integer> movements(int set) {
    return IntStream.range(0, Integer.SIZE).filter(bit -> (set >> bit & 1) == 1).boxed().toList();
  }

  private boolean mayAllPrecede(int earlier, int movement) {
    for (int left = earlier; left != 0; left &= left - 1) {
      if (!before[Integer.numberOfTrailingZeros(left)][movement]) {
        return false;
      }
    }
    return true;
  }

  private boolean mayAllPrecedeAll(int earlier, int later) {
    for (int left = later; left != 0; left &= left - 1) {
      if (!mayAllPrecede(earlier, Integer.numberOfTrailingZeros(left))) {
        return false;
      }
    }
    return true;
  }

  /** Fewest setups that take a set on one piece, and the last of them: the later in the story. */
  private int[] setups(int all, boolean[] orderly, int[] lastSetup) {
    int[] fewest = new int[all];
    Arrays.fill(fewest, 1, all, IMPOSSIBLE);
    boolean[] viewable = new boolean[all];
    for (int set = 1; set < all; set++) {
      viewable[set] = orderly[set] && oneView.test(movements(set));
      for (int part = set; part != 0; part = (part - 1) & set) {
        int cost = fewest[set & ~part] + SET_UP;
        boolean later = Integer.lowestOneBit(part) > Integer.lowestOneBit(lastSetup[set]);
        boolean better = cost < fewest[set] || (cost == fewest[set] && later);
        if (viewable[part] && better && mayAllPrecedeAll(set & ~part, part)) {
          fewest[set] = cost;
          lastSetup[set] = part;
        }
      }
    }
    return fewest;
  }

  /**
   * The piece that holds the earliest movement of each set, where the set is divided best; of equal
   * divisions the one whose first piece goes on with the earliest movements.
   */
  private static void pieces(int all, int[] onOnePiece, int[] piece) {
    int[] fewest = new int[all];
    Arrays.fill(fewest, 1, all, IMPOSSIBLE);
    for (int set = 1; set < all; set++) {
      for (int part = set; part != 0; part = (part - 1) & set) {
        int cost = onOnePiece[part] + 1 + fewest[set & ~part];
        boolean holdsEarliest = (part & Integer.lowestOneBit(set)) != 0;
        if (holdsEarliest && isBetter(cost, part, fewest[set], piece[set])) {
          fewest[set] = cost;
          piece[set] = part;
        }
      }
    }
  }

  private static boolean isBetter(int cost, int part, int than, int otherPart) {
    int earlier = Integer.compareUnsigned(Integer.reverse(part), Integer.reverse(otherPart));
    return cost < than || (cost == than && earlier > 0);
  }

  /** The movements of a setup, in story order as far as they may. */
  private List<Integer> ordered(int set) {
    List<Integer> order = new ArrayList<>();
    for (int left = set; left != 0; ) {
      int next = first(left);
      order.add(next);
      left &= ~(1 << next);
    }
    return order;
  }

  /** The earliest movement that may be taken before all others of a set. */
  private int first(int set) {
    for (int movement = 0; movement < count; movement++) {
      int bit = 1 << movement;
      if ((set & bit) != 0 && mayAllPrecedeAll(bit, set & ~bit)) {
        return movement;
      }
    }
    throw new IllegalStateException("a setup without an order");
  }

  private List<List<List<Integer>>> byRule() {
    List<List<List<Integer>>> pieces = new ArrayList<>();
    for (int movement = 0; movement < count; movement++) {
      addTo(pieceFor(movement, pieces), movement);
    }
    return pieces;
  }

  private List<List<Integer>> pieceFor(int movement, List<List<List<Integer>>> pieces) {
    for (List<List<Integer>> piece : pieces) {
      if (piece.stream().flatMap(List::stream).allMatch(done -> before[done][movement])) {
        return piece;
      }
    }
    List<List<Integer>> fresh = new ArrayList<>();
    pieces.add(fresh);
    return fresh;
  }

  private void addTo(List<List<Integer>> piece, int movement) {
    if (!piece.isEmpty()) {
      List<Integer> together = new ArrayList<>(piece.get(piece.size() - 1));
      together.add(movement);
      if (oneView.test(together)) {
        piece.set(piece.size() - 1, together);
        return;
      }
    }
    piece.add(List.of(movement));
  }
}
