package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletionException;
import org.barsheet.input.Limit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What is too large, is no file, or does not fit into memory: a sentence, never a trace. */
@Timeout(120)
class LimitsTest {

  private static final long LARGE = 3_000_000_000L;

  @TempDir private Path folder = Path.of("set by the test runner");

  private final StringWriter err = new StringWriter();

  @BeforeEach
  void writeScore() throws IOException {
    ShortScore.write(folder.resolve("quay.mid"));
  }

  private int run(String... args) {
    return Barsheet.run(new PrintWriter(new StringWriter()), new PrintWriter(err), args);
  }

  private Path plan(String score, String panel) throws IOException {
    return Files.writeString(
        folder.resolve("quay.yaml"),
        "title: Quay\nscore: " + score + "\nfilm: {frame-rate: 24}\npanels:\n  - " + panel + "\n",
        UTF_8);
  }

  /** A file of 3 GB that takes no room on the disk. */
  private Path large(String name) throws IOException {
    Path file = folder.resolve(name);
    try (RandomAccessFile hole = new RandomAccessFile(file.toFile(), "rw")) {
      hole.setLength(LARGE);
    }
    return file;
  }

  private Path pipe(String name) throws IOException, InterruptedException {
    Path pipe = folder.resolve(name);
    assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    return pipe;
  }

  private void assertRefused(int status, String... words) {
    assertThat(status).as(err.toString()).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains(words).doesNotContain("Exception", "\tat ");
    err.getBuffer().setLength(0);
  }

  @Test
  void a_file_of_three_gigabytes_is_refused_with_its_size_the_limit_and_what_to_do()
      throws IOException {
    Path score = large("large.mid");
    assertRefused(
        run("about", score.toString()),
        score + ": the file is too large: 3,000 MB; a score may have 64 MB\n  export");
    assertRefused(run("check", plan("large.mid", "{panel: 1}").toString()), "3,000 MB", "64 MB");
    Path drawing = large("fog.png");
    assertRefused(
        run("make", plan("quay.mid", "{panel: 1, drawing: fog.png}").toString()),
        "panel 1, drawing " + drawing + ": the file is too large: 3,000 MB;",
        "a drawing may have 64 MB\n  save it smaller");
    assertRefused(run("check", large("plan.yaml").toString()), "3,000 MB; a plan");
    Path table = large("panels.csv");
    Path plan = folder.resolve("tabled.yaml");
    Files.writeString(
        plan, "title: Q\nscore: quay.mid\nfilm: {frame-rate: 24}\npanels: panels.csv\n");
    assertRefused(run("check", plan.toString()), table + ": ", "3,000 MB; a table of panels may");
    Path timing = large("timing.json");
    assertRefused(
        run("compare", timing.toString(), timing.toString()), "3,000 MB; a timing.json may");
    Path bank = large("bank.sf2");
    assertRefused(
        run("make", plan("quay.mid", "{panel: 1}").toString(), "--sound-bank", bank.toString()),
        "3,000 MB; a sound bank may have 1,000 MB");
  }

  /** Only headers of recordings are read; a viewer's notes that cannot be read are passed over. */
  @Test
  void a_large_file_of_notes_is_passed_over_and_a_large_recording_is_not_read() throws IOException {
    large("quay-notes.csv");
    large("mix.wav");
    assertThat(run("check", plan("quay.mid", "{panel: 1}").toString())).isEqualTo(ExitStatus.DONE);
    assertRefused(
        run("check", plan("quay.mid\nmusic: {recording: mix.wav}", "{panel: 1}").toString()),
        "recording: ",
        "mix.wav");
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "it has no pipes and devices among its files")
  void pipes_and_devices_are_refused_before_they_are_opened() throws Exception {
    Path score = pipe("pipe.mid");
    String words = ": this is a pipe or a device, not ";
    assertRefused(run("about", score.toString()), score + words + "a score\n  copy");
    assertRefused(run("check", plan("pipe.mid", "{panel: 1}").toString()), words + "a score");
    assertRefused(run("check", pipe("pipe.yaml").toString()), words);
    for (String drawing : List.of(pipe("fog.png").toString(), "/dev/zero")) {
      assertRefused(
          run("make", plan("quay.mid", "{panel: 1, drawing: " + drawing + "}").toString()),
          "panel 1, drawing " + drawing + words + "a drawing");
    }
    assertRefused(
        run("make", plan("quay.mid", "{panel: 1, drawing: .}").toString()),
        "this is a folder, not a drawing");
    assertRefused(
        run("check", plan("quay.mid\nmusic: {recording: /dev/zero}", "{panel: 1}").toString()),
        "recording: there is no file /dev/zero");
  }

  @Test
  void too_little_memory_ends_with_one_sentence() throws Exception {
    ChildProgram run =
        ChildProgram.run(Map.of(), List.of("-Xmx8m"), "check", "scores/lamplighters-quay.yaml");
    assertThat(run.status()).as(run.said()).isEqualTo(ExitStatus.OWN_FAULT);
    assertThat(run.said().lines().filter(line -> !line.startsWith("Picked up")))
        .containsExactly(
            "Out of memory. Your files are unchanged."
                + " Give Java more (JAVA_TOOL_OPTIONS=-Xmx4g), or smaller scores and drawings.");
  }

  @Test
  void errors_of_java_end_with_a_sentence_wherever_they_are_met() {
    Faults faults = new Faults(new PrintWriter(err));
    assertThat(faults.told(new CompletionException(new OutOfMemoryError("Java heap space"))))
        .isEqualTo(ExitStatus.OWN_FAULT);
    assertThat(faults.told(new StackOverflowError())).isEqualTo(ExitStatus.OWN_FAULT);
    assertThat(err.toString())
        .contains("Out of memory", "nested too deeply")
        .doesNotContain("Error", "\tat ");
  }

  @Test
  void the_readme_states_every_limit() throws IOException {
    String readme = Files.readString(Path.of("README.md"), UTF_8);
    for (Limit limit : Limit.values()) {
      assertThat(readme)
          .contains(String.format(Locale.ROOT, "| %s | %,d MB |", limit.what(), limit.megabytes()));
    }
    assertThat(readme).contains(Limit.DRAWING_PIXELS / 1_000_000 + " million pixels");
  }
}
