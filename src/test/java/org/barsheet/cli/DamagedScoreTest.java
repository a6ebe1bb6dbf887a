package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A score that has lost bytes may have lost notes: that is a warning, not a remark. */
class DamagedScoreTest {

  @TempDir private Path folder = Path.of("set by the test runner");

  private final StringWriter out = new StringWriter();
  private Path score = Path.of("");
  private Path plan = Path.of("");

  @BeforeEach
  void writePlan() throws IOException {
    score = folder.resolve("quay.mid");
    ShortScore.write(score);
    plan = folder.resolve("quay.yaml");
    Files.writeString(
        plan,
        "title: Quay\nscore: quay.mid\nfilm: {frame-rate: 24}\npanels:\n  - {panel: 1}\n",
        UTF_8);
  }

  private int check() {
    PrintWriter to = new PrintWriter(out);
    return Barsheet.run(to, to, "check", plan.toString(), "--fail-on", "warning");
  }

  @Test
  void a_whole_score_is_no_warning_and_neither_is_one_filled_up_with_zeros() throws IOException {
    assertThat(check()).as(out.toString()).isEqualTo(ExitStatus.DONE);
    byte[] whole = Files.readAllBytes(score);
    Files.write(score, Arrays.copyOf(whole, whole.length + 40));
    assertThat(check()).as(out.toString()).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains("40 stray bytes are left out");
  }

  @Test
  void a_score_that_ends_in_the_middle_of_a_track_is_a_warning() throws IOException {
    byte[] whole = Files.readAllBytes(score);
    Files.write(score, Arrays.copyOf(whole, whole.length * 3 / 4));
    assertThat(check()).isEqualTo(ExitStatus.FINDINGS);
    assertThat(out.toString()).contains("what's there is used", "notes may be missing");
  }

  @Test
  void a_score_with_damage_in_a_track_is_a_warning() throws IOException {
    byte[] whole = Files.readAllBytes(score);
    Arrays.fill(whole, whole.length / 2, whole.length / 2 + 8, (byte) 0xFF);
    Files.write(score, whole);
    assertThat(check()).isEqualTo(ExitStatus.FINDINGS);
    assertThat(out.toString()).contains("is damaged here", "is left out");
  }
}
