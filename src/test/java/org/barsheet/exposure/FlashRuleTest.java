package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.barsheet.clock.FrameRate;
import org.barsheet.exposure.FlashRule.Verdict;
import org.junit.jupiter.api.Test;

/**
 * WCAG 2.3.1: no more than three flashes in any one-second period. Four changes within less than a
 * second are more, in exactly a second at the limit.
 */
class FlashRuleTest {

  private static List<FlashRule.Stretch> check(FrameRate rate, Long... frames) {
    return FlashRule.check(List.of(frames), rate);
  }

  @Test
  void three_in_a_second_are_allowed() {
    assertThat(check(FrameRate.FPS_24, 0L, 1L, 2L, 100L, 101L, 102L)).isEmpty();
  }

  /** At 24 frames a second three flashes a second are 8 frames apart; 9 apart are safe. */
  @Test
  void four_within_a_second_are_not() {
    assertThat(check(FrameRate.FPS_24, 0L, 7L, 14L, 21L))
        .containsExactly(new FlashRule.Stretch(Verdict.OVER, 0, 21, 4));
    assertThat(check(FrameRate.FPS_24, 0L, 8L, 16L, 24L))
        .containsExactly(new FlashRule.Stretch(Verdict.AT_THE_LIMIT, 0, 24, 4));
    assertThat(check(FrameRate.FPS_24, 0L, 9L, 18L, 27L)).isEmpty();
  }

  @Test
  void a_long_stretch_is_told_once() {
    assertThat(check(FrameRate.FPS_25, 0L, 5L, 10L, 15L, 20L, 25L, 300L))
        .containsExactly(new FlashRule.Stretch(Verdict.OVER, 0, 25, 6));
  }

  /** An independent sliding window: every change looks one second ahead. */
  @Test
  void it_agrees_with_counting_ahead_from_every_change() {
    Random random = new Random(7);
    for (int round = 0; round < 500; round++) {
      List<Long> frames = new ArrayList<>();
      for (long at = 0; frames.size() < 12; at += random.nextInt(14)) {
        frames.add(at);
      }
      boolean over = false;
      for (long from : frames) {
        over |= frames.stream().filter(f -> f >= from && f < from + 24).count() > 3;
      }
      boolean told =
          FlashRule.check(frames, FrameRate.FPS_24).stream()
              .anyMatch(stretch -> stretch.verdict() == Verdict.OVER);
      assertThat(told).as("%s", frames).isEqualTo(over);
    }
  }
}
