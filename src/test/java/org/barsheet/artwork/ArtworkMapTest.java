package org.barsheet.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Motion;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Where;
import org.junit.jupiter.api.Test;

/** The map of the artwork: lengths are millimeters on paper. */
class ArtworkMapTest {

  private static final Artwork QUAY = new Artwork(25.4, 24, 13.5, List.of(), 40, List.of());

  private static Opening opening(String name, Rect rect, Motion motion) {
    return new Opening(name, rect, "quay", motion, List.of(), new Where("quay.yaml", "openings"));
  }

  private static <T extends MapMark> List<T> marks(ArtworkMap map, Class<T> kind) {
    return map.marks().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** 24 squares of 25.4 mm are 609.6 mm: at 1 : 2.5 they are 243.84 mm, at 1 : 2 too wide. */
  @Test
  void it_is_drawn_as_large_as_it_fits_at_a_scale_people_know() {
    ArtworkMap map = ArtworkMap.within(QUAY, List.of(), 273, 200);
    assertThat(map.denominator()).isEqualTo(2.5);
    assertThat(map.width()).isCloseTo(243.84 + 6, offset(1e-9));
    assertThat(map.height()).isCloseTo(137.16 + 6, offset(1e-9));
  }

  @Test
  void a_huge_artwork_still_fits() {
    Artwork huge = new Artwork(1000, 400, 225, List.of(), 0, List.of());
    ArtworkMap map = ArtworkMap.within(huge, List.of(), 273, 200);
    assertThat(map.width()).isLessThanOrEqualTo(273);
    assertThat(map.height()).isLessThanOrEqualTo(200);
  }

  @Test
  void of_millions_of_squares_only_some_lines_are_drawn() {
    Artwork fine = new Artwork(1, 3_000_000, 2_000_000, List.of(), 0, List.of());
    ArtworkMap map = ArtworkMap.within(fine, List.of(), 273, 200);
    assertThat(marks(map, MapMark.Stroke.class)).hasSizeLessThan(250);
    assertThat(marks(map, MapMark.Text.class)).hasSizeBetween(4, 90);
  }

  @Test
  void an_opening_stands_where_its_squares_are() {
    ArtworkMap map =
        ArtworkMap.within(
            QUAY,
            List.of(opening("gate", new Rect(3, 7, 2, 4), new Opening.Hinged(Side.LEFT, 90))),
            273,
            200);
    Rect drawn = marks(map, MapMark.Box.class).get(1).rect();
    assertThat(drawn.left() - 6).isCloseTo(3 * 10.16, offset(1e-9));
    assertThat(drawn.top() - 6).isCloseTo(7 * 10.16, offset(1e-9));
    assertThat(drawn.width()).isCloseTo(2 * 10.16, offset(1e-9));
    assertThat(drawn.height()).isCloseTo(4 * 10.16, offset(1e-9));
  }

  @Test
  void the_hinge_is_heavy_and_the_arrow_goes_to_it() {
    for (Side side : Side.values()) {
      ArtworkMap map =
          ArtworkMap.within(
              QUAY,
              List.of(opening("gate", new Rect(3, 7, 2, 4), new Opening.Hinged(side, 90))),
              273,
              200);
      Rect rect = marks(map, MapMark.Box.class).get(1).rect();
      List<MapMark.Stroke> black =
          marks(map, MapMark.Stroke.class).stream().filter(stroke -> !stroke.gray()).toList();
      MapMark.Stroke hinge = black.get(0);
      MapMark.Stroke arrow = black.get(1);
      assertThat(hinge.weight()).isGreaterThan(1);
      assertThat(hinge.arrow()).isFalse();
      assertThat(arrow.arrow()).isTrue();
      double middleX = (hinge.fromX() + hinge.toX()) / 2 - (rect.left() + rect.width() / 2);
      double middleY = (hinge.fromY() + hinge.toY()) / 2 - (rect.top() + rect.height() / 2);
      double toward =
          middleX * (arrow.toX() - arrow.fromX()) + middleY * (arrow.toY() - arrow.fromY());
      assertThat(toward).as("%s", side).isPositive();
    }
  }

  @Test
  void every_motion_has_a_sign_and_a_word_for_it() {
    List<Motion> motions =
        List.of(
            new Opening.Hinged(Side.TOP, 90),
            new Opening.Slides(Side.RIGHT, 0),
            new Opening.LiftsOff(20),
            new Opening.Brightens(100),
            new Opening.Iris(100));
    for (Motion motion : motions) {
      List<Opening> openings = List.of(opening("gate", new Rect(3, 7, 2, 4), motion));
      ArtworkMap map = ArtworkMap.within(QUAY, openings, 273, 200);
      assertThat(MotionMarks.of(motion, new Rect(0, 0, 20, 40))).as("%s", motion).isNotEmpty();
      assertThat(map.legend()).as("%s", motion).hasSize(1);
    }
  }

  @Test
  void a_name_that_does_not_fit_inside_stands_beside_and_on_nothing_else() {
    List<Opening> openings =
        List.of(
            opening("hatch", new Rect(3, 7, 0.5, 0.5), new Opening.LiftsOff(10)),
            opening("gate", new Rect(2, 8, 3, 3), new Opening.LiftsOff(10)));
    ArtworkMap map = ArtworkMap.within(QUAY, openings, 273, 200);
    List<Rect> drawn = marks(map, MapMark.Box.class).stream().map(MapMark.Box::rect).toList();
    MapMark.Text hatch = text(map, "hatch");
    MapMark.Text gate = text(map, "gate");
    assertThat(contains(drawn.get(2), gate)).isTrue();
    assertThat(contains(drawn.get(1), hatch)).isFalse();
    assertThat(contains(drawn.get(2), hatch)).isFalse();
  }

  private static MapMark.Text text(ArtworkMap map, String words) {
    return marks(map, MapMark.Text.class).stream()
        .filter(text -> text.words().equals(words))
        .findFirst()
        .orElseThrow();
  }

  private static boolean contains(Rect rect, MapMark.Text text) {
    return text.x() > rect.left()
        && text.x() < rect.left() + rect.width()
        && text.y() > rect.top()
        && text.y() < rect.top() + rect.height();
  }

  @Test
  void a_name_keeps_off_the_arrow_of_a_shutter_that_slides_down() {
    Opening shutter =
        opening("shutter", new Rect(3, 7, 0.6, 1), new Opening.Slides(Side.BOTTOM, 0));
    ArtworkMap map = ArtworkMap.within(QUAY, List.of(shutter), 273, 200);
    MapMark.Stroke arrow =
        marks(map, MapMark.Stroke.class).stream()
            .filter(MapMark.Stroke::arrow)
            .findFirst()
            .orElseThrow();
    assertThat(text(map, "shutter").y()).isLessThan(arrow.fromY());
  }
}
