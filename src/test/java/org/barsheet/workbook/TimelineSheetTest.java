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
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.pen.Drawing;
import org.barsheet.workbook.pen.SheetFrame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TimelineSheetTest {

  @TempDir private Path folder;

  @Test
  void a_panel_says_where_it_is_how_long_and_why() throws IOException {
    FilmSheet film = SampleFilm.harbour().make();
    try (WrittenBook book = WrittenBook.of(film)) {
      XSSFSheet sheet = book.sheet("Timeline");
      for (Shot shot : film.timing().shots()) {
        Row row = sheet.getRow(SheetFrame.FIRST_ROW + shot.index());
        assertThat(WrittenBook.text(row, book.column("Timeline", "starts")))
            .isEqualTo(film.plan().film().timecode(shot.frames().start()).toString());
        assertThat((long) WrittenBook.number(row, book.column("Timeline", "frames")))
            .isEqualTo(shot.frames().length());
        assertThat(WrittenBook.text(row, book.column("Timeline", "asked, got")))
            .contains(shot.asked(), shot.got());
        assertSaysWhy(
            shot, WrittenBook.text(row, book.column("Timeline", "why here, and the alternative")));
      }
      Row totals = sheet.getRow(SheetFrame.FIRST_ROW + film.timing().shots().size());
      assertThat((long) WrittenBook.number(totals, book.column("Timeline", "frames")))
          .isEqualTo(film.timing().lengthFrames());
    }
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
