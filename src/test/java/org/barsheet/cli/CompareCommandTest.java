package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {

  private static final Path SCORE = Path.of("scores", "lamplighters-quay.mid").toAbsolutePath();
  private static final String PLAN =
      """
      title: Two flaps
      score: "%s"
      film: {frame-rate: 24, music-starts: %s}
      motifs:
        glimmer: {heard-at: {place: bar 9, length: 5 beats, part: Celesta}, accent: last}
      openings:
        flap: {left: 1, top: 1, width: 2, height: 2, hinge: left, to: 90 deg}
      panels:
        - {panel: 1, action: Nothing moves}
        - {panel: 2, action: A flap, cue: glimmer near bar %d, reveals: [{opening: flap, photographs: %d}]}
      """;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path monday = Path.of("");

  @BeforeEach
  void aFirstPlan() throws IOException {
    monday = plan("monday", "2 s", 13, 20);
  }

  private Path plan(String name, String musicStarts, int bar, int photographs) throws IOException {
    return Files.writeString(
        folder.resolve(name + ".yaml"), PLAN.formatted(SCORE, musicStarts, bar, photographs));
  }

  private int run(Object... words) {
    String[] arguments = new String[words.length];
    for (int i = 0; i < words.length; i++) {
      arguments[i] = words[i].toString();
    }
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), arguments);
  }

  @Test
  void a_plan_against_itself_has_moved_nowhere() {
    assertThat(run("compare", monday, monday)).isEqualTo(ExitStatus.DONE);
    assertThat(out).hasToString("Nothing moved. Every photograph is still usable.\n");
  }

  @Test
  void a_later_music_start_moves_every_bar_and_leaves_the_photographs() throws IOException {
    Path tuesday = plan("tuesday", "2.5 s", 13, 20);
    assertThat(run("compare", monday, tuesday)).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .startsWith("director\n  bars 0 to 87 now begin 12 frames later\n")
        .contains("  panel 2 now begins 12 frames later (glimmer 2, bar 13)\n")
        .contains("flap 000 to 020: all 21 still usable\n");
  }

  @Test
  void a_folder_of_sheets_is_compared_with_a_plan_not_yet_made() throws IOException {
    Path sheets = folder.resolve("sheets");
    assertThat(run("make", monday, "--out", sheets)).isEqualTo(ExitStatus.DONE);
    out.getBuffer().setLength(0);
    Path tuesday = plan("tuesday", "2 s", 13, 40);
    assertThat(run("compare", sheets, tuesday, "--format", "csv")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .startsWith("who,what,which,before,now,frames_later,remedy\n")
        .contains("photographs,flap 000,")
        .contains(
            "flap 002,flap 001,5.0 %,,\"set the old photographs aside, then rename flap 001 to this one"
                + " (0.0 % off)\"\n");
  }

  @Test
  void making_again_says_what_moved_and_puts_it_on_a_sheet()
      throws IOException, InvalidFormatException {
    Path sheets = folder.resolve("sheets");
    run("make", monday, "--out", sheets);
    assertThat(sheetNames(sheets.resolve("monday.xlsx"))).doesNotContain("Changes");
    plan("monday", "2.5 s", 13, 20);
    err.getBuffer().setLength(0);

    assertThat(run("make", monday, "--out", sheets)).isEqualTo(ExitStatus.DONE);
    assertThat(err.toString())
        .contains("since the sheets made before:\n  bars 0 to 87 now begin 12 frames later\n");
    assertThat(sheetNames(sheets.resolve("monday.xlsx"))).contains("Changes");

    err.getBuffer().setLength(0);
    run("make", monday, "--out", sheets);
    assertThat(err.toString()).doesNotContain("since the sheets");
    assertThat(sheetNames(sheets.resolve("monday.xlsx"))).doesNotContain("Changes");
  }

  private static Iterable<String> sheetNames(Path workbook)
      throws IOException, InvalidFormatException {
    try (XSSFWorkbook book = new XSSFWorkbook(workbook.toFile())) {
      List<String> names = new ArrayList<>();
      book.forEach(sheet -> names.add(sheet.getSheetName()));
      return names;
    }
  }

  @Test
  void two_scores_are_compared_bar_by_bar() {
    assertThat(run("compare", SCORE, SCORE)).isEqualTo(ExitStatus.DONE);
    assertThat(out).hasToString("nothing changed\n");
  }

  @Test
  void a_score_is_compared_with_a_score_only() {
    assertThat(run("compare", SCORE, monday)).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("a score can only be compared with a score");
  }

  @Test
  void a_folder_without_sheets_is_bad_input() {
    assertThat(run("compare", folder, monday)).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("timing.json");
  }
}
