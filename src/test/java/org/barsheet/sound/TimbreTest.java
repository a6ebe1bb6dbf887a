package org.barsheet.sound;

import static org.assertj.core.api.Assertions.assertThat;

import org.barsheet.score.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimbreTest {

  private static String timbre(String name, String instrument) {
    return Timbre.of(new Part(0, name, instrument, 0, 1, false)).name();
  }

  /** Instruments and their families: General MIDI System Level 1 (RP-003). */
  @ParameterizedTest
  @CsvSource({
    "Acoustic Grand Piano, piano",
    "Celesta, bell",
    "Church Organ, organ",
    "Acoustic Guitar (nylon), pluck",
    "Acoustic Bass, bass",
    "Cello, strings",
    "Pizzicato Strings, pluck",
    "Orchestral Harp, pluck",
    "Timpani, bass",
    "String Ensemble 1, strings",
    "Choir Aahs, voices",
    "French Horn, brass",
    "Clarinet, reed",
    "Flute, pipe",
    "Pad 2 (warm), pad",
    "Koto, pluck",
    "Tinkle Bell, bell",
    "Seashore, pad"
  })
  void follows_the_family_of_the_instrument(String instrument, String timbre) {
    assertThat(timbre("any name", instrument)).isEqualTo(timbre);
  }

  @Test
  void a_part_without_an_instrument_is_known_by_its_name_or_sounds_as_a_piano() {
    assertThat(timbre("Flute", "")).isEqualTo("pipe");
    assertThat(timbre("Right hand", "")).isEqualTo("piano");
  }
}
