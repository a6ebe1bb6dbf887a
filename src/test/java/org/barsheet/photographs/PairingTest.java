package org.barsheet.photographs;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PairingTest {

  private static final double[] PLANNED = {0, 0.1, 0.2, 0.3, 0.4, 0.5};

  private static Pairing.Paired paired(double... measured) {
    return new Pairing(measured, PLANNED, 0.01).best();
  }

  @Test
  void as_many_as_planned_are_paired_in_order_though_one_step_is_wrong() {
    assertThat(paired(0, 0.1, 0.2, 0.36, 0.4, 0.5).planned()).containsExactly(0, 1, 2, 3, 4, 5);
    assertThat(paired(0, 0.1, 0.2, 0.36, 0.4, 0.5).isPlain()).isTrue();
  }

  @Test
  void of_two_alike_the_one_taken_last_is_kept() {
    assertThat(paired(0, 0.1, 0.2, 0.2, 0.3, 0.4, 0.5).planned())
        .containsExactly(0, 1, -1, 2, 3, 4, 5);
  }

  @Test
  void one_is_missing_where_the_step_is_double() {
    assertThat(paired(0, 0.1, 0.3, 0.4, 0.5).missing()).containsExactly(2);
  }

  @Test
  void two_that_fit_each_other_s_place_changed_places() {
    Pairing.Paired exchanged = paired(0, 0.1, 0.3, 0.2, 0.4, 0.5);
    assertThat(exchanged.exchanged()).containsExactly(2, 3);
    assertThat(exchanged.planned()).containsExactly(0, 1, 3, 2, 4, 5);
  }
}
