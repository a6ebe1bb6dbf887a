package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.workbook.pen.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands on the sheet Players of clips that came as the plan's table tells. */
class PlayersClipsTest {

  @TempDir private Path folder;

  private FilmSheet film(String clips) throws IOException {
    Path score = Path.of("scores/lamplighters-quay.mid").toAbsolutePath();
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan,
        """
        title: Quay
        score: %s
        film: {frame-rate: 24}
        performers:
          harpist: {part: Harp}
        clips: %s
        panels: [{panel: 1}]
        """
            .formatted(score, clips));
    return Production.film(plan, folder, Progress.SILENT);
  }

  /** A second of silence, 44,100 samples of it. */
  private void deliver(String name) throws IOException {
    AudioFormat format = new AudioFormat(44_100, 16, 1, true, false);
    AudioInputStream second =
        new AudioInputStream(new ByteArrayInputStream(new byte[88_200]), format, 44_100);
    AudioSystem.write(second, AudioFileFormat.Type.WAVE, folder.resolve(name).toFile());
  }

  private static List<String> rowOf(FilmSheet film, String player) throws IOException {
    try (WrittenBook book = WrittenBook.of(film)) {
      for (Row row : book.sheet("Performers")) {
        List<String> texts = new ArrayList<>();
        for (Cell cell : row) {
          texts.add(cell.toString());
        }
        if (texts.contains(player)) {
          return texts;
        }
      }
    }
    return List.of();
  }

  @Test
  void a_player_who_is_only_heard_has_their_sound_told_with_its_note() throws IOException {
    deliver("take 2.wav");
    List<String> row =
        rowOf(film("{harpist: {file: take 2.wav, start: 0 s, note: through the wall}}"), "harpist");
    assertThat(row).contains("take 2.wav", "not seen yet", "! received");
    assertThat(String.join("; ", row))
        .contains("take 2.wav has 44100 samples a second", "too short: Harp plays until")
        .contains("; through the wall");
  }

  @Test
  void a_clip_told_of_that_is_not_there_is_missing_and_says_where_it_was_looked_for()
      throws IOException {
    List<String> row = rowOf(film("{harpist: {file: lost.wav}}"), "harpist");
    assertThat(row).contains(Signs.of(Severity.ERROR) + " missing");
    assertThat(String.join("; ", row)).contains("lost.wav is missing: lost.wav is not a file");
  }
}
