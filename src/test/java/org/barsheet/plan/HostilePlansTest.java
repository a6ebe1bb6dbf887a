package org.barsheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.barsheet.input.InputException;
import org.barsheet.plan.read.PlanReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(20)
class HostilePlansTest {

  private static final String LEAST = "title: Quay\nscore: quay.mid\nfilm: {frame-rate: 24}\n";

  @TempDir private Path folder;

  private String told(String text) throws IOException {
    Path file = folder.resolve("plan.yaml");
    Files.writeString(file, text);
    return told(file);
  }

  private static String told(Path file) {
    InputException wrong = catchThrowableOfType(InputException.class, () -> PlanReader.read(file));
    assertThat(wrong).isNotNull();
    return wrong.problems().get(0).toString();
  }

  @Test
  void aliases_that_repeat_aliases_are_counted_and_refused() throws IOException {
    StringBuilder laughs = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 12; i++) {
      String before = "*a" + (i - 1);
      laughs.append("a" + i + ": &a" + i + " [" + before + (", " + before).repeat(9) + "]\n");
    }
    assertThat(told(laughs.toString())).contains("more than 200000 values", "line 6");
  }

  @Test
  void an_alias_inside_what_it_repeats_is_refused() throws IOException {
    assertThat(told(LEAST + "panels: &all\n  - *all\n"))
        .contains("'*all' has a special meaning in YAML");
  }

  @Test
  void ten_thousand_levels_are_refused() throws IOException {
    assertThat(told("a: " + "[".repeat(10_000))).contains("more than 20 levels of nesting");
    assertThat(told("a: " + "{b: ".repeat(10_000))).contains("more than 20 levels of nesting");
    assertThat(told("- ".repeat(10_000) + "x")).contains("more than 20 levels of nesting");
  }

  @Test
  void a_hundred_megabytes_of_text_are_refused_before_they_are_read() throws IOException {
    Path file = folder.resolve("large.yaml");
    byte[] block = new byte[1_000_000];
    Arrays.fill(block, (byte) 'x');
    try (OutputStream out = Files.newOutputStream(file)) {
      out.write("title: ".getBytes(StandardCharsets.UTF_8));
      for (int i = 0; i < 100; i++) {
        out.write(block);
      }
    }
    assertThat(told(file)).contains("the file is too large: 101 MB; a plan may have 8 MB");
  }

  @Test
  void a_long_text_is_refused_with_its_limit() throws IOException {
    String told = told(LEAST.replace("Quay", "x".repeat(150_000)));
    assertThat(told).contains("150000 characters are too many; the limit is 10000");
    assertThat(told.length()).isLessThan(500);
    assertThat(told(LEAST.replace("Quay", "x".repeat(3_000_000))))
        .contains("line 1: the line is longer than 200000 characters");
    assertThat(told(LEAST.replace("Quay", "xyz\n ".repeat(300_000))))
        .contains("1199999 characters are too many");
  }

  @Test
  void a_hundred_thousand_values_are_refused_or_read_but_do_not_stop_the_program()
      throws IOException {
    String told = told(LEAST + "panels: [" + "{panel: 1},\n".repeat(50_000) + "]");
    assertThat(told).contains("two panels are called 1");
    assertThat(told(LEAST + "panels: [" + "{panel: 1},\n".repeat(150_000) + "]"))
        .contains("more than 200000 values");
  }

  @Test
  void of_very_many_problems_the_first_are_told() throws IOException {
    Path file = folder.resolve("plan.yaml");
    Files.writeString(file, LEAST + "panels: [" + "{panel: 1},\n".repeat(5_000) + "]");
    InputException wrong = catchThrowableOfType(InputException.class, () -> PlanReader.read(file));
    assertThat(wrong.problems()).hasSize(101);
    assertThat(wrong.problems().get(100).sentence()).isEqualTo("4899 more problems are not shown");
  }

  @Test
  void what_is_no_file_of_text_is_told_so() throws IOException {
    assertThat(told(folder)).contains("this is a folder, not a plan");
    assertThat(told(folder.resolve("none.yaml"))).contains("there is no such file");
    Path file = folder.resolve("latin.yaml");
    Files.write(file, "title: Quay\nscore: Größe.mid\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(told(file)).contains("line 2: the text is not UTF-8");
    Files.write(file, new byte[] {'t', 'i', 0, 1, '\n'});
    assertThat(told(file)).contains("line 1: there is a control character in the text");
  }
}
