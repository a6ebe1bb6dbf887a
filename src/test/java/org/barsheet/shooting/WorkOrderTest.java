package org.barsheet.shooting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Movements of one model in order, with as few setups as can be and then as few fresh pieces. */
class WorkOrderTest {

  private static boolean[][] before(int count, boolean forwards, boolean backwards) {
    boolean[][] before = new boolean[count][count];
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < count; j++) {
        before[i][j] = i < j ? forwards : i > j && backwards;
      }
    }
    return before;
  }

  @Test
  void what_needs_no_closing_is_taken_on_one_piece_in_story_order() {
    assertThat(new WorkOrder(before(3, true, false), set -> true).pieces())
        .containsExactly(List.of(List.of(0, 1, 2)));
    assertThat(new WorkOrder(before(3, true, true), set -> set.size() < 2).pieces())
        .containsExactly(List.of(List.of(0), List.of(1), List.of(2)));
  }

  @Test
  void what_stands_open_too_early_is_taken_later_instead_of_on_a_fresh_piece() {
    assertThat(new WorkOrder(before(3, false, true), set -> true).pieces())
        .containsExactly(List.of(List.of(2, 1, 0)));
  }

  @Test
  void what_has_to_be_closed_again_begins_a_fresh_piece() {
    assertThat(new WorkOrder(before(2, false, false), set -> true).pieces())
        .containsExactly(List.of(List.of(0)), List.of(List.of(1)));
  }

  /**
   * Each has a view of its own, so any order has four setups. 0 and 1 could share a piece, but 2
   * and 3 would then need one each: that is a sheet of paper more than 0 with 2 and 1 with 3.
   */
  @Test
  void of_orders_with_as_many_setups_the_one_with_the_fewest_fresh_pieces_is_taken() {
    boolean[][] before = new boolean[4][4];
    before[0][1] = true;
    before[0][2] = true;
    before[1][3] = true;
    assertThat(new WorkOrder(before, set -> set.size() == 1).pieces())
        .containsExactly(List.of(List.of(0), List.of(2)), List.of(List.of(1), List.of(3)));
  }

  /** One piece would do for 0, 2, 1, each a setup; 0 and 1 in one view leave 2 a fresh piece. */
  @Test
  void a_fresh_piece_is_taken_where_it_saves_a_setup() {
    boolean[][] before = new boolean[3][3];
    before[0][1] = true;
    before[0][2] = true;
    before[2][1] = true;
    Predicate<List<Integer>> view = set -> !set.contains(2) || set.size() == 1;
    assertThat(new WorkOrder(before, view).pieces())
        .containsExactly(List.of(List.of(0, 1)), List.of(List.of(2)));
  }

  /** 0 and 2 share a view, 1 does not; taken last, it costs no second setup. */
  @Test
  void movements_that_share_a_view_are_taken_together() {
    Predicate<List<Integer>> view = set -> set.size() == 1 || !set.contains(1);
    assertThat(new WorkOrder(before(3, true, true), view).pieces())
        .containsExactly(List.of(List.of(0, 2), List.of(1)));
  }

  /** Every order and every division of it is tried: the fewest setups, then the fewest pieces. */
  @Test
  void no_order_has_fewer_setups() {
    Random random = new Random(6);
    for (int round = 0; round < 150; round++) {
      int count = 1 + random.nextInt(5);
      boolean[][] before = new boolean[count][count];
      for (int pair = 0; pair < count * count; pair++) {
        before[pair / count][pair % count] = pair / count != pair % count && random.nextInt(3) > 0;
      }
      Set<List<Integer>> together = new HashSet<>();
      for (int set = 1; set < 1 << count; set++) {
        if (Integer.bitCount(set) == 1 || random.nextBoolean()) {
          together.add(members(set));
        }
      }
      Predicate<List<Integer>> view = set -> together.contains(set.stream().sorted().toList());
      List<List<List<Integer>>> pieces = new WorkOrder(before, view).pieces();
      assertThat(pieces.stream().flatMap(List::stream).flatMap(List::stream))
          .as("round %d: each once", round)
          .containsExactlyInAnyOrderElementsOf(IntStream.range(0, count).boxed().toList());
      assertThat(isAllowed(pieces, before, view)).as("round %d", round).isTrue();
      assertThat(cost(pieces)).as("round %d", round).isEqualTo(fewest(before, view, count));
    }
  }

  private static List<Integer> members(int set) {
    return IntStream.range(0, 8).filter(bit -> (set >> bit & 1) == 1).boxed().toList();
  }

  private static boolean isAllowed(
      List<List<List<Integer>>> pieces, boolean[][] before, Predicate<List<Integer>> view) {
    for (List<List<Integer>> piece : pieces) {
      List<Integer> order = piece.stream().flatMap(List::stream).toList();
      for (int i = 0; i < order.size(); i++) {
        for (int j = i + 1; j < order.size(); j++) {
          if (!before[order.get(i)][order.get(j)]) {
            return false;
          }
        }
      }
      if (!piece.stream().allMatch(view)) {
        return false;
      }
    }
    return true;
  }

  private static int cost(List<List<List<Integer>>> pieces) {
    return 100 * pieces.stream().mapToInt(List::size).sum() + pieces.size();
  }

  private static int fewest(boolean[][] before, Predicate<List<Integer>> view, int count) {
    int fewest = Integer.MAX_VALUE;
    for (List<Integer> order : orders(List.of(), count)) {
      for (int cuts = 0; cuts < Math.pow(3, count - 1); cuts++) {
        List<List<List<Integer>>> pieces = divided(order, cuts);
        if (cost(pieces) < fewest && isAllowed(pieces, before, view)) {
          fewest = cost(pieces);
        }
      }
    }
    return fewest;
  }

  private static List<List<Integer>> orders(List<Integer> begun, int count) {
    if (begun.size() == count) {
      return List.of(begun);
    }
    List<List<Integer>> orders = new ArrayList<>();
    for (int next = 0; next < count; next++) {
      if (!begun.contains(next)) {
        List<Integer> longer = new ArrayList<>(begun);
        longer.add(next);
        orders.addAll(orders(longer, count));
      }
    }
    return orders;
  }

  /** Between two movements stands nothing, the end of a setup, or the end of a piece. */
  private static List<List<List<Integer>>> divided(List<Integer> order, int cuts) {
    List<List<List<Integer>>> pieces = new ArrayList<>();
    int left = cuts;
    for (int at = 0; at < order.size(); at++) {
      int cut = at == 0 ? 2 : left % 3;
      left = at == 0 ? left : left / 3;
      if (cut == 2) {
        pieces.add(new ArrayList<>());
      }
      List<List<Integer>> piece = pieces.get(pieces.size() - 1);
      if (cut > 0) {
        piece.add(new ArrayList<>());
      }
      piece.get(piece.size() - 1).add(order.get(at));
    }
    return pieces;
  }

  @Test
  void very_many_movements_are_ordered_by_rule_and_never_against_it() {
    int count = WorkOrder.MOST_EXACT + 30;
    Random random = new Random(11);
    boolean[][] before = before(count, true, false);
    for (int i = 0; i < count; i++) {
      before[random.nextInt(count)][random.nextInt(count)] = false;
    }
    Predicate<List<Integer>> view = set -> set.size() < 4;
    WorkOrder order = new WorkOrder(before, view);
    assertThat(order.isExact()).isFalse();
    assertThat(isAllowed(order.pieces(), before, view)).isTrue();
    assertThat(order.pieces().stream().flatMap(List::stream).flatMap(List::stream))
        .containsExactlyInAnyOrderElementsOf(IntStream.range(0, count).boxed().toList());
  }
}
