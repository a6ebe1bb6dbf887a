package org.barsheet.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.barsheet.clock.FrameRate;
import org.barsheet.findings.FlashRule.Change;
import org.barsheet.findings.FlashRule.Stretch;
import org.barsheet.findings.FlashRule.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * WCAG 2.3.1: no more than three flashes in any one-second period. Four openings within less than a
 * second are more, in exactly a second at the limit.
 */
class FlashRuleTest {

  private static List<Stretch> opening(FrameRate rate, long... frames) {
    return new FlashRule(changes(true, frames), rate).stretches();
  }

  private static List<Change> changes(boolean brighter, long... frames) {
    List<Change> changes = new ArrayList<>();
    for (long frame : frames) {
      changes.add(new Change(frame, brighter, "lamp-" + frame, 0.02));
    }
    return changes;
  }

  @Test
  void three_in_a_second_are_allowed() {
    assertThat(opening(FrameRate.FPS_24, 0, 1, 2, 100, 101, 102)).isEmpty();
  }

  /** At 24 fps three flashes a second are 8 frames apart; 9 apart are safe. */
  @Test
  void four_within_a_second_are_not() {
    assertThat(opening(FrameRate.FPS_24, 0, 7, 14, 21))
        .extracting(Stretch::verdict)
        .containsExactly(Verdict.OVER);
    assertThat(opening(FrameRate.FPS_24, 0, 8, 16, 24))
        .extracting(Stretch::verdict)
        .containsExactly(Verdict.AT_THE_LIMIT);
    assertThat(opening(FrameRate.FPS_24, 0, 9, 18, 27)).isEmpty();
  }

  /**
   * Frames between openings that are safe at common rates, 360 ms or more, and one frame less than
   * a third of a second, which is not (arithmetic on WCAG's three flashes a second).
   */
  @ParameterizedTest
  @CsvSource({"24, 9, 7", "25, 9, 8", "30, 11, 9", "48, 18, 15", "50, 18, 16", "60, 22, 19"})
  void a_third_of_a_second_apart_is_the_limit_at_every_rate(String rate, long safe, long fast) {
    FrameRate frames = FrameRate.parse(rate);
    assertThat(opening(frames, 0, safe, 2 * safe, 3 * safe, 4 * safe)).isEmpty();
    assertThat(opening(frames, 0, fast, 2 * fast, 3 * fast))
        .extracting(Stretch::verdict)
        .containsExactly(Verdict.OVER);
  }

  /** A flash is a pair of opposing changes: an opening that closes again is one. */
  @Test
  void openings_and_closings_are_pairs() {
    List<Change> pairs = new ArrayList<>();
    for (int at = 0; at < 3; at++) {
      pairs.addAll(changes(true, 8L * at));
      pairs.addAll(changes(false, 8L * at + 4));
    }
    assertThat(new FlashRule(pairs, FrameRate.FPS_24).stretches()).isEmpty();
    pairs.addAll(changes(true, 23));
    assertThat(new FlashRule(pairs, FrameRate.FPS_24).stretches())
        .containsExactly(new Stretch(Verdict.OVER, 0, 23, 4, 3, 0, 4, 0.14));
  }

  @Test
  void a_long_stretch_is_told_once_with_its_worst_second() {
    assertThat(opening(FrameRate.FPS_25, 0, 5, 10, 15, 16, 17, 18, 300))
        .containsExactly(new Stretch(Verdict.OVER, 0, 18, 7, 0, 0, 7, 0.14));
  }

  @Test
  void one_part_that_opens_again_and_again_counts_its_area_once() {
    List<Change> same =
        List.of(
            new Change(0, true, "lamp", 0.02),
            new Change(5, true, "lamp", 0.02),
            new Change(10, true, "lamp", 0.02),
            new Change(15, true, "lamp", 0.02));
    Stretch stretch = new FlashRule(same, FrameRate.FPS_24).stretches().get(0);
    assertThat(stretch.worstArea()).isEqualTo(0.02);
    assertThat(stretch.isSmall()).isTrue();
  }

  @Test
  void a_part_that_is_seen_larger_later_counts_at_its_largest() {
    List<Change> nearer =
        List.of(
            new Change(0, true, "lamp", 0.020),
            new Change(5, true, "lamp", 0.025),
            new Change(10, true, "lamp", 0.030),
            new Change(15, true, "lamp", 0.035));
    Stretch stretch = new FlashRule(nearer, FrameRate.FPS_24).stretches().get(0);
    assertThat(stretch.worstArea()).isEqualTo(0.035);
    assertThat(stretch.isSmall()).isFalse();
  }

  /** The six are 1.8 % of the frame together, the four 80 %. */
  @Test
  void four_large_openings_do_not_hide_behind_six_small_lamps() {
    List<Change> changes = new ArrayList<>();
    for (long frame = 0; frame < 6; frame++) {
      changes.add(new Change(frame, true, "lamp-" + frame, 0.003));
    }
    for (long frame = 26; frame < 30; frame++) {
      changes.add(new Change(frame, true, "gate-" + frame, 0.2));
    }
    Stretch stretch = new FlashRule(changes, FrameRate.FPS_24).stretches().get(0);
    assertThat(stretch.verdict()).isEqualTo(Verdict.OVER);
    assertThat(stretch.isSmall()).isFalse();
    assertThat(stretch.worstArea()).isCloseTo(0.8, offset(1e-9));
    assertThat(stretch.worstFrame()).isEqualTo(26);
  }

  /**
   * WCAG 2.2, Understanding 2.3.1: 21,824 of the pixels of 1024 by 768 may flash, a quarter of a
   * field of 341 by 256.
   */
  @Test
  void the_small_area_is_that_of_wcag() {
    assertThat(FlashRule.SMALL_AREA * 1024 * 768).isCloseTo(21_824, offset(0.5));
  }

  /** An independent sliding window: from every frame of the film it counts one second ahead. */
  @Test
  void it_agrees_with_a_window_that_slides_frame_by_frame() {
    Random random = new Random(7);
    for (int round = 0; round < 500; round++) {
      List<Change> changes = new ArrayList<>();
      for (long at = 0; changes.size() < 14; at += random.nextInt(12)) {
        changes.add(new Change(at, random.nextInt(3) > 0, "lamp-" + changes.size(), 0.1));
      }
      boolean over = false;
      boolean atLimit = false;
      for (long from = 0; from < 200; from++) {
        over |= mostAlike(changes, from, from + 23) > 3;
        atLimit |= mostAlike(changes, from, from + 24) > 3;
      }
      List<Stretch> stretches = new FlashRule(changes, FrameRate.FPS_24).stretches();
      assertThat(stretches.stream().anyMatch(s -> s.verdict() == Verdict.OVER))
          .as("%s", changes)
          .isEqualTo(over);
      assertThat(!stretches.isEmpty()).as("%s", changes).isEqualTo(atLimit);
    }
  }

  private static long mostAlike(List<Change> changes, long first, long last) {
    long brighter = count(changes, true, first, last);
    return Math.max(brighter, count(changes, false, first, last));
  }

  private static long count(List<Change> changes, boolean brighter, long first, long last) {
    return changes.stream()
        .filter(c -> c.brighter() == brighter && c.frame() >= first && c.frame() <= last)
        .count();
  }
}
