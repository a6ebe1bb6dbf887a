package org.barsheet.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.barsheet.film.FilmSheet;
import org.barsheet.frames.Cover;
import org.barsheet.frames.FilmFrame;
import org.barsheet.frames.FilmFrames;
import org.barsheet.frames.SeenOpening;
import org.barsheet.movie.Still;
import org.junit.jupiter.api.Test;

/** What the page shows on a frame and what the movie shows there is the same. */
class PageAndMovieTest {

  private static final int FRAMES = 50;
  private static final Pattern NUMBER = Pattern.compile("-?[\\d.]+(?:e-?\\d+)?");

  /** Both images in so few points: edges and letters of two programs differ by pixels. */
  private static final int COLUMNS = 96;

  private static final int ROWS = 54;

  private final DemoPage demo = DemoPage.open();
  private final Browser browser = demo.browser();
  private final FilmSheet film = demo.film();
  private final FilmFrames frames = FilmFrames.of(film, drawing -> true);
  private final Still movie = new Still(film, 640);

  /** Seeded frames; every second one in a shot in which something moves. */
  private List<Long> seeded() {
    Random random = new Random(17);
    return random
        .longs(FRAMES, 0, film.timing().lengthFrames())
        .mapToObj(frame -> frame % 2 == 0 ? frame : nearAReveal(random))
        .toList();
  }

  private long nearAReveal(Random random) {
    var reveal = film.reveals().get(random.nextInt(film.reveals().size()));
    return reveal.firstGapFrame()
        + random.nextLong(reveal.fullyOpenFrame() - reveal.firstGapFrame() + 2);
  }

  @Test
  void fifty_frames_have_the_same_layers_and_look_alike() throws IOException {
    browser.width(760, 700); // the frame about as large as the movie's
    for (long frame : seeded()) {
      browser.run("reviewPage.seek(arguments[0])", frame);
      FilmFrame described = frames.at(frame);
      assertSameWords(described);
      assertSameOpenings(described);
      assertLooksAlike(frame);
    }
  }

  private void assertSameWords(FilmFrame described) {
    assertThat(browser.text("#timecode")).isEqualTo(described.strip().timecode());
    assertThat(browser.text("#bar-and-beat")).isEqualTo(described.strip().place());
    assertThat(browser.text("#in-shot"))
        .startsWith("panel " + described.strip().panel() + ", frame " + described.strip().inShot());
  }

  private void assertSameOpenings(FilmFrame described) {
    List<?> shown =
        (List<?>)
            browser.run(
                "return [...document.querySelectorAll('[data-opening]')].map((group) => ({"
                    + "drawn: group.classList.contains('as-drawn'),"
                    + "outline: group.querySelector('.flap').getAttribute('d'),"
                    + "solid: Number(group.querySelector('.flap').getAttribute('fill-opacity')),"
                    + "who: group.querySelector('.who').textContent}))");
    assertThat(shown).hasSameSizeAs(described.openings());
    for (int i = 0; i < shown.size(); i++) {
      Map<?, ?> onPage = (Map<?, ?>) shown.get(i);
      SeenOpening opening = described.openings().get(i);
      String name = opening.shape().opening().name() + " at " + described.strip().timecode();
      assertThat(onPage.get("drawn")).as(name).isEqualTo(opening.asDrawn());
      String who =
          opening.inserts().stream()
              .map(insert -> insert.performer().name())
              .collect(Collectors.joining(", "));
      assertThat(onPage.get("who")).as(name).isEqualTo(who);
      Cover cover = opening.cover();
      assertThat(((Number) Objects.requireNonNull(onPage.get("solid"))).doubleValue())
          .isCloseTo(cover.solid(), within(1e-3));
      assertSameOutline(name, String.valueOf(onPage.get("outline")), cover);
    }
  }

  private static void assertSameOutline(String name, String path, Cover cover) {
    List<Double> numbers =
        NUMBER.matcher(path).results().map(MatchResult::group).map(Double::valueOf).toList();
    List<Double> corners =
        cover.outline().stream()
            .flatMap(List::stream)
            .flatMap(corner -> List.of(corner.x(), corner.y()).stream())
            .toList();
    assertThat(numbers).as(name).hasSameSizeAs(corners);
    for (int i = 0; i < numbers.size(); i++) {
      assertThat(numbers.get(i)).as(name).isCloseTo(corners.get(i), within(1e-3));
    }
  }

  private void assertLooksAlike(long frame) throws IOException {
    BufferedImage page = ImageIO.read(new ByteArrayInputStream(browser.look("#frame svg")));
    BufferedImage one = Still.smaller(page, COLUMNS, ROWS);
    BufferedImage other = Still.smaller(movie.of(frame), COLUMNS, ROWS);
    double difference = 0;
    int unlike = 0;
    for (int i = 0; i < COLUMNS * ROWS; i++) {
      double here =
          difference(one.getRGB(i % COLUMNS, i / COLUMNS), other.getRGB(i % COLUMNS, i / COLUMNS));
      difference += here / (COLUMNS * ROWS);
      unlike += here > 48 ? 1 : 0;
    }
    assertThat(difference).as("mean difference on frame %s", frame).isLessThan(4);
    assertThat(unlike).as("parts that differ on frame %s", frame).isLessThan(COLUMNS * ROWS / 100);
  }

  /** The mean difference of two colors, 0 to 255. */
  private static double difference(int one, int other) {
    Color a = new Color(one);
    Color b = new Color(other);
    return (Math.abs(a.getRed() - b.getRed())
            + Math.abs(a.getGreen() - b.getGreen())
            + Math.abs(a.getBlue() - b.getBlue()))
        / 3.0;
  }
}
