package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.barsheet.production.FolderCopy;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every command once, from its words to its exit status. */
class CommandsTest {

  private static final String SCORE = "scores/lamplighters-quay.mid";
  private static final String PLAN = "scores/lamplighters-quay.yaml";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  @Test
  void about_says_what_is_in_a_score() {
    assertThat(run("about", SCORE)).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains("Celesta", "4/4 from bar 1", "Ferry horn", "Likely motifs");
    assertThat(err.toString()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "2, 1, a half note",
    "3, 3, an eighth note",
    "6, 3, a dotted quarter note",
    "12, 4, a dotted eighth note"
  })
  void about_says_which_note_a_felt_beat_is(
      int numerator, int power, String note, @TempDir Path folder) {
    Track meter = new Track().meter(0, numerator, power);
    Path score = MidiBytes.file().track(meter).track(Track.scale(480)).into(folder);
    assertThat(run("about", score.toString())).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains(" felt bpm at the start, " + note + " each, ");
  }

  /** Notes every 0.31 s in a file left at 120. */
  @Test
  void about_calls_no_beat_felt_that_is_not_followed(@TempDir Path folder) {
    Track track = new Track();
    for (long note = 0; note < 400; note++) {
      long on = Math.round(note * 297.6);
      track.note(on, on + 200, 0, note % 8 == 0 ? 36 : note % 2 == 0 ? 60 : 67);
    }
    Path score = MidiBytes.file().track(track).into(folder);
    assertThat(run("about", score.toString())).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .contains("  tempo    120 bpm in the file, not followed, 0 tempo events")
        .contains(" 96.8 bpm, ");
  }

  /** Panel 16 is on a timecode: 1 min 46 s 4 frames are 2548 frames at 24 fps, 106.17 s. */
  @Test
  void where_answers_for_panels_too() {
    assertThat(run("where", PLAN, "panel 16", "bar 1", "--format", "csv"))
        .isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .startsWith("place,bar,beat,seconds,timecode,frame\npanel 16,")
        .contains(",104.167,01:01:46:04,2548\nbar 1,1,1,0.833,01:00:02:20,68\n");
  }

