package org.barsheet.production;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.Placeholders;
import org.barsheet.handoff.SampleFilm;
import org.barsheet.photographs.TakenPhotographs;
import org.barsheet.production.publish.OutputFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a movie finds its photographs. */
class MovieMaterialTest {

  private static final String LAMP = "small-lamp 007";

  private final FilmSheet film = SampleFilm.at(FrameRate.FPS_24).sheet();

  private static Path photograph(Path folder, String name) throws IOException {
    Path photographs = Files.createDirectories(folder.resolve("photographs"));
    return Files.writeString(photographs.resolve(name), "a photograph");
  }

  @Test
  void photographs_that_were_taken_in_beside_the_plan_come_before_those_among_the_sheets(
      @TempDir Path home) throws IOException {
    Path sheets = home.resolve("quay-sheets");
    Path among = photograph(sheets, LAMP + ".png");
    assertThat(new MovieMaterial(film, sheets).photograph(LAMP)).contains(among);
    Path beside = photograph(home, LAMP + ".JPG");
    FilmSheet taken =
        film.with(TakenPhotographs.in(home.resolve("photographs"), List.of("small-lamp")));
    assertThat(new MovieMaterial(taken, sheets).photograph(LAMP)).contains(beside);
    assertThat(new MovieMaterial(taken, sheets).photograph("small-lamp 008")).isEmpty();
  }

  @Test
  void a_placeholder_is_no_photograph(@TempDir Path home) throws IOException {
    try (OutputFolder out = OutputFolder.open(home)) {
      Placed.into(out, Placeholders.files(film));
      out.publish();
    }
    FilmSheet taken = film.with(TakenPhotographs.in(home.resolve("photographs"), List.of()));
    assertThat(taken.taken().has(LAMP)).isTrue();
    assertThat(new MovieMaterial(taken, home).photograph(LAMP)).isEmpty();
  }
}
