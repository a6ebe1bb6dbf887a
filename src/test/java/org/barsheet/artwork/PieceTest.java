package org.barsheet.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.LiftsOff;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Slides;
import org.barsheet.plan.Opening.Support;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Where;
import org.junit.jupiter.api.Test;

/** What is cut agrees with what is measured: the free edge lies where its movement has it. */
class PieceTest {

  private static final Artwork ARTWORK =
      new Artwork(
          25.4,
          24,
          13.5,
          List.of(),
          0,
          List.of(
              new Artwork.Model("quay", 1, "", ""), new Artwork.Model("small-lamp", 3, "", "")));

  private static final List<Support> SUPPORTS =
      List.of(
          new Support("putty", Optional.of(25.0), Optional.empty(), "putty up to 25 mm"),
          new Support("thread", Optional.empty(), Optional.of(200.0), "thread from 200 mm"));

  private static Opening opening(
      String name, String model, double width, double height, Opening.Motion motion) {
    return new Opening(
        name,
        new Rect(4.8, 7.2, width, height),
        model,
        motion,
        SUPPORTS,
        new Where("quay.yaml", "line 1"));
  }

  private static Piece lamp(double width, double height, Opening.Motion motion) {
    return Piece.of(opening("lamp", "small-lamp", width, height, motion), ARTWORK);
  }

  private static List<PieceMark> marks(PieceSheet sheet, PieceMark.Kind kind) {
    return sheet.marks().stream().filter(mark -> mark.kind() == kind).toList();
  }

  private static double distance(PieceMark line, double x, double y) {
    boolean upright = line.fromX() == line.toX();
    return upright ? Math.abs(x - line.fromX()) : Math.abs(y - line.fromY());
  }

  /** 1.5 squares of 25.4 mm, three times as large, are 114.3 mm; 2.2 are 167.64 mm. */
  @Test
  void a_piece_has_the_size_of_its_model() {
    Piece piece = lamp(1.5, 2.2, new Hinged(Side.LEFT, 90));
    assertThat(piece.width()).isCloseTo(114.3, within(1e-9));
    assertThat(piece.height()).isCloseTo(167.64, within(1e-9));
  }

  /** The flap of the measures, w of 2·w·sin(θ/2), is what is cut from crease to free edge. */
  @Test
  void a_flap_is_creased_at_its_hinge_and_its_thread_leaves_where_its_free_edge_is_measured() {
    for (Side side : Side.values()) {
      Hinged motion = new Hinged(side, 90);
      Opening opening = opening("lamp", "small-lamp", 1.5, 2.2, motion);
      PieceSheet flap = Piece.of(opening, ARTWORK).sheets().get(0);
      double measured = ((Measure.Turn) Measure.of(opening, ARTWORK)).hinge().flap();
      assertThat(marks(flap, PieceMark.Kind.CUT)).hasSize(3);
      PieceMark crease = marks(flap, PieceMark.Kind.CREASE).get(0);
      PieceMark thread = marks(flap, PieceMark.Kind.THREAD).get(0);
      assertThat(distance(crease, thread.fromX(), thread.fromY()))
          .as("%s", side)
          .isCloseTo(measured, within(1e-9));
      assertThat(side == Side.LEFT || side == Side.TOP)
          .isEqualTo(crease.fromX() + crease.toX() + crease.fromY() + crease.toY() < 200);
    }
  }

  @Test
  void putty_lies_on_the_flap_and_clear_of_the_thread() {
    Random random = new Random(3);
    for (int trial = 0; trial < 100; trial++) {
      Side side = List.of(Side.values()).get(random.nextInt(4));
      Piece piece =
          lamp(0.2 + 2 * random.nextDouble(), 0.2 + 2 * random.nextDouble(), new Hinged(side, 90));
      PieceMark putty = marks(piece.sheets().get(0), PieceMark.Kind.PUTTY).get(0);
      PieceMark thread = marks(piece.sheets().get(0), PieceMark.Kind.THREAD).get(0);
      assertThat(Math.min(putty.fromX(), putty.fromY())).isPositive();
      assertThat(putty.toX()).isLessThan(piece.width());
      assertThat(putty.toY()).isLessThan(piece.height());
      boolean clear =
          thread.fromX() <= putty.fromX()
              || thread.fromX() >= putty.toX()
              || thread.fromY() <= putty.fromY()
              || thread.fromY() >= putty.toY();
      assertThat(clear).as("trial %d", trial).isTrue();
    }
  }

