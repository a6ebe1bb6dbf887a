package org.barsheet.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {

  private static final List<String> KNOWN = List.of("glimmer", "tide", "small-lamp", "lands-on");

  @Test
  void a_letter_missing_added_replaced_or_swapped_is_forgiven() {
    assertThat(Nearest.to("glimer", KNOWN)).contains("glimmer");
    assertThat(Nearest.to("glimmmer", KNOWN)).contains("glimmer");
    assertThat(Nearest.to("glummer", KNOWN)).contains("glimmer");
    assertThat(Nearest.to("tdie", KNOWN)).contains("tide");
  }

  @Test
  void case_and_the_sign_between_words_do_not_matter() {
    assertThat(Nearest.to("Small Lamp", KNOWN)).contains("small-lamp");
    assertThat(Nearest.to("lands_on", KNOWN)).contains("lands-on");
  }

  @Test
  void another_name_of_the_thing_is_known_for_what_it_is() {
    assertThat(Nearest.to("pictures", List.of("opening", "photographs", "shown")))
        .contains("photographs");
    assertThat(Nearest.to("Size", List.of("pop", "frame-size"))).contains("frame-size");
    assertThat(Nearest.to("pictures", KNOWN)).isEmpty();
  }

  @Test
  void a_word_unlike_all_others_is_near_none() {
    assertThat(Nearest.to("harbour", KNOWN)).isEmpty();
    assertThat(Nearest.to("x", KNOWN)).isEmpty();
    assertThat(Nearest.to("tide".repeat(1000), KNOWN)).isEmpty();
  }

  @Test
  void names_that_hold_the_word_asked_for_are_offered_first() {
    List<String> marks = List.of("Wind", "Ferry horn", "A", "All the lamps", "Fern");
    assertThat(Nearest.ranked("ferry", marks, 2)).containsExactly("Ferry horn", "Fern");
  }
}
