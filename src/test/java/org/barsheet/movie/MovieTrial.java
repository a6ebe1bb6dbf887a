package org.barsheet.movie;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.DemoFilm;
import org.barsheet.timing.Shot;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The whole demo at every rate: 2,000 seeded frames show their own number and their shot's. */
@Tag("trial")
class MovieTrial {

  private static final int FRAMES = 2000;
  private static final int WIDTH = 96;

  @TempDir private Path folder = Path.of("");

  /** The demo's plan at another rate, its files where they are. */
  private FilmSheet demo(FrameRate rate) throws IOException {
    String scores = Path.of("scores").toAbsolutePath() + "/";
    String plan =
        Files.readString(Path.of("scores", "lamplighters-quay.yaml"), StandardCharsets.UTF_8)
            .replace("frame-rate: 24", "frame-rate: " + rate)
            .replace("score: lamp", "score: " + scores + "lamp")
            .replace("drawing: panels/", "drawing: " + scores + "panels/");
    return DemoFilm.sheet(
        Files.writeString(folder.resolve("quay.yaml"), plan, StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.movie.MovieTest#rates")
  void two_thousand_frames_are_where_the_sheets_say(FrameRate rate)
      throws IOException, InterruptedException {
    FilmSheet film = demo(rate);
    Set<Long> asked =
        new Random(rate.numerator())
            .longs(0, film.timing().lengthFrames())
            .distinct()
            .limit(FRAMES)
            .boxed()
            .collect(Collectors.toSet());
    Path file = folder.resolve("movie.mp4");
    FrameSpan all = new FrameSpan(0, film.timing().lengthFrames());
    new Movie(
            film,
            new MovieOrder(all, WIDTH, true),
            Material.NONE,
            Optional.of(Ffmpeg.find(Optional.empty())))
        .write(file, List.of(), 0, false, (done, of) -> {});
    Sizes sizes = Sizes.of(film.plan().film(), WIDTH, true);
    int[] looked = new int[1];
    long count =
        new Decoded(file)
            .frames(
                sizes.width(),
                sizes.all(),
                (gray, frame) -> {
                  if (asked.contains(frame)) {
                    assertThat(Decoded.code(gray, sizes)).containsExactly(frame, shot(film, frame));
                    looked[0]++;
                  }
                });
    assertThat(count).isEqualTo(film.timing().lengthFrames());
    assertThat(looked[0]).isEqualTo(FRAMES);
  }

  private static long shot(FilmSheet film, long frame) {
    return film.timing().shots().stream()
            .filter(shot -> shot.frames().contains(frame))
            .map(Shot::index)
            .findFirst()
            .orElseThrow()
        + 1L;
  }
}
