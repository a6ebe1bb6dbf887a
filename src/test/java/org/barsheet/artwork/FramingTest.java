package org.barsheet.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.barsheet.clock.FrameSpan;
import org.barsheet.plan.Field;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Slow;
import org.junit.jupiter.api.Test;

/** Fields and pixels; the checks are plain arithmetic, worked by hand. */
class FramingTest {

  private static final Offset<Double> TENTH = within(0.05);
  private static final Offset<Double> EXACT = within(1e-9);
  private static final Rect WHOLE = new Rect(0, 0, 24, 13.5);
  private static final Rect OPENING = new Rect(3, 7, 2, 4);

  private static Framing framing(Rect from, Rect to, Slow slow, long frames) {
    return new Framing(new FrameSpan(100, 100 + frames), new Field(from, to, slow), 1920, 1080);
  }

  /** Ends on a field 6 squares wide about (4, 9), 48 frames after the whole. */
  private static Framing pushIn(Slow slow) {
    return framing(WHOLE, new Rect(1, 7.3125, 6, 3.375), slow, 49);
  }

  private static void assertRect(FrameRect rect, double left, double top, double w, double h) {
    assertThat(rect.left()).isCloseTo(left, TENTH);
    assertThat(rect.top()).isCloseTo(top, TENTH);
    assertThat(rect.width()).isCloseTo(w, TENTH);
    assertThat(rect.height()).isCloseTo(h, TENTH);
  }

  /** 24 × 13.5 squares at 1920 × 1080 are 80 pixels a square. */
  @Test
  void an_opening_under_a_still_camera_lies_at_its_squares_times_the_pixels_of_one() {
    Framing still = framing(WHOLE, WHOLE, Slow.NONE, 10);
    assertThat(still.pixelsPerSquare(105)).isEqualTo(80);
    assertThat(still.inFrame(OPENING, 100)).isEqualTo(new FrameRect(240, 560, 160, 320));
    assertThat(still.inFrame(OPENING, 109)).isEqualTo(new FrameRect(240, 560, 160, 320));
  }

  /** W = 24·(6/24)^(24/48) = 12, two thirds of the way: center (6.667, 8.25). */
  @Test
  void a_push_in_narrows_by_the_same_factor_in_equal_times() {
    Framing push = pushIn(Slow.NONE);
    Rect middle = push.fieldAt(124);
    assertThat(middle.width()).isCloseTo(12, EXACT);
    assertThat(middle.left() + middle.width() / 2).isCloseTo(12 - 16 / 3.0, EXACT);
    assertThat(middle.top() + middle.height() / 2).isCloseTo(8.25, EXACT);
    assertThat(push.fieldAt(112).width()).isCloseTo(24 / Math.sqrt(2), EXACT);
    assertRect(push.inFrame(OPENING, 124), 373.3, 340, 320, 640);
    assertRect(push.inFrame(OPENING, 148), 640, -100, 640, 1280);
  }

  @Test
  void a_move_ends_exactly_where_the_plan_says() {
    for (Slow slow : Slow.values()) {
      Framing push = pushIn(slow);
      assertThat(push.fieldAt(100)).isEqualTo(push.field().from());
      assertThat(push.fieldAt(148)).isEqualTo(push.field().to());
    }
  }

  @Test
  void a_pan_goes_by_equal_steps() {
    Framing pan = framing(new Rect(0, 4, 12, 6.75), new Rect(6, 4, 12, 6.75), Slow.NONE, 61);
    assertThat(pan.fieldAt(110).left()).isCloseTo(1, EXACT);
    assertThat(pan.fieldAt(130).left()).isCloseTo(3, EXACT);
    assertThat(pan.fieldAt(130).width()).isEqualTo(12);
  }

  /** At half the time 1 − (1 − ½)² is three quarters of the way, ½² one quarter. */
  @Test
  void a_pan_is_slow_where_the_plan_says() {
    Rect from = new Rect(0, 4, 12, 6.75);
    Rect to = new Rect(8, 4, 12, 6.75);
    assertThat(framing(from, to, Slow.END, 61).fieldAt(130).left()).isCloseTo(6, EXACT);
    assertThat(framing(from, to, Slow.START, 61).fieldAt(130).left()).isCloseTo(2, EXACT);
    assertThat(framing(from, to, Slow.BOTH, 61).fieldAt(115).left()).isCloseTo(1.25, EXACT);
  }

  @Test
  void a_shot_of_one_frame_shows_the_field_it_starts_with() {
    Framing one = framing(WHOLE, new Rect(1, 7.3125, 6, 3.375), Slow.NONE, 1);
    assertThat(one.fieldAt(100)).isEqualTo(WHOLE);
  }

  @Test
  void a_frame_of_another_shot_is_refused() {
    assertThatThrownBy(() -> pushIn(Slow.NONE).fieldAt(149))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void what_lies_outside_the_frame_is_cut_off() {
    FrameRect height = new FrameRect(640, -100, 640, 1280);
    assertThat(height.within(1920, 1080)).isEqualTo(new FrameRect(640, 0, 640, 1080));
    assertThat(height.shareWithin(1920, 1080)).isCloseTo(1080 / 1280.0, EXACT);
    FrameRect away = new FrameRect(2000, 10, 50, 50);
    assertThat(away.within(1920, 1080)).isEqualTo(new FrameRect(1920, 10, 0, 50));
    assertThat(away.shareWithin(1920, 1080)).isZero();
  }

  @Test
  void every_field_of_a_move_has_the_frame_s_shape_and_lies_between_its_ends() {
    Random random = new Random(20261125);
    for (int trial = 0; trial < 500; trial++) {
      Framing move =
          framing(
              field(random),
              field(random),
              List.of(Slow.values()).get(random.nextInt(4)),
              2 + random.nextInt(100));
      Rect from = move.field().from();
      Rect to = move.field().to();
      for (long frame = 100; frame < move.frames().endExclusive(); frame++) {
        Rect seen = move.fieldAt(frame);
        assertThat(seen.height() / seen.width()).isCloseTo(1080.0 / 1920, EXACT);
        assertThat(seen.left())
            .isBetween(
                Math.min(from.left(), to.left()) - 1e-9, Math.max(from.left(), to.left()) + 1e-9);
        assertThat(move.inFrame(seen, frame).width()).isCloseTo(1920, within(1e-6));
      }
    }
  }

  private static Rect field(Random random) {
    double width = 2 + 22 * random.nextDouble();
    return new Rect(10 * random.nextDouble(), 5 * random.nextDouble(), width, width * 1080 / 1920);
  }
}
