package org.barsheet.production;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.Placeholders;
import org.barsheet.handoff.SampleFilm;
import org.barsheet.production.publish.OutputFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlacedTest {

  @Test
  void placeholders_are_drawn_again_and_photographs_stay(@TempDir Path folder) throws IOException {
    FilmSheet film = SampleFilm.at(FrameRate.FPS_24).sheet();
    assertThat(place(film, folder).drawn()).hasSize(13);
    Path photograph = folder.resolve("photographs/small-lamp 007.png");
    Files.writeString(photograph, "a photograph");
    Placed again = place(film, folder);
    assertThat(again.drawn()).hasSize(12);
    assertThat(again.photographs()).containsExactly(photograph);
    assertThat(photograph).hasContent("a photograph");
  }

  @Test
  void a_photograph_saved_while_placeholders_are_drawn_stays(@TempDir Path folder)
      throws IOException {
    FilmSheet film = SampleFilm.at(FrameRate.FPS_24).sheet();
    Path photograph = folder.resolve("photographs/small-lamp 007.png");
    try (OutputFolder out = OutputFolder.open(folder)) {
      Placed placed = Placed.into(out, Placeholders.files(film));
      Files.createDirectories(folder.resolve("photographs"));
      Files.writeString(photograph, "a photograph");
      Placed published = placed.published(out.publish());
      assertThat(published.drawn()).hasSize(12).doesNotContain(photograph);
      assertThat(published.photographs()).containsExactly(photograph);
    }
    assertThat(photograph).hasContent("a photograph");
    try (var files = Files.list(folder.resolve("photographs"))) {
      assertThat(files).hasSize(13);
    }
  }

  private static Placed place(FilmSheet film, Path folder) {
    try (OutputFolder out = OutputFolder.open(folder)) {
      Placed placed = Placed.into(out, Placeholders.files(film));
      return placed.published(out.publish());
    }
  }
}
