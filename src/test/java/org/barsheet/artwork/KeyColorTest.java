package org.barsheet.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyColorTest {

  /** The palette (40, 120, 110) (200, 150, 60) (20, 40, 80). */
  private static final List<String> PALETTE = List.of("28786E", "C8963C", "142850");

  /**
   * Color bars of 75 %, BT.709 in 8 bits, as in SMPTE RP 219 (values printed at
   * avisynth.nl/index.php/ColorBars_theory); 191.25 is 75 % of 255.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 0, 44, 136",
    "0, 1, 1, 147, 44",
    "0, 1, 0, 63, 52",
    "1, 0, 1, 193, 204",
    "1, 0, 0, 109, 212",
    "0, 0, 1, 212, 120",
    "1, 1, 1, 128, 128",
  })
  void color_differences_are_those_of_the_color_bars(int r, int g, int b, int cb, int cr) {
    Chroma whole = Chroma.of(255 * r, 255 * g, 255 * b);
    assertThat(Math.round(0.75 * whole.cb() + 128)).isEqualTo(cb);
    assertThat(Math.round(0.75 * whole.cr() + 128)).isEqualTo(cr);
  }

  /** Worked out apart from this program: green 44.54, blue 51.38. */
  @Test
  void the_candidate_farthest_from_its_nearest_palette_color_keys_best() {
    assertThat(KeyColor.backing("green", PALETTE).orElseThrow().distance())
        .isCloseTo(44.54, offset(0.005));
    assertThat(KeyColor.backing("blue", PALETTE).orElseThrow().distance())
        .isCloseTo(51.38, offset(0.005));
    List<KeyColor> candidates = KeyColor.candidates(PALETTE);
    assertThat(candidates)
        .isSortedAccordingTo((a, b) -> Double.compare(b.distance(), a.distance()));
    for (KeyColor candidate : candidates) {
      double least =
          PALETTE.stream()
              .mapToDouble(hex -> Chroma.of(candidate.hex()).distance(Chroma.of(hex)))
              .min()
              .orElseThrow();
      assertThat(candidate.distance()).isEqualTo(least);
    }
  }

  @Test
  void nothing_is_said_without_a_palette_or_of_a_backing_that_is_no_color() {
    assertThat(KeyColor.candidates(List.of())).isEmpty();
    assertThat(KeyColor.backing("velvet", PALETTE)).isEmpty();
  }

  @Test
  void a_backing_may_be_given_as_a_color() {
    KeyColor key = KeyColor.backing("#2A7A70", PALETTE).orElseThrow();
    assertThat(key.nearest()).isEqualTo("28786E");
    assertThat(key.isTooNear()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "28786E, dark blue-green",
    "C8963C, orange",
    "142850, dark blue",
    "000000, black",
    "FFFFFF, white",
    "808080, gray",
    "FF0000, red",
    "00FF00, green",
    "FFFF00, yellow",
    "FF00FF, magenta",
  })
  void colors_have_everyday_names(String hex, String name) {
    assertThat(ColorWords.of(hex)).isEqualTo(name);
  }
}