  /** How much of its hole a shutter leaves free is worked out here from the paper alone. */
  @Test
  void a_shutter_uncovers_what_its_measure_says() {
    Random random = new Random(5);
    for (int trial = 0; trial < 100; trial++) {
      Side side = List.of(Side.values()).get(random.nextInt(4));
      Opening opening =
          opening(
              "gate",
              "quay",
              1 + random.nextDouble(),
              1 + random.nextDouble(),
              new Slides(side, 0));
      Piece piece = Piece.of(opening, ARTWORK);
      Measure measure = Measure.of(opening, ARTWORK);
      double amount = measure.whole() * random.nextDouble();
      double across = side == Side.LEFT ? -amount : side == Side.RIGHT ? amount : 0;
      double down = side == Side.TOP ? -amount : side == Side.BOTTOM ? amount : 0;
      Rect shutter = Rects.moved(piece.sheets().get(1).board(), across, down);
      Rect hole = new Rect(0, 0, piece.width(), piece.height());
      double covered = Rects.sharedWide(shutter, hole) * Rects.sharedHigh(shutter, hole);
      assertThat(1 - covered / (piece.width() * piece.height()))
          .as("trial %d, %s", trial, side)
          .isCloseTo(measure.uncovered(amount), within(1e-9));
      assertThat(Rects.sharedWide(shutter, piece.sheets().get(0).board()))
          .as("it stays on its frame")
          .isCloseTo(shutter.width(), within(1e-9));
      assertThat(Rects.sharedHigh(shutter, piece.sheets().get(0).board()))
          .isCloseTo(shutter.height(), within(1e-9));
    }
  }

  @Test
  void a_shutter_runs_between_its_rails() {
    Piece piece = lamp(1.3, 2.6, new Slides(Side.RIGHT, 0));
    Rect shutter = piece.sheets().get(1).board();
    List<PieceMark> rails = marks(piece.sheets().get(0), PieceMark.Kind.RAIL);
    assertThat(rails).extracting(PieceMark::fromY).containsExactly(-4.0, piece.height() + 4);
    assertThat(shutter.top()).isEqualTo(-4.0);
    assertThat(shutter.height()).isCloseTo(piece.height() + 8, within(1e-9));
    assertThat(rails.get(0).toX()).isCloseTo(2 * piece.width() + 4, within(1e-9));
  }

  @Test
  void what_is_lifted_off_covers_its_hole_all_round() {
    Piece piece = lamp(1, 1, new LiftsOff(50));
    assertThat(piece.sheets()).extracting(PieceSheet::title).containsExactly("frame", "lid");
    assertThat(piece.sheets().get(1).board().width()).isCloseTo(76.2 + 8, within(1e-9));
  }

  /**
   * A flap of 99 by 152 mm does not close a hole of 114 by 168 mm, though both hinge at the right.
   */
  @Test
  void a_piece_fits_where_model_hole_and_movement_are_the_same() {
    Piece large = lamp(1.5, 2.2, new Hinged(Side.RIGHT, 90));
    assertThat(large.fits(lamp(1.5, 2.2, new Hinged(Side.RIGHT, 80)))).isTrue();
    assertThat(large.fits(lamp(1.3, 2, new Hinged(Side.RIGHT, 90)))).isFalse();
    assertThat(large.fits(lamp(1.5, 2.2, new Hinged(Side.LEFT, 90)))).isFalse();
    assertThat(large.fits(lamp(1.5, 2.2, new Slides(Side.RIGHT, 0)))).isFalse();
  }

  @Test
  void in_the_artwork_itself_every_opening_has_a_flap_of_its_own() {
    Hinged motion = new Hinged(Side.TOP, 70);
    Piece one = Piece.of(opening("office", "quay", 1, 1, motion), ARTWORK);
    assertThat(one.fits(Piece.of(opening("office", "quay", 1, 1, motion), ARTWORK))).isTrue();
    assertThat(one.fits(Piece.of(opening("loft", "quay", 1, 1, motion), ARTWORK))).isFalse();
  }
}
