package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.artwork.MapMark;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Shot;
import org.junit.jupiter.api.Test;

class FilmStripTest {

  private static final double WIDTH = 271;

  private static List<MapMark.Box> panels(FilmStrip strip, int line) {
    return strip.marks(line).stream()
        .filter(MapMark.Box.class::isInstance)
        .map(MapMark.Box.class::cast)
        .filter(box -> box.rect().height() > 5)
        .toList();
  }

  @Test
  void boxes_are_as_long_as_their_panels_and_fill_the_width() {
    FilmSheet film = SampleFilm.harbour().make();
    FilmStrip strip = new FilmStrip(film, WIDTH);
    assertThat(strip.count()).isEqualTo(1);
    List<MapMark.Box> boxes = panels(strip, 0);
    List<Shot> shots = film.timing().shots();
    assertThat(boxes).hasSameSizeAs(shots);
    MapMark.Box last = boxes.get(boxes.size() - 1);
    assertThat(last.rect().left() + last.rect().width()).isCloseTo(WIDTH, within(1e-6));
    double perFrame = boxes.get(0).rect().width() / shots.get(0).frames().length();
    for (int i = 0; i < boxes.size(); i++) {
      assertThat(boxes.get(i).rect().width())
          .isCloseTo(perFrame * shots.get(i).frames().length(), within(1e-6));
    }
  }

  @Test
  void many_panels_go_on_in_further_lines_that_begin_with_a_bar() {
    SampleFilm sample = SampleFilm.harbour();
    for (int panel = 100; panel < 180; panel++) {
      sample.shot("" + panel, "The lamp", 24);
    }
    FilmSheet film = sample.make();
    FilmStrip strip = new FilmStrip(film, WIDTH);
    assertThat(strip.count()).isBetween(2, 12);
    List<String> named = new ArrayList<>();
    for (int line = 0; line < strip.count(); line++) {
      assertThat(panels(strip, line)).isNotEmpty();
      strip.marks(line).stream()
          .filter(MapMark.Text.class::isInstance)
          .map(mark -> ((MapMark.Text) mark).words())
          .filter(words -> words.matches("1[0-9]{2}"))
          .forEach(named::add);
    }
    assertThat(named).doesNotHaveDuplicates().isSorted();
  }
}
