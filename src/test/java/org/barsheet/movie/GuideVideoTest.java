package org.barsheet.movie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.FilmBar;
import org.barsheet.exposure.Appearance;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.DemoFilm;
import org.barsheet.handoff.SampleFilm;
import org.barsheet.movie.GuideMoment.State;
import org.barsheet.sound.SoundPart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a performer sees and hears on their guide video. */
class GuideVideoTest {

  private final FilmSheet demo = DemoFilm.sheet();
  private final GuideMoments celesta =
      new GuideMoments(demo, demo.plan().performer("celesta").orElseThrow());

  @Test
  void bar_and_beat_are_those_of_the_film_on_every_frame_of_the_music() {
    for (FilmBar bar : demo.timing().bars()) {
      GuideMoment first = celesta.at(bar.startFrame());
      assertThat(first.bar()).isEqualTo("bar " + bar.bar().number());
      assertThat(first.beat()).isEqualTo(1);
      long last = bar.startFrame() + bar.lengthFrames() - 1;
      assertThat(celesta.at(last).beat()).isEqualTo(bar.bar().beatTicks().size());
    }
  }

  @Test
  void they_are_seen_exactly_when_the_film_shows_them_and_warned_two_bars_before() {
    Appearance first =
        demo.appearances().stream()
            .filter(each -> each.performer().name().equals("celesta"))
            .findFirst()
            .orElseThrow();
    long seen = first.frames().start();
    assertThat(celesta.at(seen).state()).isEqualTo(State.SEEN);
    assertThat(celesta.at(seen).told()).isEqualTo("in bakers-lamp, until bar 11 beat 1");
    assertThat(celesta.at(seen - 1).state()).isEqualTo(State.READY);
    assertThat(celesta.at(first.frames().endExclusive()).state()).isEqualTo(State.NOT_SEEN);
    long warned =
        demo.timing().bars().stream()
            .filter(bar -> bar.bar().number() == 7)
            .findFirst()
            .orElseThrow()
            .startFrame();
    assertThat(celesta.at(warned).state()).isEqualTo(State.READY);
    assertThat(celesta.at(warned - 1).state()).isEqualTo(State.NOT_SEEN);
    assertThat(celesta.at(warned - 1).told()).isEqualTo("Next at bar 9 beat 1, in bakers-lamp");
  }

  /** The plan puts celesta's clap 4 s before the music, which starts on frame 48. */
  @Test
  void the_clap_is_marked_on_the_frame_that_the_plan_names() {
    assertThat(celesta.at(48 - 4 * 24).clapsNow()).isTrue();
    assertThat(celesta.at(48 - 4 * 24).clap()).isEqualTo("♦ CLAP");
    assertThat(celesta.at(48 - 4 * 24 - 1).clapsNow()).isFalse();
    assertThat(celesta.at(48 - 4 * 24 - 1).clap()).contains("Clap once, in frame");
  }

  @Test
  void nothing_of_it_flashes_twice_in_a_second() throws IOException {
    FlashVerdict worst =
        new GuideVideo(demo, demo.plan().performer("flute").orElseThrow())
            .draw((image, frame) -> {}, (done, all) -> {});
    assertThat(worst.flashes()).isLessThan(2);
  }

  @Test
  void a_phone_can_play_it(@TempDir Path folder) throws IOException, InterruptedException {
    FilmSheet film = SampleFilm.at(FrameRate.FPS_29_97).sheet();
    FrameSpan frames = GuideVideo.frames(film);
    SoundPart part = SoundPart.of(film, frames);
    Path sound = folder.resolve("sound.wav");
    try (OutputStream out = Files.newOutputStream(sound)) {
      part.writeGuideWithClick(Optional.empty(), out);
    }
    Path file = folder.resolve("cello-guide.mp4");
    new GuideVideo(film, film.plan().performers().get(0))
        .write(
            Ffmpeg.find(Optional.empty()),
            file,
            new MovieSound(sound, 0),
            part.length(),
            (done, all) -> {});
    Map<String, String> video = new Decoded(file).stream("v:0");
    assertThat(video.get("codec_name")).isEqualTo("h264");
    assertThat(video.get("pix_fmt")).isEqualTo("yuv420p");
    assertThat(video.get("nb_read_frames")).isEqualTo(Long.toString(frames.length()));
    Map<String, String> audio = new Decoded(file).stream("a:0");
    assertThat(audio.get("codec_name")).isEqualTo("aac");
    assertThat(Double.parseDouble(audio.get("start_time"))).isCloseTo(0, within(1e-3));
    assertThat(Files.size(file)).isLessThan(15_000_000);
  }
}
