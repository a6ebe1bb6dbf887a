package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import org.barsheet.production.Watcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person saves their plan again and again; each save is answered by what moved. */
class WatchTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path plan = Path.of("");

  @BeforeEach
  void copyScore(@TempDir Path folder) throws IOException {
    Files.copy(Path.of("scores/lamplighters-quay.mid"), folder.resolve("quay.mid"));
    plan = folder.resolve("plan.yaml");
  }

  private static String text(String panels) {
    return "title: Quay\nscore: quay.mid\nfilm: {frame-rate: 24}\npanels:\n" + panels;
  }

  private static final String FIRST = "  - {panel: 1}\n  - {panel: 2, cue: bar 9}\n";

  /** Saves these texts one after another, each when the one before has been answered. */
  private int run(String command, String... texts) throws IOException {
    Files.writeString(plan, texts[0], UTF_8);
    Iterator<String> saves = List.of(texts).subList(1, texts.length).iterator();
    Watcher.Pause pause =
        new Watcher.Pause() {
          private boolean settled = true;

          @Override
          public boolean thenLookAgain() {
            settled = !settled;
            if (!settled && saves.hasNext()) {
              save(saves.next());
              return true;
            }
            return settled;
          }
        };
    return Barsheet.run(
        new PrintWriter(out), new PrintWriter(err), pause, command, plan.toString(), "--watch");
  }

  private void save(String text) {
    try {
      Files.writeString(plan, text, UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void check_says_what_moved_and_which_findings_are_new() throws IOException {
    assertThat(
            run(
                "check",
                text(FIRST),
                text(FIRST.replace("bar 9", "bar 10, length: 3 bars")),
                text(FIRST.replace("bar 9", "bar 10, length: 3 bars, action: The roofs"))))
        .isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .containsSubsequence(
            "0 errors, 0 warnings",
            "plan.yaml saved: panels moved\n",
            "  panel 2 is now on bar 10 and begins 60 frames later; it was on bar 9\n",
            "  new: ! panel 2, bar 10: gets ",
            "plan.yaml saved: nothing moved\n");
    assertThat(err.toString())
        .isEqualTo("watching " + plan + " and the files it names; Ctrl-C stops\n");
  }

  @Test
  void a_save_that_cannot_be_used_is_told_and_the_next_is_compared_with_the_last_good_one()
      throws IOException {
    assertThat(
            run(
                "make",
                text(FIRST),
                text(FIRST.replace("bar 9", "bar 999")),
                text(FIRST.replace("bar 9", "bar 10"))))
        .isEqualTo(ExitStatus.DONE);
    assertThat(err.toString()).contains("bar 999", "fix this and save again; nothing was changed");
    assertThat(out.toString())
        .endsWith(
            """
            plan.yaml saved: panels moved
              panel 2 is now on bar 10 and begins 60 frames later; it was on bar 9
            0 errors, 0 warnings, 0 remarks
            """);
  }

  @Test
  void a_plan_that_is_broken_at_first_is_waited_for() throws IOException {
    assertThat(run("check", "title: 'Quay", text(FIRST))).isEqualTo(ExitStatus.DONE);
    assertThat(err.toString()).contains("fix this and save again");
    assertThat(out.toString()).contains("0 errors, 0 warnings").doesNotContain("saved");
  }

  @Test
  void watching_prints_text_only() {
    assertThat(
            Barsheet.run(
                new PrintWriter(out),
                new PrintWriter(err),
                "check",
                plan.toString(),
                "--watch",
                "--format",
                "json"))
        .isEqualTo(ExitStatus.USAGE);
  }
}
