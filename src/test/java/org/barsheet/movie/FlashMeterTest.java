package org.barsheet.movie;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import org.barsheet.clock.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The thresholds of WCAG 2.2: "three flashes or below threshold" (2.3.1) and its definition of
 * "general flash and red flash thresholds" (w3.org/TR/WCAG22).
 */
class FlashMeterTest {

  private static final int WIDTH = 960;
  private static final int HEIGHT = 540;

  /**
   * A part of a frame that goes from one color to another and back, for three seconds at 24 fps.
   */
  private static FlashVerdict measured(Color one, Color other, int framesEach, int wide, int high) {
    FlashMeter meter = new FlashMeter(FrameRate.FPS_24);
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    for (int frame = 0; frame < 72; frame++) {
      pen.setColor(one);
      pen.fillRect(0, 0, WIDTH, HEIGHT);
      pen.setColor(frame / framesEach % 2 == 0 ? one : other);
      pen.fillRect(0, 0, wide, high);
      meter.look(image, HEIGHT, frame);
    }
    return meter.worst();
  }

  private static FlashVerdict whole(Color one, Color other, int framesEach) {
    return measured(one, other, framesEach, WIDTH, HEIGHT);
  }

  /** At 24 fps a color for 3 frames gives 4 flashes a second, for 4 frames 3, for 12 frames 1. */
  @ParameterizedTest
  @CsvSource({"3, 4", "4, 3", "6, 2", "12, 1"})
  void flashes_are_pairs_of_changes_within_a_second(int framesEach, int flashes) {
    FlashVerdict worst = whole(Color.BLACK, Color.WHITE, framesEach);
    assertThat(worst.flashes()).isEqualTo(flashes);
    assertThat(worst.isOver()).isEqualTo(flashes > 3);
    assertThat(worst.share()).isEqualTo(1);
  }

  /** Gray 89 has a relative luminance of 0.100, gray 85 of 0.091. */
  @Test
  void a_change_of_less_than_a_tenth_of_the_luminance_is_none() {
    assertThat(whole(Color.BLACK, new Color(90, 90, 90), 3).isOver()).isTrue();
    assertThat(whole(Color.BLACK, new Color(85, 85, 85), 3).flashes()).isZero();
  }

  /** Gray 231 has a relative luminance of 0.799, gray 232 of 0.807: from there to white 0.19. */
  @Test
  void a_change_between_two_bright_states_is_none() {
    assertThat(whole(new Color(231, 231, 231), Color.WHITE, 3).isOver()).isTrue();
    assertThat(whole(new Color(233, 233, 233), Color.WHITE, 3).flashes()).isZero();
  }

  /** A quarter of a third by a third of the frame: 320 by 180 pixels, so 14,400 of them. */
  @Test
  void a_small_part_of_the_frame_may_flash_faster() {
    assertThat(measured(Color.BLACK, Color.WHITE, 3, 160, 100).isOver()).isTrue();
    assertThat(measured(Color.BLACK, Color.WHITE, 3, 160, 80).flashes()).isZero();
  }

  /** Pure red and a dark gray of its luminance, 0.2126: only the red changes. */
  @Test
  void saturated_red_counts_by_itself() {
    FlashVerdict worst = whole(Color.RED, new Color(127, 127, 127), 3);
    assertThat(worst.isOver()).isTrue();
    assertThat(worst.red()).isTrue();
    assertThat(whole(new Color(0, 120, 160), new Color(0, 128, 0), 3).red()).isFalse();
  }

  @Test
  void what_changes_slowly_flashes_no_more_often_than_it_turns_back() {
    FlashMeter meter = new FlashMeter(FrameRate.FPS_24);
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    for (int frame = 0; frame < 240; frame++) {
      int gray = frame < 120 ? 2 * frame : 480 - 2 * frame;
      pen.setColor(new Color(gray, gray, gray));
      pen.fillRect(0, 0, WIDTH, HEIGHT);
      meter.look(image, HEIGHT, frame);
    }
    assertThat(meter.worst().flashes()).isZero();
  }
}
