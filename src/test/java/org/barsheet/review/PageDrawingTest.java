package org.barsheet.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** How a panel's drawing goes into the page. */
class PageDrawingTest {

  /** A drawing that no format can make small. */
  private static byte[] noise(int width, int height, String format) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(3);
    for (int x = 0; x < width; x++) {
      for (int y = 0; y < height; y++) {
        image.setRGB(x, y, random.nextInt(1 << 24));
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, format, out);
    return out.toByteArray();
  }

  private static PageDrawing drawing(byte[] file, int allowed) throws IOException {
    return PageDrawing.of(file, allowed, 7_500_000).orElseThrow();
  }

  @Test
  void a_small_file_is_taken_as_it_is() throws IOException {
    for (String format : new String[] {"png", "jpeg", "gif"}) {
      byte[] file = noise(40, 30, format);
      PageDrawing drawing = drawing(file, 100_000);
      assertThat(drawing.bytes()).isEqualTo(file);
      assertThat(drawing.mediaType()).isEqualTo("image/" + format);
    }
  }

  @Test
  void a_large_file_is_made_smaller_in_the_same_shape() throws IOException {
    PageDrawing drawing = drawing(noise(1600, 900, "png"), 120_000);
    assertThat(drawing.mediaType()).isEqualTo("image/jpeg");
    assertThat(drawing.bytes()).hasSizeLessThan(120_000);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(drawing.bytes()));
    assertThat((double) image.getWidth() / image.getHeight()).isBetween(1.77, 1.79);
  }

  /** A RIFF file of form WEBP (RFC 9649, 2.4), which Java does not read. */
  private static byte[] webP(int length) {
    byte[] file = new byte[length];
    byte[] start = "RIFF\0\0\0\0WEBP".getBytes(StandardCharsets.ISO_8859_1);
    System.arraycopy(start, 0, file, 0, start.length);
    return file;
  }

  @Test
  void what_cannot_be_made_smaller_is_taken_as_it_is_up_to_its_share() throws IOException {
    PageDrawing drawing = PageDrawing.of(webP(900), 500, 900).orElseThrow();
    assertThat(drawing.mediaType()).isEqualTo("image/webp");
    assertThat(drawing.bytes()).isEqualTo(webP(900));
    assertThat(PageDrawing.of(webP(901), 500, 900)).isEmpty();
  }

  @Test
  void the_same_file_gives_the_same_copy() throws IOException {
    byte[] file = noise(1600, 900, "png");
    assertThat(drawing(file, 50_000).bytes()).isEqualTo(drawing(file, 50_000).bytes());
  }

  @Test
  void what_is_no_drawing_is_left_out() throws IOException {
    byte[] page = "<html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8);
    assertThat(PageDrawing.of(page, 100_000, 100_000)).isEmpty();
    assertThat(PageDrawing.of(new byte[0], 100_000, 100_000)).isEmpty();
  }

  @Test
  void two_hundred_drawings_together_stay_small_enough_to_send() {
    assertThat(200L * PageDrawing.allowedBytes(200)).isLessThanOrEqualTo(7_500_000);
    assertThat(200L * PageDrawing.shareBytes(200)).isLessThanOrEqualTo(7_500_000);
    assertThat(PageDrawing.allowedBytes(0)).isPositive();
  }
}
