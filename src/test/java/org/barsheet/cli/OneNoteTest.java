package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.barsheet.score.MidiBytes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The smallest score there can be is answered in whole sentences. */
class OneNoteTest {

  @TempDir private Path folder = Path.of("");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private String plan = "";

  @BeforeEach
  void aFirstPlanForOneNote() throws IOException {
    MidiBytes.Track harp = new MidiBytes.Track().text(0, 3, "Harp").note(0, 480, 0, 60);
    Path score = folder.resolve("one.mid");
    Files.write(score, MidiBytes.file().track(harp).bytes());
    plan = folder.resolve("one.yaml").toString();
    run("begin", score.toString(), "--out", plan);
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
  }

  private int run(String... args) {
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  @Test
  void find_says_that_there_is_no_motif_to_find() {
    String said = "the plan names no motifs; add one under motifs (about suggests some)\n";
    assertThat(run("find", plan)).isEqualTo(ExitStatus.DONE);
    assertThat(out).hasToString(said);
    assertThat(run("find", plan, "--why", "bar 1")).isEqualTo(ExitStatus.DONE);
    assertThat(out).hasToString(said + said);
  }

  @Test
  void a_bar_too_far_is_told_of_the_only_one() {
    assertThat(run("where", plan, "bar 2")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err).hasToString("'bar 2': there is no bar 2\n  the music has only bar 1\n");
  }

  @Test
  void make_points_at_no_findings_where_there_are_none() {
    assertThat(run("make", plan)).isEqualTo(ExitStatus.DONE);
    assertThat(err).hasToString("0 errors, 0 warnings, 0 remarks\n");
  }
}
