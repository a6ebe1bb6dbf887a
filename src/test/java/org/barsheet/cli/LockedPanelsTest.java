package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What lies inside a locked panel is held, or the plan is refused by name. */
class LockedPanelsTest {

  private static final Path SCORE = Path.of("scores", "lamplighters-quay.mid").toAbsolutePath();

  private static final String PLAN =
      """
      title: A locked flap
      score: "%s"
      film: {frame-rate: 24}
      openings:
        flap: {left: 1, top: 1, width: 2, height: 2, hinge: left, to: 90 deg}
      performers:
        hornist: {part: Horn in F}
      panels:
        - {panel: 1, action: Nothing moves, cue: bar 1}
        - panel: 2
          action: A flap
          cue: bar 9
          locked: %s
          reveals: [{opening: flap, photographs: 12, slow: %s, lands-on: %s}]
          appears: [{performer: hornist, opening: flap}]
        - {panel: 3, action: Nothing moves, cue: bar 16}
      """;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path plan = Path.of("");

  @BeforeEach
  void sheetsAreMade() throws IOException {
    plan = folder.resolve("film.yaml");
    write("no", "both", "bar 11");
    assertThat(run("make", plan)).as("%s", err).isEqualTo(ExitStatus.DONE);
    write("yes", "both", "bar 11");
  }

  @Test
  void as_it_was_it_may_be_made_again() {
    assertThat(run("make", plan)).as("%s", err).isEqualTo(ExitStatus.DONE);
  }

  @Test
  void a_reveal_that_would_land_elsewhere_is_refused() throws IOException {
    write("yes", "both", "bar 12");
    assertThat(run("check", plan)).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString())
        .contains("flap in panel 2 was locked to land on frame")
        .contains("unlock panel 2 (locked: no)");
  }

  @Test
  void a_movement_that_would_be_shown_otherwise_is_refused() throws IOException {
    write("yes", "end", "bar 11");
    assertThat(run("make", plan)).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("panel 2 is locked, but flap would move differently in it");
  }

  @Test
  void under_another_name_the_plan_does_not_lose_its_locks() throws IOException {
    Path renamed = Files.move(plan, folder.resolve("renamed.yaml"));
    assertThat(run("check", renamed)).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("this film's sheets are in").contains("film-sheets");
    assertThat(run("check", renamed, "--out", folder.resolve("film-sheets")))
        .isEqualTo(ExitStatus.DONE);
  }

  @Test
  void without_any_sheets_a_lock_is_warned_about() throws IOException {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere")).resolve("film.yaml");
    Files.move(plan, elsewhere);
    assertThat(run("check", elsewhere)).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains("locked, but no earlier sheets hold its frames");
  }

  private void write(String locked, String slow, String landsOn) throws IOException {
    Files.writeString(plan, PLAN.formatted(SCORE, locked, slow, landsOn));
  }

  private int run(Object... words) {
    String[] arguments = new String[words.length];
    for (int i = 0; i < words.length; i++) {
      arguments[i] = words[i].toString();
    }
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), arguments);
  }
}
