package org.barsheet.shooting;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.plan.Shoot;
import org.barsheet.shooting.DayFiller.Piece;
import org.junit.jupiter.api.Test;

/** Setups on working days. Ten photographs an hour, half an hour to set up, four hours a day. */
class CalendarTest {

  private static final Rates RATES =
      Rates.of(new Shoot(10, 30, Optional.of(LocalDate.of(2026, 3, 2)), Optional.of(4.0)));

  private static Piece piece(int photographs) {
    double[] steps = new double[photographs - 1];
    Arrays.fill(steps, 1);
    return new Piece(DoubleStream.of(steps).boxed().toList());
  }

  private static List<Slot> slots(List<List<Piece>> setups) {
    return new Calendar(RATES, setups, (setup, other) -> false).slots();
  }

  private static boolean isParted(Slot slot, List<List<Piece>> setups) {
    return slot.piece() >= 0
        && slot.to() - slot.from() < setups.get(slot.setup()).get(slot.piece()).photographs();
  }

  @Test
  void another_order_of_the_same_setups_in_the_same_days_parts_no_movement() {
    List<List<Piece>> setups =
        List.of(List.of(piece(20)), List.of(piece(30)), List.of(piece(5)), List.of(piece(5)));
    List<Slot> slots = slots(setups);
    assertThat(slots).noneMatch(slot -> isParted(slot, setups));
    assertThat(slots.stream().map(Slot::setup).distinct()).containsExactly(0, 2, 1, 3);
    assertThat(RATES.dayOf(slots.get(slots.size() - 1).begins())).isEqualTo(2);
  }

  @Test
  void setups_that_share_paper_keep_their_order() {
    List<List<Piece>> setups =
        List.of(List.of(piece(20)), List.of(piece(30)), List.of(piece(5)), List.of(piece(5)));
    List<Slot> slots = new Calendar(RATES, setups, (setup, other) -> other < setup).slots();
    assertThat(slots.stream().map(Slot::setup).distinct()).containsExactly(0, 1, 2, 3);
  }

  /** 100 photographs are ten hours: the third night falls before the smallest step nearby. */
  @Test
  void a_movement_longer_than_a_day_is_parted_where_it_moves_least() {
    double[] steps = new double[99];
    Arrays.fill(steps, 2);
    steps[30] = 1; // from the 31st photograph to the 32nd
    List<List<Piece>> setups = List.of(List.of(new Piece(DoubleStream.of(steps).boxed().toList())));
    List<Slot> slots = slots(setups);
    assertThat(slots).extracting(Slot::to).containsExactly(0, 31, 71, 100);
    assertThat(slots).extracting(slot -> RATES.dayOf(slot.begins())).containsExactly(1, 1, 2, 3);
  }

  @Test
  void a_photograph_that_is_begun_is_finished() {
    List<List<Piece>> setups = List.of(List.of(piece(41)));
    Rates odd = Rates.of(new Shoot(7, 30, Optional.empty(), Optional.of(4.0)));
    List<Slot> slots = new Calendar(odd, setups, (setup, other) -> false).slots();
    assertThat(slots.stream().mapToInt(slot -> slot.to() - slot.from()).sum()).isEqualTo(41);
    // 3.5 hours are left of the first day: 24.5 photographs.
    assertThat(slots.get(1).to()).isEqualTo(25);
  }

  /** Every order is tried, with a clock of the test's own in photographs' time. */
  @Test
  void where_some_order_parts_none_none_is_parted() {
    int reordered = 0;
    int parted = 0;
    for (int seed = 1; seed <= 150; seed++) {
      Random random = new Random(seed);
      List<List<Piece>> setups = new ArrayList<>();
      for (int count = 2 + random.nextInt(4); count > 0; count--) {
        setups.add(List.of(piece(3 + random.nextInt(33))));
      }
      List<Slot> slots = slots(setups);
      boolean whole = slots.stream().noneMatch(slot -> isParted(slot, setups));
      assertThat(whole).as("seed %d", seed).isEqualTo(canBeWhole(setups));
      List<Integer> order = slots.stream().map(Slot::setup).distinct().toList();
      assertThat(order).hasSize(setups.size());
      int work = setups.stream().mapToInt(setup -> 5 + setup.get(0).photographs()).sum();
      BigFraction end = slots.get(slots.size() - 1).ends();
      assertThat(end.doubleValue()).isLessThanOrEqualTo(4.0 * Math.ceil(work / 40.0) + 1e-9);
      parted += whole ? 0 : 1;
      reordered += order.equals(order.stream().sorted().toList()) ? 0 : 1;
    }
    assertThat(parted).isGreaterThan(10);
    assertThat(reordered).isGreaterThan(10);
  }

  private static boolean canBeWhole(List<List<Piece>> setups) {
    int[] lengths = setups.stream().mapToInt(setup -> setup.get(0).photographs()).toArray();
    int days = (IntStream.of(lengths).sum() + 5 * lengths.length + 39) / 40;
    return fits(lengths, new boolean[lengths.length], 0, 40 * days);
  }

  private static boolean fits(int[] lengths, boolean[] done, int at, int limit) {
    boolean all = true;
    for (int next = 0; next < lengths.length; next++) {
      if (!done[next]) {
        all = false;
        int end = placed(at + 5, lengths[next]);
        done[next] = true;
        boolean fits = end <= limit && fits(lengths, done, end, limit);
        done[next] = false;
        if (fits) {
          return true;
        }
      }
    }
    return all;
  }

  /**
   * When work of a length is done that begins now, or in the morning where the day is too short.
   */
  private static int placed(int at, int length) {
    int left = 40 - at % 40;
    return (length <= left ? at : at + left) + length;
  }
}
