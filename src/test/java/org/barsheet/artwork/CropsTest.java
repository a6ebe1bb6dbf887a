package org.barsheet.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import org.barsheet.plan.Rect;
import org.junit.jupiter.api.Test;

/** What is cut out of clips and photographs: plain proportion. */
class CropsTest {

  private static final Rect TALL = new Rect(3, 7, 2, 4);
  private static final Rect WIDE = new Rect(0, 0, 4, 2);

  @Test
  void of_an_upright_clip_a_tall_opening_takes_the_whole_height() {
    assertThat(ClipCrop.of(1080, 1920, TALL)).isEqualTo(new ClipCrop(60, 0, 960, 1920));
  }

  @Test
  void of_an_upright_clip_a_wide_opening_takes_the_whole_width_in_the_middle() {
    assertThat(ClipCrop.of(1080, 1920, WIDE)).isEqualTo(new ClipCrop(0, 690, 1080, 540));
  }

  @Test
  void a_clip_of_the_openings_shape_is_not_cut() {
    assertThat(ClipCrop.of(960, 1920, TALL)).isEqualTo(new ClipCrop(0, 0, 960, 1920));
  }

  @Test
  void the_crop_fills_the_opening_in_the_films_frame() {
    ClipCrop crop = ClipCrop.of(1080, 1920, TALL);
    assertThat(crop.scaleIn(new FrameRect(240, 560, 160, 320))).isEqualTo(1 / 6.0);
    assertThat(crop.scaleIn(new FrameRect(0, 0, 960, 1920))).isEqualTo(1);
  }

  @Test
  void a_part_of_a_photograph_is_told_in_shares_of_it() {
    Rect whole = new Rect(2, 1, 20, 10);
    assertThat(PhotographCrop.of(new Rect(7, 2, 10, 5), whole))
        .isEqualTo(new PhotographCrop(0.25, 0.1, 0.5, 0.5));
    assertThat(PhotographCrop.of(whole, whole)).isEqualTo(new PhotographCrop(0, 0, 1, 1));
  }

  @Test
  void a_key_color_at_the_limit_is_far_enough() {
    assertThat(new KeyColor("green", "00A03C", 32, "287850").isTooNear()).isFalse();
    assertThat(new KeyColor("green", "00A03C", 31.9, "287850").isTooNear()).isTrue();
  }
}
