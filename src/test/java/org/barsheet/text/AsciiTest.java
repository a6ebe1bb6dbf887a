package org.barsheet.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AsciiTest {

  /** As Unicode's CLDR, Latin-ASCII (common/transforms/Latin-ASCII.xml), writes them. */
  @ParameterizedTest
  @CsvSource({
    "Ørsted, Orsted",
    "Æsop, AEsop",
    "œuvre, oeuvre",
    "Straße, Strasse",
    "Łódź, Lodz",
    "Þórr, THorr",
    "célesta, celesta",
    "Dvořák, Dvorak",
    "‘quay’ – “harbour”, 'quay' - \"harbour\""
  })
  void letters_become_the_plain_ones_they_are_made_of(String words, String plain) {
    assertThat(Ascii.line(words)).isEqualToIgnoringCase(plain);
  }

  @Test
  void what_has_no_plain_letters_becomes_an_underscore_never_a_question_mark() {
    assertThat(Ascii.line("port 港口 night")).isEqualTo("port _ night");
    Random random = new Random(7);
    for (int trial = 0; trial < 2000; trial++) {
      String text =
          random
              .ints(8, 0x20, 0x2000)
              .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
              .toString();
      assertThat(Ascii.line(text.replace("?", ""))).matches("[\\x20-\\x7E]*").doesNotContain("?");
    }
  }
}
