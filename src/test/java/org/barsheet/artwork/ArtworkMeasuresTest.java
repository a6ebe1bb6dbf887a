package org.barsheet.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.barsheet.timing.Reveals.reveal;

import java.util.List;
import org.barsheet.plan.Camera;
import org.barsheet.plan.Film;
import org.barsheet.plan.Panel;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/**
 * Sizes of the artwork and what lens and sensor make of them. The values are plain arithmetic and
 * that of a thin lens (1/f = 1/d + 1/d′), worked out apart from this program.
 */
class ArtworkMeasuresTest {

  private static PlanBuilder plan() {
    return new PlanBuilder(new MusicBuilder().tempo(96).bars(24).motif("glimmer", 3, 1))
        .opening("lamp-1", "small-lamp")
        .opening("lamp-2", "small-lamp")
        .panel("", "")
        .field(0, 0, 24)
        .panel("glimmer 1", "", List.of(reveal("lamp-1", 20, 2)))
        .field(2, 6, 8)
        .panel("bar 9", "")
        .appears("celesta", "lamp-1")
        .field(2, 6, 6)
        .performer("celesta", "Celesta");
  }

  /** 24 squares across 1920 pixels are 80 a square; 6000 pixels to 1920 are 3.125 to one. */
  @Test
  void squares_pixels_and_headroom_hang_together() {
    ArtworkMeasures measures = ArtworkMeasures.of(plan().camera(6000, 4000).build());
    assertThat(measures.pixelsPerSquare()).isEqualTo(80);
    assertThat(measures.headroom()).hasValue(3.125);
    assertThat(measures.narrowestField()).hasValue(7.68);
  }

  @Test
  void the_direction_with_fewer_pixels_to_spare_counts() {
    assertThat(ArtworkMeasures.of(plan().camera(6000, 2160).build()).headroom()).hasValue(2.0);
  }

  @Test
  void nothing_is_said_of_headroom_without_a_camera() {
    ArtworkMeasures measures = ArtworkMeasures.of(plan().build());
    assertThat(measures.headroom()).isEmpty();
    assertThat(measures.narrowestField()).isEmpty();
  }

  @Test
  void an_opening_is_seen_largest_in_the_narrowest_panel_that_needs_it() {
    List<ArtworkMeasures.OpeningMeasure> openings = ArtworkMeasures.of(plan().build()).openings();
    assertThat(openings.get(0).closest().map(Panel::name)).contains("3");
    assertThat(openings.get(0).closestPixelsPerSquare()).isEqualTo(320);
    assertThat(openings.get(0).scale().millimeters(2)).isCloseTo(2 * 25.4 * 3, offset(1e-9));
    assertThat(openings.get(1).closest()).isEmpty();
  }

  @Test
  void the_camera_stands_where_a_thin_lens_would() {
    Film film = plan().build().film();
    Optics optics = new Optics(new Camera(50, 36, 6000, 4000), film);
    assertThat(optics.distance(609.6)).isCloseTo(896.7, offset(0.05));
    assertThat(optics.distance(152.4)).isCloseTo(261.7, offset(0.05));
  }

  /** The tip of a flap of 60 mm that stands upright. */
  @Test
  void what_stands_up_looks_larger_the_nearer_the_camera_is() {
    Optics optics = new Optics(new Camera(50, 36, 6000, 4000), plan().build().film());
    assertThat(optics.looming(609.6, 60)).isCloseTo(1.072, offset(0.0005));
    assertThat(optics.looming(152.4, 60)).isCloseTo(1.2975, offset(0.0005));
  }
}
