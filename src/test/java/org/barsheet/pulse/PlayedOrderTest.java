package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.barsheet.input.SyntaxException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlayedOrderTest {

  @Test
  void ranges_are_played_one_after_the_other() {
    PlayedOrder order = PlayedOrder.parse(" 1-3,2 - 3, 5");
    assertThat(order.numbers()).containsExactly(1, 2, 3, 2, 3, 5);
    assertThat(order).hasToString("1-3, 2-3, 5");
    assertThat(PlayedOrder.parse(order.toString())).isEqualTo(order);
  }

  @ParameterizedTest
  @CsvSource({
    "'', 0",
    "'1-3, ', 4",
    "'1-3, x', 5",
    "'1-3, 9-5', 5",
    "'1--3', 0",
    "'1-3; 5', 0",
    "'1-3 #2', 0",
    "'1-999999, 1-2', 0"
  })
  void what_is_no_order_is_refused_at_the_range_that_is_wrong(String text, int offset) {
    SyntaxException refused =
        catchThrowableOfType(SyntaxException.class, () -> PlayedOrder.parse(text));
    assertThat(refused.offset()).isEqualTo(offset);
    assertThat(refused.remedy()).contains("1-16, 9-15, 17-40");
  }
}
