package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.google.gson.JsonArray;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.barsheet.film.InputFile;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code check} prints, and for whom. */
class CheckCommandTest {

  private static final String PLAN = "scores/lamplighters-quay.yaml";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  @Test
  void findings_are_grouped_by_who_must_act() {
    assertThat(run("check", PLAN)).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .containsSubsequence(
            "animator\n  ×", "\ndirector\n  !", "\nperformers\n  !", "\ncomposer\n");
  }

  @Test
  void what_is_alike_is_one_sentence_and_all_of_it_fits_a_screen() {
    assertThat(run("check", PLAN)).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .contains(
            "· Five openings show nobody: loft-shutter-left, loft-shutter-right, quay-gate, hatch,"
                + " lantern\n")
        .endsWith("; --all prints everything\n");
    assertThat(out.toString().lines()).hasSizeLessThanOrEqualTo(40);
  }

  @Test
  void all_of_them_are_printed_on_request_and_counted_anyway() {
    assertThat(run("check", PLAN, "--all")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains("· hatch opens, but nobody appears in it\n");
    String totals = out.toString().lines().reduce((one, next) -> next).orElseThrow();
    out.getBuffer().setLength(0);
    run("check", PLAN);
    assertThat(out.toString()).contains("\n" + totals + ";");
    out.getBuffer().setLength(0);
    run("check", PLAN, "--format", "json");
    int all = JsonParser.parseString(out.toString()).getAsJsonArray().size();
    int told =
        Pattern.compile("\\d+")
            .matcher(totals)
            .results()
            .mapToInt(n -> Integer.parseInt(n.group()))
            .sum();
    assertThat(all).isEqualTo(told);
  }

  @Test
  void findings_as_json_say_severity_who_panel_place_frame_and_remedy() {
    assertThat(run("check", PLAN, "--format", "json")).isEqualTo(ExitStatus.DONE);
    JsonArray findings = JsonParser.parseString(out.toString()).getAsJsonArray();
    assertThat(findings.get(0).getAsJsonObject().keySet())
        .containsExactly("severity", "concerns", "panel", "place", "frame", "sentence", "remedy");
    assertThat(findings.get(0).getAsJsonObject().get("severity").getAsString()).isEqualTo("error");
  }

  @Test
  void what_was_set_aside_in_a_panel_table_is_a_remark(@TempDir Path folder) throws IOException {
    Files.copy(Path.of("scores/lamplighters-quay.mid"), folder.resolve("quay.mid"));
    Files.writeString(folder.resolve("panels.csv"), "panel,cue,weather\n1,,fog\n", UTF_8);
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan, "title: Quay\nscore: quay.mid\nfilm: {frame-rate: 24}\npanels: panels.csv\n", UTF_8);
    assertThat(run("check", plan.toString())).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains("panels.csv, line 1", "the column 'weather' is ignored");
    assertThat(Production.film(plan, Progress.SILENT).inputs())
        .extracting(InputFile::role, InputFile::name)
        .containsExactly(
            tuple("plan", "plan.yaml"), tuple("score", "quay.mid"), tuple("panels", "panels.csv"));
  }

  @Test
  void a_motif_too_plain_to_look_for_is_told_and_the_plan_goes_on(@TempDir Path folder)
      throws IOException {
    Files.copy(Path.of("scores/lamplighters-quay.mid"), folder.resolve("quay.mid"));
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan,
        """
        title: Quay
        score: quay.mid
        film: {frame-rate: 24}
        motifs:
          drop: {notes: C5/4 C5/4 C5/4}
          tide: {heard-at: {place: bar 1, length: 2 bars, part: Cello}}
        panels:
          - {panel: 1, cue: tide 1}
          - {panel: 2, cue: drop 2}
          - {panel: 3, cue: bar 20}
        """,
        UTF_8);
    assertThat(run("check", plan.toString())).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .contains("motif drop isn't looked for: a motif of 3 notes of one length")
        .contains("panel 2: asks for drop 2, which isn't looked for; it goes where it fits");
    out.getBuffer().setLength(0);
    assertThat(run("find", plan.toString())).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .contains("tide 1 ")
        .contains("motif drop isn't looked for: a motif of 3 notes of one length");
  }

  @Test
  void a_motif_with_one_shape_too_plain_is_looked_for_by_the_others(@TempDir Path folder)
      throws IOException {
    Files.copy(Path.of("scores/lamplighters-quay.mid"), folder.resolve("quay.mid"));
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan,
        """
        title: Quay
        score: quay.mid
        film: {frame-rate: 24}
        motifs:
          tide:
            heard-at: {place: bar 1, length: 2 bars, part: Cello}
            also:
              - {notes: C5/4 C5/4 C5/4}
        panels:
          - {panel: 1, cue: tide 1}
          - {panel: 2, cue: tide 2}
        """,
        UTF_8);
    assertThat(run("check", plan.toString())).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .contains("one shape of motif tide isn't looked for: a motif of 3 notes of one length")
        .doesNotContain("which isn't looked for");
    out.getBuffer().setLength(0);
    assertThat(run("find", plan.toString())).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains("tide 2 ").contains("one shape of motif tide isn't looked");
  }

  @Test
  void alternatives_tell_what_differs_from_the_best() {
    assertThat(run("check", PLAN, "--alternatives", "2")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .startsWith("best layout, as on the sheets\nalternative 1: ")
        .contains("panel 24 is on glimmer");
  }

  @Test
  void alternatives_as_csv_have_a_row_for_each_panel_of_each() {
    assertThat(run("check", PLAN, "--alternatives", "2", "--format", "csv"))
        .isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .startsWith("layout,more,why,panel,cue,bar,timecode,frame,frames,later\n1,0.000,,1,");
    assertThat(out.toString().lines()).hasSize(1 + 2 * 26);
  }

  @Test
  void alternatives_are_asked_for_by_a_sensible_number() {
    assertThat(run("check", PLAN, "--alternatives", "0")).isEqualTo(ExitStatus.USAGE);
    assertThat(err.toString()).contains("--alternatives takes a number from 1 to 100");
    assertThat(run("check", PLAN, "--alternatives", "2", "--fail-on", "remark"))
        .isEqualTo(ExitStatus.USAGE);
  }
}
