package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes wrong on somebody's first evening: one clear message each, nothing half written. */
class BadInputTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder = Path.of("");

  @BeforeEach
  void copyScore() throws IOException {
    Files.copy(Path.of("scores/lamplighters-quay.mid"), folder.resolve("quay.mid"));
  }

  private int run(String... args) {
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text, UTF_8);
  }

  private Path plan(String score, String... panels) throws IOException {
    return write(
        "plan.yaml",
        "title: Quay\nscore: "
            + score
            + "\nfilm: {frame-rate: 24}\nmotifs:\n  glimmer: {heard-at: {place: bar 9, length: 5"
            + " beats, part: Celesta}, accent: last}\npanels:\n  - "
            + String.join("\n  - ", panels)
            + "\n");
  }

  /** Makes a plan, which is refused in these words, with nothing written. */
  private void refused(Path plan, String... words) throws IOException {
    assertThat(run("make", plan.toString(), "--out", folder.resolve("sheets").toString()))
        .isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString())
        .contains(words)
        .doesNotContain("Exception", "\tat ")
        .doesNotContainIgnoringCase("null")
        .doesNotContain("invalid", "illegal");
    assertThat(out.toString()).isEmpty();
    assertThat(folder.resolve("sheets")).doesNotExist();
  }

  @Test
  void a_plan_that_is_not_there() throws IOException {
    refused(folder.resolve("none.yaml"), "none.yaml: there is no such file");
  }

  @Test
  void a_score_that_is_not_there() throws IOException {
    refused(
        plan("none.mid", "{panel: 1}"), "there is no file", "put the MIDI file beside the plan");
  }

  @Test
  void an_empty_plan_and_an_empty_score() throws IOException {
    refused(write("empty.yaml", ""), "the plan is empty");
    write("empty.mid", "");
    refused(plan("empty.mid", "{panel: 1}"), "empty.mid: the file is empty");
  }

  @Test
  void a_text_for_a_score_and_a_score_for_a_plan() throws IOException {
    write("text.mid", "Fog over the quay");
    refused(plan("text.mid", "{panel: 1}"), "text.mid, byte 0: this is not a MIDI file");
    refused(
        folder.resolve("quay.mid"),
        "this is a MIDI file, not a plan",
        "barsheet begin " + folder.resolve("quay.mid"));
  }

  @Test
  void a_folder_for_a_plan_and_for_a_score() throws IOException {
    refused(folder, "this is a folder, not a plan");
    Files.createDirectory(folder.resolve("score"));
    refused(plan("score", "{panel: 1}"), "this is a folder, not a score");
  }

  @Test
  void a_score_that_was_cut_off_is_read_as_far_as_it_goes_and_says_so() throws IOException {
    byte[] whole = Files.readAllBytes(folder.resolve("quay.mid"));
    Files.write(folder.resolve("cut.mid"), Arrays.copyOf(whole, 3000));
    assertThat(run("about", folder.resolve("cut.mid").toString())).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains("should have 891 bytes, but the file ends after 291");
    out.getBuffer().setLength(0);
    refused(plan("cut.mid", "{panel: 1}"), "the score has no part 'Celesta'");
  }

  @Test
  void ten_mistakes_are_told_at_once() throws IOException {
    Path plan =
        write(
            "ten.yaml",
            """
            titel: Quay
            score: quay.mid
            film: {frame-rate: 23, shown: on foo}
            motifs:
              glimmer: {heard-at: {place: bar 9, lenght: 5 beats, part: Celesta}, accent: middle}
            panels:
              - {panel: 1, length: four bars}
              - {panel: 1, cue: glimmre}
              - {panel: 2, cue: "glimmer #3"}
              - {panel: 3, locked: maybe}
            """);
    refused(
        plan,
        "did you mean title?",
        "'23' isn't a frame rate",
        "'on foo' is not known here",
        "did you mean length?",
        "this isn't a note of the motif",
        "a number is missing here",
        "two panels are called 1",
        "did you mean glimmer?",
        "'#3' isn't understood here",
        "'maybe' is not known here");
    assertThat(err.toString().lines().filter(line -> line.startsWith(plan.toString()))).hasSize(10);
  }

  @Test
  void two_panels_on_one_cue() throws IOException {
    refused(
        plan("quay.mid", "{panel: 1}", "{panel: 2, cue: bar 9}", "{panel: 3, cue: bar 9}"),
        "panels 2 and 3 both ask for bar 9",
        "only one panel fits on a cue");
    refused(
        plan(
            "quay.mid",
            "{panel: 1}",
            "{panel: 2, cue: glimmer 1}",
            "{panel: 3, cue: glimmer near bar 9}"),
        "panels 2 and 3 both ask for glimmer 1");
  }

  @Test
  void a_film_of_more_frames_than_a_spreadsheet_has_rows() throws IOException {
    Path plan = plan("quay.mid", "{panel: 1}");
    String longer = Files.readString(plan).replace("24}", "24, tail: 50000 s}");
    refused(
        write("plan.yaml", longer),
        "plan.yaml: the film has 1,20",
        " frames; its exposure sheet can hold 900,000",
        "split the score into reels");
  }

  @Test
  void a_cue_that_does_not_exist() throws IOException {
    refused(
        plan("quay.mid", "{panel: 1}", "{panel: 2, cue: glimmer 99}", "{panel: 3, cue: bar 400}"),
        "you asked for glimmer 99; the score has only 17",
        "there is no bar 400",
        "the music has bars 0 to 87");
  }

  @Test
  void a_length_past_the_film() throws IOException {
    refused(
        plan("quay.mid", "{panel: 1, length: 900 bars}"),
        "panel 1 asks for 900 bars, which is longer than the whole film");
  }

  @Test
  void a_file_in_the_place_of_the_folder_and_a_folder_in_the_place_of_a_file() throws IOException {
    Path plan = plan("quay.mid", "{panel: 1}");
    Path file = write("sheets.txt", "my notes");
    assertThat(run("make", plan.toString(), "--out", file.toString()))
        .isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("sheets.txt: a file already has this folder's name");
    assertThat(file).hasContent("my notes");

    Path sheets = folder.resolve("sheets");
    Files.createDirectories(sheets.resolve("plan-cues.csv"));
    assertThat(run("make", plan.toString(), "--out", sheets.toString()))
        .isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("plan-cues.csv: a folder already has this name");
    try (Stream<Path> left = Files.list(sheets)) {
      assertThat(left).containsExactly(sheets.resolve("plan-cues.csv"));
    }
  }

  @Test
  void a_folder_that_may_not_be_written_into() throws IOException {
    Path closed = Files.createDirectory(folder.resolve("closed"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
    assumeThat(Files.isWritable(closed)).as("the user may write everywhere").isFalse();
    assertThat(run("make", plan("quay.mid", "{panel: 1}").toString(), "--out", closed.toString()))
        .isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("closed: you're not allowed to write into this folder");
  }
}
