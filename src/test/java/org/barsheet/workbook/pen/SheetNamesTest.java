package org.barsheet.workbook.pen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.poi.ss.util.WorkbookUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Checked by the spreadsheet library's own rule for sheet names, as a second opinion. */
class SheetNamesTest {

  private static List<String> names(String... texts) {
    return SheetNames.of("Call", List.of(texts));
  }

  @Test
  void a_plain_alias_stands_as_it_is() {
    assertThat(names("cello", "first violins", "Ångström", "紙の港"))
        .containsExactly("Call cello", "Call first violins", "Call Ångström", "Call 紙の港");
  }

  static Stream<String> awkward() {
    return Stream.of(
        "",
        " ",
        "History",
        "Performers",
        "a/b\\c?d*e[f]g:h",
        "'quoted'",
        "o'clock",
        "=HYPERLINK(\"x\")",
        "+1",
        "@SUM(A1)",
        "#REF!",
        "a\tb\nc",
        "\u202Eolleac",
        "\u0000\u0007",
        "\uD83C",
        "x".repeat(300),
        "x".repeat(25) + "\uD83C\uDFBB",
        "_x0041_");
  }

  @ParameterizedTest
  @MethodSource("awkward")
  void whatever_people_type_the_name_is_one_a_sheet_may_have(String text) {
    String name = names(text).get(0);
    assertThatCode(() -> WorkbookUtil.validateSheetName(name)).doesNotThrowAnyException();
    assertThat(name).startsWith("Call").hasSizeLessThanOrEqualTo(31);
    assertThat(name).doesNotContain("'", "#", "!").doesNotContainPattern("\\p{Cntrl}");
    boolean cutInside = Character.isHighSurrogate(name.charAt(name.length() - 1));
    assertThat(cutInside).isFalse();
  }

  @Test
  void aliases_that_are_alike_after_cutting_are_told_apart() {
    String stem = "the second desk of the first violins, ";
    List<String> names = names(stem + "left", stem + "right", stem + "left", "Cello", "cello");
    assertThat(names)
        .containsExactly(
            "Call the second desk of the fir",
            "Call the second desk of the (2)",
            "Call the second desk of the (3)",
            "Call Cello",
            "Call cello (2)");
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 12, 120})
  void any_number_of_equal_aliases_has_as_many_names(int count) {
    List<String> names = SheetNames.of("Call", Collections.nCopies(count, "x".repeat(40)));
    assertThat(names.stream().map(name -> name.toLowerCase(Locale.ROOT)).distinct().toList())
        .hasSize(count);
    assertThat(names).allMatch(name -> name.length() <= 31);
  }

  @Test
  void a_name_may_look_like_one_that_was_made_unique() {
    assertThat(names("a", "a (2)", "a")).doesNotHaveDuplicates();
  }
}
