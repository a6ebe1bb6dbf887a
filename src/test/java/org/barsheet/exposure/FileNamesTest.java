package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FileNamesTest {

  @ParameterizedTest
  @ValueSource(strings = {"cello", "small-lamp", "first violins", "Ångström", "紙の港", "a.b"})
  void a_legal_name_is_left_as_it_is(String name) {
    assertThat(FileNames.safe(name)).isEqualTo(name);
  }

  static List<String> awkward() {
    return List.of(
        "",
        " ",
        ".",
        "..",
        "../../etc/passwd",
        "a/b",
        "a\\b",
        "C:\\x",
        "nul",
        "COM1.txt",
        "lamp.",
        " lamp",
        "a\nb",
        "a\u0000b",
        "a\u202Eb",
        "\uD800",
        "what?",
        "x".repeat(300),
        "é".repeat(61),
        "100%",
        "#1");
  }

  @ParameterizedTest
  @MethodSource("awkward")
  void any_other_name_becomes_one_file_in_its_own_folder(String name) {
    String safe = FileNames.safe(name);
    Path folder = Path.of("calls");
    Path file = folder.resolve(safe + ".html").normalize();
    assertThat(file.getParent()).isEqualTo(folder);
    assertThat(safe).doesNotContainPattern("[\\\\/:*?\"<>|%#\\p{Cntrl}]").doesNotStartWith(".");
    assertThat(safe.strip()).isEqualTo(safe).isNotEmpty();
    assertThat(safe.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(250);
    assertThat(safe.toLowerCase(Locale.ROOT)).doesNotMatch("(nul|con|com1)(\\..*)?");
  }

  @Test
  void names_that_are_cleaned_alike_stay_apart() {
    assertThat(FileNames.safe("a/b")).isNotEqualTo(FileNames.safe("a\\b"));
    assertThat(FileNames.safe("x".repeat(300))).isNotEqualTo(FileNames.safe("x".repeat(301)));
  }

  @Test
  void a_photograph_s_file_has_its_permanent_name() {
    assertThat(FileNames.ofPhotograph(new Photograph("small-lamp", 14).name()))
        .isEqualTo("small-lamp 014");
    assertThat(FileNames.ofPhotograph(new Photograph("../x", 1).name()))
        .doesNotContain("/")
        .endsWith(" 001");
  }
}
