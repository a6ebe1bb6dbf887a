package org.barsheet.demo.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StoryboardTest {

  private static final Path FOLDER = Path.of("scores", "panels");

  static IntStream numbers() {
    return IntStream.rangeClosed(1, Storyboard.panels().size());
  }

  @Test
  void there_are_twenty_six_panels_and_no_other_files() throws Exception {
    assertThat(numbers()).hasSize(26);
    try (var files = Files.list(FOLDER)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(numbers().mapToObj(PanelFiles::name).toList());
    }
  }

  /** JDK 17 and 25 round the edge of a shape differently in up to 43 of the 230,400 pixels. */
  @ParameterizedTest
  @MethodSource("numbers")
  void a_committed_drawing_is_what_the_program_draws(int number) throws Exception {
    BufferedImage committed = ImageIO.read(FOLDER.resolve(PanelFiles.name(number)).toFile());
    BufferedImage drawn = Storyboard.panels().get(number - 1).drawing();
    int[] differences = differences(pixels(committed), pixels(drawn));
    assertThat(IntStream.of(differences).filter(difference -> difference > 0).count())
        .isLessThan(100);
    assertThat(IntStream.of(differences).max().orElseThrow()).isLessThan(16);
  }

  /** By how much the colors of each pixel differ, in the channel where they differ most. */
  private static int[] differences(int[] some, int[] others) {
    assertThat(others).hasSameSizeAs(some);
    return IntStream.range(0, some.length)
        .map(
            i ->
                IntStream.of(0, 8, 16)
                    .map(
                        shift ->
                            Math.abs(((some[i] >> shift) & 255) - ((others[i] >> shift) & 255)))
                    .max()
                    .orElseThrow())
        .toArray();
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void a_drawing_is_wide_and_its_file_small(int number) throws Exception {
    Path file = FOLDER.resolve(PanelFiles.name(number));
    assertThat(Files.size(file)).isLessThan(40_000);
    BufferedImage drawing = ImageIO.read(file.toFile());
    assertThat(drawing.getWidth() * 9).isEqualTo(drawing.getHeight() * 16);
  }

  private static int[] pixels(BufferedImage image) {
    int width = image.getWidth();
    int[] pixels = image.getRGB(0, 0, width, image.getHeight(), null, 0, width);
    return IntStream.of(pixels).map(pixel -> pixel & 0xFFFFFF).toArray();
  }
}
