package org.barsheet.handoff.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Side;
import org.junit.jupiter.api.Test;

/** The hole is 200 by 100 pixels at (100, 100), seen from above. */
class OpeningDrawingTest {

  private static final int LAMP = 0xFFE69F00;
  private static final int HOLE = 0xFF1B1F24;

  private static BufferedImage drawn(Opening.Motion motion, double progress, double amount) {
    Canvas canvas = new Canvas(400, 300);
    new OpeningDrawing(canvas, new PixelRect(100, 100, 200, 100), 1).draw(motion, progress, amount);
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    try {
      canvas.writePng(png, "Description", "a test");
      return ImageIO.read(new ByteArrayInputStream(png.toByteArray()));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Along the hole's middle: how many pixels the piece covers, how many of the hole are seen. */
  private static List<Long> across(BufferedImage image) {
    long piece = 0;
    long hole = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      int pixel = image.getRGB(x, 150);
      piece += pixel == LAMP ? 1 : 0;
      hole += pixel == HOLE ? 1 : 0;
    }
    return List.of(piece, hole);
  }

  /** cos 60° is a half: a flap at 60 degrees covers half its hole; lines take 3 or 4 pixels. */
  @Test
  void a_flap_covers_the_cosine_of_its_angle() {
    Opening.Motion flap = new Opening.Hinged(Side.LEFT, 90);
    assertThat(across(drawn(flap, 0, 0))).containsExactly(198L, 2L);
    assertThat(across(drawn(flap, 2 / 3.0, 60))).containsExactly(98L, 102L);
    assertThat(across(drawn(flap, 1, 90)).get(0)).isZero();
  }

  @Test
  void a_flap_past_upright_lies_on_the_hinge_s_other_side() {
    BufferedImage past = drawn(new Opening.Hinged(Side.RIGHT, 120), 1, 120);
    assertThat(past.getRGB(350, 150)).isEqualTo(LAMP);
    assertThat(past.getRGB(250, 150)).isEqualTo(HOLE);
  }

  @Test
  void a_shutter_slides_away_whole() {
    BufferedImage slid = drawn(new Opening.Slides(Side.BOTTOM, 0), 1, 60);
    assertThat(slid.getRGB(200, 150)).isEqualTo(HOLE);
    assertThat(slid.getRGB(200, 250)).isEqualTo(LAMP);
  }

  @Test
  void a_lamp_brightens_and_an_iris_grows_from_the_middle() {
    assertThat(drawn(new Opening.Brightens(100), 1, 100).getRGB(200, 150)).isEqualTo(LAMP);
    assertThat(drawn(new Opening.Brightens(100), 0, 0).getRGB(200, 150)).isNotEqualTo(LAMP);
    assertThat(across(drawn(new Opening.Iris(100), 0.5, 50))).containsExactly(98L, 102L);
  }

  @Test
  void letters_without_a_plain_form_become_underscores() {
    assertThat(PixelLetters.drawable("Été n° 7, 紙の港")).isEqualTo("ETE N_ 7, _");
  }
}
