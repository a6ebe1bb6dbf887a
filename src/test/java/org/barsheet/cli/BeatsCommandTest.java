package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Beats of scores that hold little, and of wishes that cannot be met. */
class BeatsCommandTest {

  private static final String QUAY = "scores/lamplighters-quay.mid";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  private int beats(Track track, String tempo) {
    Path file = MidiBytes.file().track(track).into(folder);
    return run("beats", file.toString(), "--tempo", tempo, "--format", "csv");
  }

  @ParameterizedTest
  @CsvSource({"auto", "written", "played"})
  void a_file_without_notes_has_the_bars_that_are_written(String tempo) {
    assertThat(beats(new Track().tempo(0, 500_000), tempo)).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains("\n1,1,0,0.000000,1\n");
    assertThat(err.toString()).contains("there are no notes to judge the tempo by");
  }

  @ParameterizedTest
  @CsvSource({"auto", "written", "played"})
  void one_note_says_nothing_of_the_tempo(String tempo) {
    assertThat(beats(new Track().note(480, 960, 0, 60), tempo)).isEqualTo(ExitStatus.DONE);
    assertThat(err.toString()).contains("too few notes (1 note) to judge the tempo by");
  }

  @Test
  void asked_for_playing_that_has_no_pulse_it_says_that_bars_are_as_written() {
    assertThat(beats(new Track().note(480, 960, 0, 60), "played")).isEqualTo(ExitStatus.DONE);
    assertThat(err.toString()).contains("  ? no beats found in the playing");
  }

  @Test
  void drums_alone_have_beats() {
    Track drums = new Track();
    for (int i = 0; i < 64; i++) {
      drums.note(240L * i, 240L * i + 60, 9, i % 4 == 0 ? 36 : 42);
    }
    assertThat(beats(drums, "auto")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString().lines().count()).isGreaterThan(30);
  }

  @Test
  void two_hours_of_silence_are_counted_through() {
    Track track = new Track().note(0, 480, 0, 60).note(2 * 3600 * 960, 2 * 3600 * 960 + 480, 0, 60);
    assertThat(beats(track, "auto")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString().lines().count()).isGreaterThan(4 * 3600);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--pin | 1=-3 | --pin '1=-3' is not a pin",
        "--meter | 0/4 | --meter: no meter has 0 beats",
        "--meter | 4/129 | --meter: no meter counts 1/129 notes",
        "--bpm | 0 | --bpm '0' is not a tempo; write bpm, 10 to 999",
        "--bpm | 1000000 | --bpm '1000000' is not a tempo"
      })
  void wishes_that_mean_nothing_are_wrong_usage(String option, String value, String sentence) {
    assertThat(run("beats", QUAY, option, value)).isEqualTo(ExitStatus.USAGE);
    assertThat(err.toString()).contains(sentence);
  }

  @Test
  void pins_that_clash_are_refused_with_both() {
    assertThat(run("beats", QUAY, "--pin", "5=3", "--pin", "2=9")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("bar 2 at 9.000 s and bar 5 at 3.000 s run backwards");
  }

  @Test
  void a_pin_that_puts_the_music_before_the_recording_is_doubted() {
    assertThat(run("beats", QUAY, "--pin", "1=0.1")).isEqualTo(ExitStatus.DONE);
    assertThat(err.toString()).contains("the music begins 0.733 s before the recording does");
  }

  @Test
  void a_meter_of_4_128_that_a_file_writes_is_counted() {
    Track track = new Track().meter(0, 4, 7).note(0, 480, 0, 60).note(480, 960, 0, 62);
    assertThat(beats(track, "auto")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains("\n1,2,0.03125,0.015625,0\n");
  }

  @Test
  void hints_for_playing_say_so_where_bars_are_written() {
    assertThat(run("beats", QUAY, "--bpm", "96")).isEqualTo(ExitStatus.DONE);
    assertThat(err.toString())
        .contains(
            "tempo and bars are the file's own; to go by --meter and --bpm, add --tempo played");
    err.getBuffer().setLength(0);
    assertThat(run("beats", QUAY, "--bpm", "96", "--tempo", "played")).isEqualTo(ExitStatus.DONE);
    assertThat(err.toString()).doesNotContain("own; to go by");
  }
}
