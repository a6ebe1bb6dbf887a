package org.barsheet.input;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainTextTest {

  @Test
  void text_of_any_script_is_left_as_it_is() {
    for (String text : new String[] {"", "Quay", "célesta", "قارب الورق", "紙の港 🚢", "👩‍🚀"}) {
      assertThat(PlainText.of(text)).isEqualTo(text);
    }
  }

  /** Every control character that UAX #9 (revision 50, section 2) lists. */
  @Test
  void signs_that_turn_the_direction_of_writing_are_taken_out() {
    String signs = "\u061C\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069";
    for (int i = 0; i < signs.length(); i++) {
      assertThat(PlainText.of("ab" + signs.charAt(i) + "c")).isEqualTo("abc");
    }
  }

  @Test
  void half_a_character_becomes_the_replacement_character_and_a_whole_one_stays() {
    assertThat(PlainText.of("a\uD800b\uDC00")).isEqualTo("a\uFFFDb\uFFFD");
    assertThat(PlainText.of("\uD83D\uDE00")).isEqualTo("\uD83D\uDE00");
  }

  @Test
  void a_text_is_shortened_between_characters() {
    assertThat(PlainText.shortened("abc", 3)).isEqualTo("abc");
    assertThat(PlainText.shortened("abcd", 3)).isEqualTo("ab…");
    assertThat(PlainText.shortened("🚢🚢🚢🚢", 3)).isEqualTo("🚢🚢…");
  }

  /** Extended grapheme clusters of UAX #29. */
  @Test
  void a_sign_is_all_that_a_reader_sees_as_one() {
    assertThat(PlainText.signAt("🚢 at sea", 0)).isEqualTo("🚢");
    assertThat(PlainText.signAt("e\u0301t", 0)).isEqualTo("e\u0301");
    assertThat(PlainText.signAt("👩‍🚀!", 0)).isEqualTo("👩‍🚀");
    assertThat(PlainText.signAt("a", 1)).isEmpty();
  }
}
