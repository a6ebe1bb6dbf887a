package org.barsheet.cli;

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

/** What was sent out is compared with what is made later, however many makes lie between. */
class IssueTest {

  private static final Path SCORE = Path.of("scores", "lamplighters-quay.mid").toAbsolutePath();

  private static final String PLAN =
      """
      title: Sent out
      score: "%s"
      film: {frame-rate: 24}
      openings:
        flap: {left: 1, top: 1, width: 2, height: 2, hinge: left, to: 90 deg}
      performers:
        celesta: {part: Celesta}
      panels:
        - {panel: 1, action: Nothing moves}
        - panel: 2
          action: A flap
          cue: bar 9
          reveals: [{opening: flap, photographs: 12, lands-on: bar %d}]
          appears: [{performer: celesta, opening: flap}]
        - {panel: 3, action: Nothing moves, cue: bar %d}
      """;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path sheets = Path.of("");

  @BeforeEach
  void theSecondDraftIsSentOut() throws IOException {
    sheets = folder.resolve("film-sheets");
    make(11, 16, "--issue", "second draft");
    make(11, 17);
    make(11, 18);
  }

  @Test
  void compare_says_to_each_person_what_differs_from_it() {
    assertThat(run("compare", sheets.toString(), "--since", "second draft"))
        .as("%s", err)
        .isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .contains("editor\n  panel 3 is now on bar 18 and begins 120 frames later")
        .containsPattern("celesta\n  panel 2, in flap: bars 10 to 17, .*; was bars 10 to 15, ");
  }

  @Test
  void the_call_says_what_differs_from_it() throws IOException {
    assertThat(sheets.resolve("calls").resolve("celesta.html"))
        .content()
        .contains("Changed since second draft", "was bars 10 to 15");
  }

  @Test
  void what_is_as_it_was_sent_out_is_told_to_nobody() throws IOException {
    make(11, 16);
    assertThat(run("compare", sheets.toString(), "--since", "second draft"))
        .isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).startsWith("Nothing moved");
    assertThat(sheets.resolve("calls").resolve("celesta.html")).content().doesNotContain("Changed");
  }

  @Test
  void the_next_issue_is_compared_with_the_last_one_and_both_are_remembered() throws IOException {
    make(11, 18, "--issue", "third draft");
    assertThat(sheets.resolve("calls").resolve("celesta.html"))
        .content()
        .contains("Changed since second draft");
    make(11, 18);
    assertThat(sheets.resolve("calls").resolve("celesta.html")).content().doesNotContain("Changed");
    assertThat(run("compare", sheets.toString(), "--since", "second draft")).isZero();
    assertThat(out.toString()).contains("was bars 10 to 15");
  }

  @Test
  void a_name_nothing_was_sent_out_under_is_told_with_those_there_are() {
    assertThat(run("compare", sheets.toString(), "--since", "first draft"))
        .isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString())
        .contains("nothing was sent out as 'first draft'", "it was sent out as: second draft");
  }

  private void make(int landing, int next, String... more) throws IOException {
    Path plan =
        Files.writeString(folder.resolve("film.yaml"), PLAN.formatted(SCORE, landing, next));
    String[] words = Arrays.copyOf(new String[] {"make", plan.toString()}, 2 + more.length);
    System.arraycopy(more, 0, words, 2, more.length);
    assertThat(run(words)).as("%s", err).isEqualTo(ExitStatus.DONE);
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
  }

  private int run(String... words) {
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), words);
  }
}
