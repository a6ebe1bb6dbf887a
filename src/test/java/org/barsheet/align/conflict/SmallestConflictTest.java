package org.barsheet.align.conflict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.align.PanelAligner;
import org.barsheet.align.conflict.Conflict.Wish;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.LengthTable;
import org.barsheet.input.InputException;
import org.barsheet.timing.RandomPlans;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** An explanation blames nothing that is not to blame. */
class SmallestConflictTest {

  @Test
  void of_wishes_it_finds_those_that_clash() {
    List<Integer> clash =
        SmallestConflict.among(
            List.of(1, 2, 3, 4, 5, 6, 7), kept -> !kept.containsAll(List.of(2, 5, 6)));
    assertThat(clash).containsExactlyInAnyOrder(2, 5, 6);
  }

  @Test
  void dropping_any_one_wish_of_a_conflict_makes_the_rest_possible() {
    assertThat(explained(1, 150)).isGreaterThan(30);
  }

  @Test
  @Tag("trial")
  void dropping_any_one_wish_makes_the_rest_possible_in_thousands_of_plans() {
    assertThat(explained(10_000, 5_000)).isGreaterThan(1_000);
  }

  /** How many plans of a run had a conflict. */
  private static int explained(long firstSeed, int count) {
    int conflicts = 0;
    for (long seed = firstSeed; seed < firstSeed + count; seed++) {
      AlignerInput input = new RandomPlans(seed, 8, 6, true).next().input();
      if (!canBeRead(input)) {
        continue;
      }
      Conflicts of = new Conflicts(input, new LengthTable(input.ruler(), input.filmFrames()));
      for (Conflict conflict : of.all()) {
        check(seed, of, conflict.wishes());
        conflicts++;
      }
    }
    return conflicts;
  }

  private static boolean canBeRead(AlignerInput input) {
    try {
      new PanelAligner(input);
      return true;
    } catch (InputException unfound) {
      return false;
    }
  }

  private static void check(long seed, Conflicts of, List<Wish> wishes) {
    assertThat(of.isPossible(wishes)).as("seed %d", seed).isFalse();
    for (Wish wish : wishes) {
      List<Wish> rest = new ArrayList<>(wishes);
      rest.remove(wish);
      assertThat(of.isPossible(rest)).as("seed %d without %s", seed, wish).isTrue();
    }
  }
}
