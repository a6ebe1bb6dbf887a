package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.pen.Drawing;
import org.barsheet.workbook.pen.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TimelineSheetTest {

  @TempDir private Path folder;

  @Test
  void a_panel_says_when_it_begins_and_lands_and_how_long_it_is() throws IOException {
    FilmSheet film = SampleFilm.harbour().make();
    Film settings = film.plan().film();
    try (WrittenBook book = WrittenBook.of(film)) {
      for (Shot shot : film.timing().shots()) {
        Row row = book.panel(shot);
        long start = shot.frames().start();
        assertThat(WrittenBook.text(row, book.column("Timeline", "starts")))
            .startsWith(settings.timecode(start).toString());
        assertThat(WrittenBook.text(row, book.column("Timeline", "length")))
            .startsWith(shot.frames().length() + " frame")
            .endsWith(shot.got());
        String lands = WrittenBook.text(row, book.column("Timeline", "lands"));
        List<PlannedReveal> reveals = film.revealsOf(shot);
        assertThat(lands.isEmpty() || lands.equals("–")).isEqualTo(reveals.isEmpty());
        reveals.forEach(
            reveal ->
                assertThat(lands)
                    .contains(Signs.ACCENT + " " + settings.timecode(reveal.landsFrame())));
      }
    }
  }

  @Test
  void below_the_panels_each_says_what_was_asked_and_why_it_is_where_it_is() throws IOException {
    FilmSheet film = SampleFilm.harbour().make();
    try (WrittenBook book = WrittenBook.of(film)) {
      int row = titleOfWhy(book.sheet("Timeline")) + 2;
      for (Shot shot : film.timing().shots()) {
        Row why = book.sheet("Timeline").getRow(row++);
        assertThat(WrittenBook.label(why, 0)).isEqualTo(shot.panel().name());
        assertSaysWhy(shot, WrittenBook.text(why, 2));
        assertThat(WrittenBook.text(why, 4)).contains(shot.asked(), shot.got());
      }
    }
  }

  private static int titleOfWhy(XSSFSheet sheet) {
    for (Row row : sheet) {
      if (WrittenBook.text(row, 0).equals("Why each panel is where it is")) {
        return row.getRowNum();
      }
    }
    throw new AssertionError("nothing says why");
  }

  private static void assertSaysWhy(Shot shot, String why) {
    assertThat(why).startsWith(shot.reason());
    shot.alternative()
        .ifPresent(
            alternative -> {
              assertThat(why).contains(alternative.sentence());
              assertThat(why.contains("free choice")).isEqualTo(alternative.isFreeChoice());
            });
  }

  @Test
  void a_drawing_that_several_panels_share_is_stored_once() throws IOException {
    FilmSheet film = SampleFilm.harbour().drawing(drawing(100, 60)).make();
    try (WrittenBook book = WrittenBook.of(film)) {
      assertThat(book.book().getAllPictures()).hasSize(1);
      assertThat(book.sheet("Timeline").getDrawingPatriarch().getShapes())
          .filteredOn(XSSFPicture.class::isInstance)
          .hasSize(film.timing().shots().size());
    }
  }

  @Test
  void a_large_drawing_is_made_smaller() throws IOException {
    Path large = drawing(800, 450);
    assertThat(Files.size(large)).isGreaterThan(1_000_000);
    Drawing drawing = Drawing.read(Files.readAllBytes(large)).orElseThrow();
    assertThat(drawing.width()).isEqualTo(360);
    assertThat(drawing.height()).isEqualTo(203);
  }

  @Test
  void a_drawing_that_is_missing_or_no_photograph_leaves_its_place_empty() throws IOException {
    Path text = Files.writeString(folder.resolve("7.png"), "no photograph");
    for (Path path : List.of(text, folder.resolve("missing.png"), folder)) {
      try (WrittenBook book = WrittenBook.of(SampleFilm.harbour().drawing(path).make())) {
        assertThat(book.book().getAllPictures()).isEmpty();
      }
    }
  }

  /** Colored noise, which no compression makes small. */
  private Path drawing(int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(7);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, random.nextInt(1 << 24));
      }
    }
    Path path = folder.resolve("drawing.png");
    ImageIO.write(image, "png", path.toFile());
    return path;
  }
}
