package org.barsheet.photographs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.barsheet.photographs.Quad.Corner;
import org.barsheet.pixels.Box;
import org.junit.jupiter.api.Test;

class QuadTest {

  private static final Box BOX = new Box(0, 0, 10, 10);

  @Test
  void a_box_is_cut_to_what_lies_in_the_other() {
    assertThat(Quad.of(new Box(-5, 4, 5, 20)).areaIn(BOX)).isCloseTo(30, within(1e-12));
    assertThat(Quad.of(new Box(11, 0, 12, 1)).areaIn(BOX)).isZero();
  }

  /** Half of a square stands on its point: the corners outside are cut off. */
  @Test
  void a_square_on_its_point_loses_its_corners() {
    Quad diamond =
        new Quad(
            List.of(new Corner(5, -5), new Corner(15, 5), new Corner(5, 15), new Corner(-5, 5)));
    assertThat(diamond.areaIn(BOX)).isCloseTo(100, within(1e-9));
    Quad small =
        new Quad(List.of(new Corner(0, -5), new Corner(5, 0), new Corner(0, 5), new Corner(-5, 0)));
    assertThat(small.areaIn(BOX)).isCloseTo(12.5, within(1e-9));
  }
}
