package org.barsheet.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.barsheet.plan.Rect;
import org.junit.jupiter.api.Test;

/** Rectangles of the artwork, in squares from its upper left corner, and of the frame. */
class RectsTest {

  private static final Rect RECT = new Rect(3, 7, 2, 4);

  @Test
  void rectangles_overlap_where_they_share_width_and_height() {
    assertThat(Rects.meet(RECT, new Rect(4, 10, 5, 5))).isTrue();
    assertThat(Rects.sharedWide(RECT, new Rect(4, 10, 5, 5))).isEqualTo(1);
    assertThat(Rects.sharedHigh(RECT, new Rect(4, 9, 5, 5))).isEqualTo(2);
    assertThat(Rects.meet(RECT, new Rect(3.5, 8, 1, 1))).isTrue();
  }

  @Test
  void to_touch_along_an_edge_or_at_a_corner_is_not_to_overlap() {
    assertThat(Rects.meet(RECT, new Rect(5, 7, 2, 4))).isFalse();
    assertThat(Rects.meet(RECT, new Rect(1, 7, 2, 4))).isFalse();
    assertThat(Rects.meet(RECT, new Rect(3, 11, 2, 4))).isFalse();
    assertThat(Rects.meet(RECT, new Rect(3, 3, 2, 4))).isFalse();
    assertThat(Rects.meet(RECT, new Rect(5, 11, 2, 4))).isFalse();
  }

  @Test
  void what_differs_by_rounding_only_touches() {
    assertThat(Rects.meet(new Rect(0.1, 0, 0.2, 1), new Rect(0.3, 0, 1, 1))).isFalse();
  }

  @Test
  void a_rectangle_moves_to_the_right_and_down() {
    assertThat(Rects.moved(RECT, 1, -2)).isEqualTo(new Rect(4, 5, 2, 4));
  }

  @Test
  void one_around_others_reaches_to_their_outermost_edges() {
    assertThat(Rects.around(List.of(RECT))).isEqualTo(RECT);
    assertThat(Rects.around(List.of(RECT, new Rect(1, 9, 1, 6), new Rect(6, 8, 3, 1))))
        .isEqualTo(new Rect(1, 7, 8, 8));
  }

  @Test
  void one_of_a_shape_holds_the_other_about_the_same_middle() {
    assertThat(Rects.shaped(RECT, 0.5)).isEqualTo(new Rect(0, 7, 8, 4));
    assertThat(Rects.shaped(RECT, 4)).isEqualTo(new Rect(3, 5, 2, 8));
    assertThat(Rects.shaped(RECT, 2)).isEqualTo(RECT);
  }

  @Test
  void what_lies_beyond_any_edge_of_the_frame_is_cut_off() {
    assertThat(new FrameRect(-30, -10, 40, 15).within(1920, 1080))
        .isEqualTo(new FrameRect(0, 0, 10, 5));
    assertThat(new FrameRect(1910, 1070, 40, 40).within(1920, 1080))
        .isEqualTo(new FrameRect(1910, 1070, 10, 10));
    assertThat(new FrameRect(1910, 1070, 40, 40).shareWithin(1920, 1080)).isEqualTo(1 / 16.0);
    assertThat(new FrameRect(-50, -50, 10, 10).shareWithin(1920, 1080)).isZero();
  }

  @Test
  void a_rectangle_without_area_has_no_share_in_the_frame() {
    assertThat(new FrameRect(10, 10, 0, 20).shareWithin(1920, 1080)).isZero();
    assertThatIllegalArgumentException().isThrownBy(() -> new FrameRect(0, 0, -1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new FrameRect(0, 0, 1, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> new FrameRect(0, 0, Double.NaN, 1));
  }
}
