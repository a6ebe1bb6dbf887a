package org.barsheet.handoff.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SpreadTest {

  @Test
  void labels_with_room_stay_where_they_are() {
    assertThat(Spread.apart(List.of(1.0, 5.0, 9.0), 2, 0, 20)).containsExactly(1.0, 5.0, 9.0);
  }

  @Test
  void labels_that_touch_are_moved_apart_about_their_middle() {
    assertThat(Spread.apart(List.of(5.0, 5.0), 2, 0, 20)).containsExactly(4.0, 6.0);
  }

  @Test
  void labels_stay_between_the_ends() {
    assertThat(Spread.apart(List.of(0.0, 0.0, 0.0), 2, 1, 20)).containsExactly(1.0, 3.0, 5.0);
    assertThat(Spread.apart(List.of(20.0, 20.0), 2, 1, 20)).containsExactly(18.0, 20.0);
  }

  @Test
  void hundreds_of_labels_keep_their_order_and_their_gap() {
    Random random = new Random(3);
    for (int trial = 0; trial < 200; trial++) {
      List<Double> wanted = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(40); i++) {
        wanted.add(100 * random.nextDouble());
      }
      wanted.sort(null);
      List<Double> places = Spread.apart(wanted, 2, 0, 100);
      for (int i = 1; i < places.size(); i++) {
        assertThat(places.get(i) - places.get(i - 1)).isGreaterThanOrEqualTo(2 - 1e-9);
      }
      double moved = 0;
      for (int i = 0; i < places.size(); i++) {
        moved += places.get(i) - wanted.get(i);
      }
      boolean free = places.get(0) > 0.01 && places.get(places.size() - 1) < 99.99;
      assertThat(free ? moved : 0).as("trial %d", trial).isCloseTo(0, within(1e-6));
    }
  }
}
