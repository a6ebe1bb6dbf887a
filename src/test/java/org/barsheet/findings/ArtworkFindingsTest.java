package org.barsheet.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Delivery;
import org.barsheet.plan.Film;
import org.barsheet.plan.Hand;
import org.barsheet.plan.MusicRequest;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Plan;
import org.barsheet.plan.PlanText;
import org.barsheet.plan.Rect;
import org.barsheet.plan.SentClips;
import org.barsheet.plan.Where;
import org.barsheet.plan.Workshop;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.timing.Finding;
import org.junit.jupiter.api.Test;

/** Openings are measured at their model's size; a square is an inch. */
class ArtworkFindingsTest {

  private static final Film FILM =
      new Film(
          FrameRate.FPS_24,
          Timecode.parse(FrameRate.FPS_24, "01:00:00:00"),
          Seconds.ZERO,
          Film.MusicFrom.START_OF_FILE,
          2,
          0,
          12,
          Seconds.ZERO,
          1920,
          1080,
          Optional.of(Film.USUAL_POP),
          Film.Paper.A4);

  private static List<Finding> findings(double smallest, Opening... openings) {
    Artwork artwork =
        new Artwork(
            25.4,
            24,
            13.5,
            List.of(),
            smallest,
            List.of(
                new Artwork.Model("quay", 1, "", ""), new Artwork.Model("small-lamp", 3, "", "")));
    Plan plan =
        new Plan(
            PlanText.of(Path.of("quay.yaml")),
            "Lamplighters' Quay",
            FILM,
            new MusicRequest(Path.of("quay.mid"), TempoRequest.DEFAULT, Optional.empty()),
            List.of(),
            new Workshop(
                artwork, List.of(openings), Optional.empty(), Hand.DEFAULT, Optional.empty()),
            List.of(),
            SentClips.NONE,
            Delivery.NONE,
            List.of());
    return new ArtworkFindings(plan).all();
  }

  private static Opening opening(String name, Rect rect, String model) {
    return new Opening(
        name,
        rect,
        model,
        new Opening.Hinged(Opening.Side.LEFT, 90),
        List.of(),
        new Where("quay.yaml", "openings"));
  }

  @Test
  void an_opening_too_small_for_a_hand_is_told_with_the_model_it_wants() {
    Finding small = findings(40, opening("hatch", new Rect(3, 10.95, 1, 0.7), "quay")).get(0);
    assertThat(small.severity()).isEqualTo(Finding.Severity.WARNING);
    assertThat(small.place()).isEqualTo("hatch");
    assertThat(small.sentence())
        .isEqualTo("hatch is 25.4 by 17.8 mm on quay; the smallest workable size is 40 mm");
    // 40 / 17.78 is 2.2497: rounded up, so that the model it names is large enough.
    assertThat(small.remedy())
        .isEqualTo("make it larger, or photograph it on a model enlarged 2.3 times or more");
  }

  @Test
  void the_same_opening_on_a_larger_model_is_well() {
    assertThat(findings(40, opening("hatch", new Rect(3, 10.95, 1, 0.7), "small-lamp"))).isEmpty();
  }

  @Test
  void nothing_is_too_small_where_no_smallest_size_is_given() {
    assertThat(findings(0, opening("hatch", new Rect(3, 10.95, 0.01, 0.01), "quay"))).isEmpty();
  }

  @Test
  void openings_that_overlap_are_told_and_openings_that_touch_are_not() {
    assertThat(
            findings(
                0,
                opening("gate", new Rect(3, 7, 2, 4), "quay"),
                opening("door", new Rect(4.5, 9, 2, 4), "quay"),
                opening("hatch", new Rect(5, 7, 1, 2), "quay")))
        .extracting(Finding::sentence)
        .containsExactly("gate and door overlap on 0.5 by 2 squares of the artwork");
  }
}
