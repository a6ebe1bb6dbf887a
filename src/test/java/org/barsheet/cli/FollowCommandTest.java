package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Random;
import org.barsheet.follow.InventedMix;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The times of a score's beats in a recording, from words to exit status. */
class FollowCommandTest {

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(Path... files) {
    return Barsheet.run(
        new PrintWriter(out),
        new PrintWriter(err),
        "follow",
        files[0].toString(),
        files[1].toString(),
        "--format",
        "csv");
  }

  /** Twelve bars in 4/4 at 120 bpm, a new note on every eighth. */
  private static Path score(long seed, Path folder) throws IOException {
    Random random = new Random(seed);
    Track track = new Track().tempo(0, 500_000).meter(0, 4, 2);
    for (int i = 0; i < 96; i++) {
      track.note(240L * i, 240L * i + 200, 0, 60 + random.nextInt(19));
    }
    Path made = MidiBytes.file().track(track).into(folder);
    return Files.move(made, folder.resolve("score-" + seed + ".mid"));
  }

  /** A short score, a mix of it and a take, as examples name them. */
  static void prepare(Path folder) throws IOException {
    Path score = folder.resolve("score.mid");
    Files.move(score(1, folder), score, StandardCopyOption.REPLACE_EXISTING);
    InventedMix.write(ScoreReader.read(score), t -> 0.8 + 1.02 * t, folder.resolve("mix.wav"));
    Files.copy(score, folder.resolve("take3.mid"));
  }

  @Test
  void every_beat_gets_a_line_with_its_second_of_the_recording() throws IOException {
    Path score = score(1, folder);
    Path mix = folder.resolve("mix.wav");
    InventedMix.write(ScoreReader.read(score), t -> 0.8 + 1.02 * t, mix);

    assertThat(run(score, mix)).as("%s", err).isEqualTo(ExitStatus.DONE);

    assertThat(out.toString().lines().findFirst())
        .hasValue("bar,beat,score_seconds,seconds,confidence");
    String[] bar7 =
        out.toString()
            .lines()
            .filter(line -> line.startsWith("7,1,"))
            .findFirst()
            .get()
            .split(",", -1);
    assertThat(bar7[2]).isEqualTo("12.0000");
    assertThat(Math.abs(Double.parseDouble(bar7[3]) - 13.04)).isLessThan(0.0417);
    assertThat(Double.parseDouble(bar7[4])).isBetween(0.5, 1.0);
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void a_played_file_may_stand_in_for_the_recording() throws IOException {
    Path score = score(2, folder);
    Path take = Files.copy(score, folder.resolve("take3.mid"));

    assertThat(run(score, take)).as("%s", err).isEqualTo(ExitStatus.DONE);

    assertThat(out.toString()).contains("\n7,1,12.0000,12.0000,1.00\n");
  }

  @Test
  void another_piece_is_refused_by_name() throws IOException {
    Path take = score(4, folder);

    assertThat(run(score(3, folder), take)).isEqualTo(ExitStatus.BAD_INPUT);

    assertThat(err.toString()).contains("score-4.mid").contains("another piece");
    assertThat(out.toString()).isEmpty();
  }
}
