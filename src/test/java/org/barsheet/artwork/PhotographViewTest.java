package org.barsheet.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.barsheet.artwork.PaperEdge.Kind;
import org.barsheet.artwork.PaperEdge.Point;
import org.barsheet.artwork.PhotographView.Pixel;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Iris;
import org.barsheet.plan.Opening.LiftsOff;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Slides;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Where;
import org.junit.jupiter.api.Test;

/** Where paper lies in a photograph. Worked by hand; formulas are the intercept theorem's. */
class PhotographViewTest {

  private static final Artwork ARTWORK =
      new Artwork(10, 24, 13.5, List.of(), 0, List.of(new Artwork.Model("quay", 1, "", "")));

  /** A field of 60.96 squares of 10 mm: 609.6 mm, seen by 50 mm on 36 mm from 896.7 mm. */
  private static final PhotographView VIEW = new PhotographView(300, 150, 896.6667, 10, 6000, 4000);

  private static Opening opening(Opening.Motion motion) {
    return new Opening(
        "lamp",
        new Rect(30, 15, 6, 4),
        "quay",
        motion,
        List.of(),
        new Where("quay.yaml", "line 1"));
  }

  private static List<PaperEdge> edges(Opening.Motion motion, double amount, Kind kind) {
    return PaperState.of(opening(motion), ARTWORK, amount).stream()
        .filter(edge -> edge.kind() == kind)
        .toList();
  }

  private static void isAt(Pixel pixel, double x, double y) {
    assertThat(pixel.x()).isCloseTo(x, within(0.01));
    assertThat(pixel.y()).isCloseTo(y, within(0.01));
  }

  @Test
  void the_middle_of_the_field_is_the_middle_of_the_photograph_at_any_height() {
    isAt(VIEW.pixel(new Point(300, 150, 0)), 3000, 2000);
    isAt(VIEW.pixel(new Point(300, 150, 60)), 3000, 2000);
    isAt(VIEW.pixel(new Point(310, 145, 0)), 3100, 1950);
  }

  /** The tip of a flap of 60 mm, upright at 896.7 mm, looks 1.072 times as large. */
  @Test
  void what_stands_up_looks_larger_about_the_middle() {
    isAt(VIEW.pixel(new Point(400, 150, 60)), 3000 + 1000 * 896.6667 / 836.6667, 2000);
    assertThat(896.6667 / 836.6667).isCloseTo(1.072, within(0.0005));
    assertThat(VIEW.sees(new Point(300, 150, 896))).isTrue();
    assertThat(VIEW.sees(new Point(300, 150, 897))).isFalse();
  }

  @Test
  void a_flap_turns_about_its_hinge() {
    PaperEdge free = edges(new Hinged(Side.LEFT, 90), 60, Kind.FREE).get(0);
    assertThat(free.from().right()).isCloseTo(300 + 30, within(1e-9));
    assertThat(free.from().up()).isCloseTo(51.9615, within(1e-4));
    assertThat(free.from().down()).isEqualTo(150);
    assertThat(free.to().down()).isEqualTo(190);
    PaperEdge right = edges(new Hinged(Side.RIGHT, 90), 60, Kind.FREE).get(0);
    assertThat(right.from().right()).isCloseTo(300 + 60 - 30, within(1e-9));
    PaperEdge top = edges(new Hinged(Side.TOP, 120), 120, Kind.FREE).get(0);
    assertThat(top.from().down()).as("past upright").isCloseTo(150 - 20, within(1e-9));
    PaperEdge bottom = edges(new Hinged(Side.BOTTOM, 90), 0, Kind.FREE).get(0);
    assertThat(bottom.from().down()).as("closed").isCloseTo(150, within(1e-9));
  }

  @Test
  void a_shutters_trailing_edge_uncovers_the_hole() {
    PaperEdge free = edges(new Slides(Side.RIGHT, 60), 25, Kind.FREE).get(0);
    assertThat(free.from().right()).isCloseTo(325, within(1e-9));
    PaperEdge up = edges(new Slides(Side.TOP, 40), 10, Kind.FREE).get(0);
    assertThat(up.from().down()).isCloseTo(190 - 10, within(1e-9));
  }

  @Test
  void what_is_lifted_keeps_its_outline_and_an_iris_grows_from_its_middle() {
    assertThat(edges(new LiftsOff(50), 50, Kind.FREE))
        .hasSize(4)
        .allSatisfy(edge -> assertThat(edge.from().up()).isEqualTo(50));
    PaperEdge iris = edges(new Iris(100), 30, Kind.FREE).get(0);
    assertThat(iris.from().right()).isCloseTo(315, within(1e-9));
    assertThat(iris.from().down()).isCloseTo(160, within(1e-9));
    assertThat(edges(new Iris(100), 0, Kind.FREE)).isEmpty();
  }
}
