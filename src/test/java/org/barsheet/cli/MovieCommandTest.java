package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.barsheet.outside.OutsideProgram;
import org.barsheet.score.MidiBytes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code make --movie}: a whole movie beside the sheets, or everything as it was. */
class MovieCommandTest {

  @TempDir private Path folder;
  private Path plan = Path.of("");
  private Path sheets = Path.of("");
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void writeThePlan() throws IOException, InterruptedException {
    OutsideProgram.output("ffmpeg", "-version");
    MidiBytes.write(folder, MidiBytes.file().track(MidiBytes.Track.scale(480)).bytes());
    plan = folder.resolve("plan.yaml");
    sheets = folder.resolve("plan-sheets");
    try (Stream<Path> files = Files.list(folder)) {
      Path score = files.filter(file -> file.toString().endsWith(".mid")).findFirst().orElseThrow();
      Files.writeString(
          plan,
          """
          title: Quay
          score: %s
          film: {frame-rate: 24, frame-size: 320x180}
          openings:
            lamp: {left: 3, top: 2, width: 4, height: 5, hinge: left, to: 90 deg}
          panels:
            - {panel: 1, action: Fog}
            - {panel: 2, action: Dusk, cue: bar 2}
          """
              .formatted(score.getFileName()),
          UTF_8);
    }
  }

  private int make(String... more) {
    List<String> words = new ArrayList<>(List.of("make", plan.toString()));
    words.addAll(List.of(more));
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), words.toArray(String[]::new));
  }

  private Path program(String script) throws IOException {
    Path program = folder.resolve("ffmpeg that breaks");
    Files.writeString(program, "#!/bin/sh\n" + script + "\n", UTF_8);
    return Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private String probed(String file, String entries) throws IOException, InterruptedException {
    return OutsideProgram.output(
        "ffprobe",
        "-v",
        "error",
        "-count_frames",
        "-show_entries",
        entries,
        "-of",
        "csv=p=0",
        sheets.resolve(file).toString());
  }

  @Test
  void a_movie_of_the_whole_film_lies_beside_the_sheets_with_a_text()
      throws IOException, InterruptedException {
    assertThat(make("--movie")).as(err.toString()).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString()).contains("plan.mp4", "plan-movie.txt");
    assertThat(probed("plan.mp4", "stream=codec_name").lines()).contains("h264", "aac");
    assertThat(sheets.resolve("plan-movie.txt"))
        .content()
        .contains("Quay: the film so far", "Sound: the guide", "photosensitive epilepsy");
    assertThat(err.toString()).contains("have the finished film analyzed");
    assertThat(sheets.resolve(".barsheet")).doesNotExist();
  }

  @Test
  void it_begins_and_ends_where_it_is_told_to() throws IOException, InterruptedException {
    String[] asked = {"--movie", "--from", "panel 2", "--to", "bar 2 beat 3", "--width", "160"};
    assertThat(make(asked)).as(err.toString()).isEqualTo(ExitStatus.DONE);
    assertThat(probed("plan.mp4", "stream=nb_read_frames").lines().findFirst()).contains("24");
    assertThat(probed("plan.mp4", "stream=width,height")).startsWith("160,114");
  }

  /** Panel 2 begins with bar 2, on frame 48; a bar of 4 beats of half a second is 48 frames. */
  @Test
  void it_counts_into_panels_as_the_plan_does() throws IOException {
    Path frames = folder.resolve("frames");
    assertThat(
            make(
                "--frames",
                frames.toString(),
                "--from",
                "36 f into panel 2",
                "--to",
                "1 bar into panel 2"))
        .as(err.toString())
        .isEqualTo(ExitStatus.DONE);
    try (Stream<Path> files = Files.list(frames).sorted()) {
      assertThat(files.map(file -> file.getFileName().toString()).toList())
          .hasSize(12)
          .startsWith("plan-000084.png")
          .endsWith("plan-000095.png");
    }
  }

  @Test
  void a_clean_one_has_no_strip() throws IOException, InterruptedException {
    assertThat(make("--movie", "--clean", "--to", "bar 1 beat 3"))
        .as(err.toString())
        .isEqualTo(ExitStatus.DONE);
    assertThat(probed("plan.mp4", "stream=width,height")).startsWith("160,90");
  }

  @Test
  void frames_are_written_without_ffmpeg() throws IOException {
    Path frames = folder.resolve("frames");
    assertThat(make("--frames", frames.toString(), "--from", "panel 2", "--to", "bar 2 beat 2"))
        .as(err.toString())
        .isEqualTo(ExitStatus.DONE);
    try (Stream<Path> files = Files.list(frames)) {
      assertThat(files.toList()).hasSize(12).allMatch(file -> file.toString().endsWith(".png"));
    }
    BufferedImage first = ImageIO.read(frames.resolve("plan-000048.png").toFile());
    assertThat(first.getWidth()).isEqualTo(160);
  }

  @Test
  void an_ffmpeg_that_is_not_there_is_told_before_anything_is_written() {
    Path nowhere = folder.resolve("nowhere/ffmpeg");
    assertThat(make("--movie", "--ffmpeg", nowhere.toString())).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString())
        .isEqualTo(
            nowhere
                + ": this ffmpeg doesn't run\n  install ffmpeg, name it with --ffmpeg FILE, or write"
                + " the frames as PNG with --frames DIR\n");
    assertThat(sheets).doesNotExist();
  }

  /** As on a full disk: the second one may write no more than 4 kB (a limit of the shell's). */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "[ \"$2\" = -version ] && exit 0; head -c 100000 >/dev/null; echo 'No space left' >&2; exit 1",
        "[ \"$2\" = -version ] && exit 0; ulimit -f 4; exec ffmpeg \"$@\""
      })
  void where_ffmpeg_breaks_off_everything_stays_as_it_was(String script) throws IOException {
    assertThat(make()).isEqualTo(ExitStatus.DONE);
    byte[] page = Files.readAllBytes(sheets.resolve("plan.html"));
    Path breaks = program(script);
    assertThat(make("--movie", "--ffmpeg", breaks.toString(), "--width", "320"))
        .isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString())
        .contains(sheets.resolve("plan.mp4") + ": ffmpeg stopped", "check that the disk has room");
    assertThat(err.toString()).doesNotContain("Internal error", "Exception");
    assertThat(sheets.resolve("plan.mp4")).doesNotExist();
    assertThat(sheets.resolve(".barsheet")).doesNotExist();
    assertThat(sheets.resolve("plan.html")).hasBinaryContent(page);
  }

  @Test
  void a_place_that_is_none_is_told() {
    assertThat(make("--movie", "--from", "panel 7")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("'panel 7': no panel is called 7");
    assertThat(make("--movie", "--from", "bar 2", "--to", "bar 1")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("--from bar 2 --to bar 1: no frame of the film lies there");
    assertThat(make("--movie", "--to", "bar x")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("--to: ");
    assertThat(sheets).doesNotExist();
  }

  @Test
  void options_of_a_movie_that_nobody_asked_for_are_told() {
    assertThat(make("--width", "640")).isEqualTo(ExitStatus.USAGE);
    assertThat(err.toString())
        .contains("barsheet make: --width says how a movie is to be; ask for one with --movie");
    assertThat(make("--movie", "--width", "20")).isEqualTo(ExitStatus.USAGE);
    assertThat(err.toString()).contains("--width: 20 isn't from 64 to 7680");
  }
}
