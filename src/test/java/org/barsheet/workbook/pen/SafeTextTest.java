package org.barsheet.workbook.pen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafeTextTest {

  @Test
  void plain_text_stays_as_it_is() {
    assertThat(SafeText.of("Lamplighters’ Quay\n第二 🕯 é")).isEqualTo("Lamplighters’ Quay\n第二 🕯 é");
  }

  @Test
  void what_a_cell_cannot_hold_is_taken_out() {
    assertThat(SafeText.of("a\u0000b\u000bc\r\u0085d\ud800e\uffff\u202ef")).isEqualTo("abcdef");
    assertThat(SafeText.of("a\tb")).isEqualTo("a b");
  }

  @Test
  void an_escape_is_not_read_as_the_letter_it_names() {
    assertThat(SafeText.of("_x0041_")).isEqualTo("_x005F_x0041_");
    assertThat(SafeText.of("_xylophone_")).isEqualTo("_xylophone_");
  }

  @Test
  void too_long_a_text_is_cut_at_the_limit_and_says_so() {
    assertThat(SafeText.of("x".repeat(40_000))).hasSize(32_767).endsWith("x…");
    assertThat(SafeText.of("🕯".repeat(20_000)).codePoints().filter(c -> c == 0x1F56F).count())
        .isEqualTo(16_383);
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@sum", "＝1", "＋1", "－1", "＠1"})
  void what_a_spreadsheet_would_calculate_is_known(String text) {
    assertThat(SafeText.looksLikeFormula(text)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "lamp-1", "1=1", "'=1"})
  void other_text_is_not(String text) {
    assertThat(SafeText.looksLikeFormula(text)).isFalse();
  }
}
