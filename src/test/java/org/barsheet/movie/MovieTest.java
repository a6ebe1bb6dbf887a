package org.barsheet.movie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.SampleFilm;
import org.barsheet.outside.OutsideProgram;
import org.barsheet.sound.SoundFiles;
import org.barsheet.sound.SoundPart;
import org.barsheet.timing.Shot;
import org.barsheet.timing.SoundLayout;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A small movie at every rate, read back by ffmpeg: what it shows and sounds is on its frame. */
class MovieTest {

  private static final int WIDTH = 96;

  @TempDir private Path folder = Path.of("");

  @BeforeAll
  static void ffmpegIsThere() throws IOException, InterruptedException {
    assertThat(OutsideProgram.output("ffmpeg", "-version")).startsWith("ffmpeg version");
  }

  static Stream<FrameRate> rates() {
    return Stream.of(
        FrameRate.FPS_23_976,
        FrameRate.FPS_24,
        FrameRate.FPS_25,
        FrameRate.FPS_29_97_DF,
        FrameRate.FPS_30,
        FrameRate.FPS_59_94);
  }

  private static FilmSheet film(FrameRate rate) {
    return SampleFilm.at(rate).from(rate.dropFrame() ? "01:00:00;00" : "01:00:00:00").sheet();
  }

  /** A movie with its click, uncompressed, from the head on. */
  private Path movie(FilmSheet film, FrameSpan frames) throws IOException {
    SoundPart part = SoundPart.of(film, frames);
    Path click = folder.resolve("click.wav");
    try (OutputStream out = Files.newOutputStream(click)) {
      part.writeClick(out);
    }
    Path file = folder.resolve("movie.mov");
    Optional<Ffmpeg> ffmpeg = Optional.of(Ffmpeg.find(Optional.empty()));
    new Movie(film, new MovieOrder(frames, WIDTH, true), Material.NONE, ffmpeg)
        .write(file, List.of(new MovieSound(click, 0)), part.length(), true, (done, all) -> {});
    return file;
  }

  @ParameterizedTest
  @MethodSource("rates")
  void every_frame_shows_its_own_number_and_its_shot_s(FrameRate rate)
      throws IOException, InterruptedException {
    FilmSheet film = film(rate);
    FrameSpan frames = new FrameSpan(-Movie.headFrames(film), film.timing().lengthFrames());
    Decoded decoded = new Decoded(movie(film, frames));
    Sizes sizes = Sizes.of(film.plan().film(), WIDTH, true);
    long count =
        decoded.frames(
            sizes.width(),
            sizes.all(),
            (gray, index) -> {
              long frame = frames.start() + index;
              assertThat(Decoded.code(gray, sizes)).containsExactly(frame, shotAt(film, frame));
            });
    assertThat(count).isEqualTo(frames.length());
    Map<String, String> video = decoded.stream("v:0");
    assertThat(video.get("r_frame_rate")).isEqualTo(rate.numerator() + "/" + rate.denominator());
    assertThat(video.get("avg_frame_rate")).isEqualTo(video.get("r_frame_rate"));
    assertThat(video.get("nb_read_frames")).isEqualTo(Long.toString(frames.length()));
    assertThat(Double.parseDouble(video.get("start_time"))).isZero();
    assertThat(Double.parseDouble(video.get("duration")))
        .isCloseTo(rate.startOf(frames.length()).toDouble(), within(1e-4));
    assertThat(video.get("TAG:timecode"))
        .isEqualTo(film.plan().film().timecode(frames.start()).toString());
    assertClicks(film, frames, decoded.samples(0, 1));
  }

  private static long shotAt(FilmSheet film, long frame) {
    return film.timing().shots().stream()
        .filter(shot -> shot.frames().contains(frame))
        .map(Shot::index)
        .map(index -> index + 1L)
        .findFirst()
        .orElse(0L);
  }

  /** Sample for sample the click track's; each click within half a frame of its beat's frame. */
  private static void assertClicks(FilmSheet film, FrameSpan frames, short[] samples)
      throws IOException {
    FrameRate rate = film.plan().film().rate();
    SoundLayout layout = SoundLayout.of(film.timing());
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    SoundFiles.writeClick(film, whole);
    short[] track = WaveSamples.of(whole.toByteArray());
    int from = (int) layout.sampleAt(rate.startOf(frames.start()));
    assertThat(samples).isEqualTo(Arrays.copyOfRange(track, from, from + samples.length));
    int clicks = 0;
    for (SoundLayout.Click click : layout.clicks()) {
      long at = layout.sampleAt(click.at()) - from;
      if (at < samples.length) {
        double frame = frames.start() + at / 48_000.0 * rate.framesPerSecond().doubleValue();
        assertThat(frame).isCloseTo((double) rate.nearestFrame(click.at()), within(0.501));
        assertThat(Math.abs(samples[(int) at])).isGreaterThan((short) 10_000);
        clicks++;
      }
    }
    assertThat(clicks).isGreaterThan(20);
  }

  @Test
  void the_same_film_gives_the_same_bytes() throws IOException {
    FilmSheet film = film(FrameRate.FPS_25);
    byte[] first = Files.readAllBytes(movie(film, new FrameSpan(0, 40)));
    assertThat(Files.readAllBytes(movie(film, new FrameSpan(0, 40)))).isEqualTo(first);
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_is_drawn_or_left_out(String text) throws IOException {
    FilmSheet film = SampleFilm.at(FrameRate.FPS_24).saying(text).sheet();
    int[] frames = new int[1];
    new Movie(
            film,
            new MovieOrder(new FrameSpan(160, 170), 320, true),
            Material.NONE,
            Optional.empty())
        .draw((image, frame) -> frames[0]++, (done, all) -> {});
    assertThat(frames[0]).isEqualTo(10);
  }

  @Test
  void a_hostile_title_is_kept_in_the_file_and_changes_nothing_else()
      throws IOException, InterruptedException {
    FilmSheet film = SampleFilm.at(FrameRate.FPS_24).saying(" -i x; $(ls) \"'=%d\\").sheet();
    Decoded decoded = new Decoded(movie(film, new FrameSpan(0, 3)));
    assertThat(decoded.frames(WIDTH, 78, (gray, frame) -> {})).isEqualTo(3);
    assertThat(
            OutsideProgram.output(
                "ffprobe",
                "-v",
                "error",
                "-show_entries",
                "format_tags=title",
                "-of",
                "default=nokey=1:noprint_wrappers=1",
                folder.resolve("movie.mov").toString()))
        .isEqualTo(film.plan().title());
  }
}
