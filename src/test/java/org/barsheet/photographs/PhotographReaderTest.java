package org.barsheet.photographs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files as cameras write them, and files that are damaged, hostile or huge. */
class PhotographReaderTest {

  @TempDir private Path folder = Path.of("");

  private Path file(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private static byte[] jpeg(int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    for (int x = 0; x < width; x++) {
      image.setRGB(x, 0, 0xFFFFFF);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "jpeg", out);
    return out.toByteArray();
  }

  private static void assertRefused(Path file, String reason) {
    assertThatThrownBy(() -> PhotographReader.decode(file, PhotographReader.facts(file)))
        .isInstanceOf(UnreadablePhotographException.class)
        .hasMessageContaining(reason);
  }

  @Test
  void exif_tells_when_and_with_which_camera() throws IOException, UnreadablePhotographException {
    Path file = file("a.jpg", Exif.into(jpeg(40, 30), 1));
    PhotoFacts facts = PhotographReader.facts(file);
    assertThat(facts.taken()).isEqualTo("2026:03:02 10:15:04.25");
    assertThat(facts.camera()).isEqualTo("Quay Works Box 2");
    assertThat(List.of(facts.width(), facts.height())).containsExactly(40, 30);
  }

  /** EXIF 2.32, Orientation: where row 0, here a white line, is to be seen. */
  @ParameterizedTest
  @CsvSource({
    "1, top",
    "2, top",
    "3, bottom",
    "4, bottom",
    "5, left",
    "6, right",
    "7, right",
    "8, left"
  })
  void a_photograph_is_turned_as_its_file_says(int orientation, String side)
      throws IOException, UnreadablePhotographException {
    Path file = file("a.jpg", Exif.into(jpeg(64, 32), orientation));
    PhotoFacts facts = PhotographReader.facts(file);
    boolean lying = orientation > 4;
    assertThat(facts.width()).isEqualTo(lying ? 32 : 64);
    BufferedImage upright = Turned.upright(ImageIO.read(file.toFile()), orientation);
    assertThat(upright.getWidth()).isEqualTo(facts.width());
    int x = side.equals("left") ? 0 : side.equals("right") ? upright.getWidth() - 1 : 16;
    int y = side.equals("top") ? 0 : side.equals("bottom") ? upright.getHeight() - 1 : 16;
    assertThat(upright.getRGB(x, y) & 0xFF).isGreaterThan(150);
    int otherX = upright.getWidth() - 1 - x;
    int otherY = upright.getHeight() - 1 - y;
    assertThat(upright.getRGB(otherX, otherY) & 0xFF).isLessThan(100);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.3, 0.6, 0.9})
  void a_file_cut_short_is_refused(double share) throws IOException {
    byte[] whole = jpeg(300, 200);
    assertRefused(
        file("a.jpg", Arrays.copyOf(whole, Math.max(4, (int) (share * whole.length)))), "damaged");
  }

  @Test
  void a_small_file_that_says_it_is_huge_is_refused_before_it_is_decoded() throws IOException {
    assertRefused(file("bomb.png", png(60_000, 60_000)), "110 million pixels");
    byte[] large = jpeg(64, 64);
    int frame = indexOf(large, 0xC0);
    large[frame + 4] = (byte) 0xFF;
    large[frame + 6] = (byte) 0xFF;
    assertRefused(file("bomb.jpg", large), "110 million pixels");
  }

  private static int indexOf(byte[] jpeg, int marker) {
    for (int i = 0; i < jpeg.length - 1; i++) {
      if ((jpeg[i] & 0xFF) == 0xFF && (jpeg[i + 1] & 0xFF) == marker) {
        return i + 1;
      }
    }
    throw new IllegalStateException("no such marker");
  }

  /** A PNG of a header alone (W3C, Portable Network Graphics, 5 and 11.2.2). */
  private static byte[] png(int width, int height) {
    ByteBuffer header = ByteBuffer.allocate(17);
    header.put("IHDR".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    header.putInt(width).putInt(height).put(new byte[] {8, 2, 0, 0, 0});
    CRC32 sum = new CRC32();
    sum.update(header.array());
    return ByteBuffer.allocate(33)
        .putLong(0x89504E470D0A1A0AL)
        .putInt(13)
        .put(header.array())
        .putInt((int) sum.getValue())
        .array();
  }

  @Test
  void files_of_other_kinds_are_told_by_their_kind() throws IOException {
    assertRefused(file("a.CR3", new byte[400]), "a raw image");
    assertRefused(
        file(
            "a.gif", "GIF89a\1\0\1\0\0\0\0".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1)),
        "another kind");
    assertRefused(file("a.jpg", new byte[0]), "neither a JPEG nor a PNG");
  }

  @Test
  void no_damage_to_a_file_gets_past_the_reader() throws IOException {
    byte[] whole = Exif.into(jpeg(120, 80), 1);
    SplittableRandom random = new SplittableRandom(3);
    for (int trial = 0; trial < 120; trial++) {
      byte[] damaged = whole.clone();
      for (int i = 0; i < 1 + random.nextInt(12); i++) {
        damaged[3 + random.nextInt(damaged.length - 3)] = (byte) random.nextInt(256);
      }
      Path file = file("damaged.jpg", damaged);
      try {
        PhotographReader.decode(file, PhotographReader.facts(file));
      } catch (UnreadablePhotographException told) {
        assertThat(told.reason()).isNotBlank();
      }
    }
  }

  @Test
  void names_are_counted_as_people_do() {
    assertThat(
            List.of("IMG_10.JPG", "IMG_9.JPG", "img_9b.jpg", "A1.jpg").stream()
                .sorted(new NaturalOrder()))
        .containsExactly("A1.jpg", "IMG_9.JPG", "img_9b.jpg", "IMG_10.JPG");
  }
}