  @Test
  void where_says_which_panels_there_are() {
    assertThat(run("where", PLAN, "panel 99x")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("'panel 99x': no panel is called 99x", "known here: 1, 2");
  }

  @Test
  void show_lists_every_panel_with_place_length_cue_and_action() {
    assertThat(run("show", PLAN, "--format", "csv")).isEqualTo(ExitStatus.DONE);
    List<String> lines = out.toString().lines().toList();
    assertThat(lines).hasSize(27);
    assertThat(lines.get(0)).isEqualTo("panel,bar,timecode,frames,length,cue,action");
    assertThat(lines.get(16))
        .startsWith("16,")
        .contains(",01:01:46:04,")
        .endsWith(",The swell lifts the ferry to the steps");
  }

  @Test
  void about_as_json_has_every_figure() {
    assertThat(run("about", SCORE, "--format", "json")).isEqualTo(ExitStatus.DONE);
    assertThat(JsonParser.parseString(out.toString()).getAsJsonObject().keySet())
        .contains(
            "format",
            "division",
            "notes",
            "firstOnsetSeconds",
            "lastOnsetSeconds",
            "lengthSeconds",
            "parts",
            "tempoEvents",
            "meters",
            "bars",
            "marks",
            "evidence",
            "suggestions",
            "readingNotes");
  }

  @Test
  void find_as_csv_lists_every_return() {
    assertThat(run("find", PLAN, "--format", "csv")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .startsWith(
            "motif,return,bar,beat,quarter,seconds,end_quarter,end_seconds,part,form,"
                + "transposition,score,certainty\n")
        .contains("\nglimmer,1,9,1,")
        .contains("\ntide,1,1,1,");
  }

  @Test
  void find_says_of_each_motif_how_far_to_rely_on_it() {
    assertThat(run("find", PLAN)).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .contains("\nglimmer: 20 certain; distinct: chance matches are unlikely\n")
        .contains("\ntide: 3 certain, 3 likely; ");
  }

  @Test
  void find_says_why_a_motif_is_not_found_at_a_place() {
    assertThat(run("find", PLAN, "--why", "bar 40")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .startsWith("bar 40\n  glimmer, bar 40 beat 3: likeness 0.")
        .contains(" needed (", "note 5 a step too low", "\n  tide, bar 40: ");
    assertThat(run("find", PLAN, "--why", "bar 400")).isEqualTo(ExitStatus.BAD_INPUT);
  }

  @Test
  void find_tells_what_sounds_at_a_place_though_it_began_before() {
    assertThat(run("find", PLAN, "--why", "bar 10")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains("glimmer 1 sounds there, from bar 9: as given");
  }

  @Test
  void where_answers_in_bars_seconds_timecode_and_frames() {
    // 2 s before the music, then 36.25 s of score: 38.25 s are 918 frames at 24 a second.
    assertThat(run("where", PLAN, "bar 12 beat 3", "--format", "csv")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .isEqualTo(
            """
            place,bar,beat,seconds,timecode,frame
            bar 12 beat 3,12,3,36.250,01:00:38:06,918
            """);
  }

  @Test
  void where_points_at_what_it_cannot_read() {
    assertThat(run("where", PLAN, "bar 12 bet 3")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("    bar 12 bet 3\n           ^");
  }

  @Test
  void where_says_which_motif_or_what_else_may_be_meant() {
    assertThat(run("where", PLAN, "Glimmer 3", "B")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString())
        .contains("'Glimmer 3': no motif is called Glimmer\n  did you mean glimmer?")
        .contains(
            "'B': no motif is called B\n  known here: glimmer, tide; a bar is written bar 12");
  }

  @Test
  void where_says_how_many_returns_there_are() {
    assertThat(run("where", PLAN, "glimmer 99")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("glimmer 99");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void beats_lists_bars_with_their_seconds() {
    assertThat(run("beats", SCORE, "--format", "csv")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .startsWith("bar,beat,quarter,seconds,downbeat\n0,1,0,0.000000,0\n1,1,1,0.833333,1\n");
    assertThat(err.toString()).contains("as written");
  }

  @Test
  void beats_refuses_a_meter_that_is_none() {
    assertThat(run("beats", SCORE, "--meter", "0/4")).isEqualTo(ExitStatus.USAGE);
    assertThat(err.toString()).contains("--meter");
  }

  @Test
  void check_fails_only_on_the_level_asked() {
    assertThat(run("check", PLAN)).isEqualTo(ExitStatus.DONE);
    assertThat(run("check", PLAN, "--fail-on", "error")).isEqualTo(ExitStatus.FINDINGS);
    assertThat(out.toString())
        .contains("animator", "×")
        .containsPattern("1 error, [0-9]+ warnings, [0-9]+ remarks");
  }

  @Test
  void a_plan_begun_from_a_score_can_be_made_as_it_stands(@TempDir Path folder) throws IOException {
    Path score = Files.copy(Path.of(SCORE), folder.resolve("quay.mid"));
    assertThat(run("begin", score.toString())).isEqualTo(ExitStatus.DONE);
    Path plan = folder.resolve("quay.yaml");
    assertThat(run("make", plan.toString())).isEqualTo(ExitStatus.DONE);
    assertThat(folder.resolve("quay-sheets/quay.xlsx")).isNotEmptyFile();
    assertThat(folder.resolve("quay-sheets/timing.json")).isNotEmptyFile();

    assertThat(run("begin", score.toString())).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("a file already has this name");
  }

  @Test
  void pack_gathers_a_film_that_makes_the_same_sheets_elsewhere(@TempDir Path folder)
      throws IOException {
    FolderCopy.copy(Path.of("scores"), folder.resolve("here"));
    String plan = folder.resolve("here/lamplighters-quay.yaml").toString();
    String zip = folder.resolve("film.zip").toString();
    assertThat(run("make", plan)).isEqualTo(ExitStatus.DONE);
    assertThat(run("pack", plan, zip)).isEqualTo(ExitStatus.DONE);
    assertThat(err.toString()).contains(" files packed into " + zip);

    Path there = FolderCopy.unzip(Path.of(zip), folder.resolve("there"));
    Path made = there.resolve("lamplighters-quay-sheets");
    Map<String, String> before = FolderCopy.checksums(made);
    assertThat(before).hasSizeGreaterThan(20);
    assertThat(run("make", there.resolve("lamplighters-quay.yaml").toString()))
        .isEqualTo(ExitStatus.DONE);
    assertThat(run("make", plan)).isEqualTo(ExitStatus.DONE);
    assertThat(FolderCopy.checksums(made))
        .isEqualTo(FolderCopy.checksums(folder.resolve("here/lamplighters-quay-sheets")))
        .isEqualTo(before);
  }

  @Test
  void a_plan_that_cannot_be_leaves_the_folder_as_it_was(@TempDir Path folder) throws IOException {
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(plan, "title: Quay\nscore: none.mid\nfilm: {frame-rate: 24}\n", UTF_8);
    assertThat(run("make", plan.toString(), "--out", folder.resolve("out").toString()))
        .isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(folder.resolve("out")).doesNotExist();
    assertThat(err.toString()).doesNotContain("Exception");
  }

  @Test
  void wrong_words_are_wrong_usage() {
    assertThat(run("nonsense")).isEqualTo(ExitStatus.USAGE);
    assertThat(run("about", SCORE, "--format", "xml")).isEqualTo(ExitStatus.USAGE);
    assertThat(run()).isEqualTo(ExitStatus.USAGE);
  }
}
