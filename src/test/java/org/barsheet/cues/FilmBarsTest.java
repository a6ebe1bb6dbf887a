package org.barsheet.cues;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.Music;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Meter;
import org.barsheet.timing.MusicBuilder;
import org.junit.jupiter.api.Test;

/** Bars on frames, and their tempo. At 96 a minute and 24 fps a beat has 15 frames. */
class FilmBarsTest {

  private static final FilmClock CLOCK = new FilmClock(FrameRate.FPS_24, 0, Seconds.ZERO);
  private static final long QUARTER = MusicBuilder.QUARTER;

  @Test
  void a_bar_ends_where_the_next_one_begins() {
    List<FilmBar> bars = FilmBars.of(new MusicBuilder().tempo(110).bars(3).build(), CLOCK);
    // Four beats at 110 are 52.36 frames.
    assertThat(bars).extracting(FilmBar::startFrame).containsExactly(0L, 52L, 105L);
    assertThat(bars).extracting(FilmBar::lengthFrames).containsExactly(52L, 53L, 52L);
    assertThat(bars).extracting(FilmBar::length).containsOnly(Seconds.of(240, 110));
  }

  @Test
  void the_tempo_of_a_bar_is_that_of_its_first_felt_beat() {
    FilmBar bar = FilmBars.of(new MusicBuilder().tempo(96).bars(2).build(), CLOCK).get(0);
    assertThat(bar.framesPerBeat()).hasToString("15-0");
    assertThat(bar.beatsPerMinute()).hasToString("96.000");
  }

  /** An upbeat of an eighth note is no faster than what follows. */
  @Test
  void a_pickup_shorter_than_a_beat_has_the_tempo_of_a_whole_beat() {
    Music built = new MusicBuilder().tempo(96).bars(2).build();
    Meter meter = new Meter(4, 4);
    long start = QUARTER / 2;
    List<Long> beats = List.of(start, start + QUARTER, start + 2 * QUARTER, start + 3 * QUARTER);
    BarGrid grid =
        new BarGrid(
            List.of(
                new Bar(0, 0, 1, meter, 0, start, List.of(0L), 4),
                new Bar(1, 1, 1, meter, start, start + 4 * QUARTER, beats, 4)));
    Music music =
        new Music(built.score(), built.tempo(), grid, built.source(), built.evidence(), "");
    List<FilmBar> bars = FilmBars.of(music, CLOCK);
    assertThat(bars).extracting(bar -> bar.framesPerBeat().toString()).containsOnly("15-0");
    assertThat(bars.get(0).lengthFrames()).isEqualTo(8); // 7½ frames, and the tie goes up
    assertThat(bars.get(1).startFrame()).isEqualTo(8);
  }
}
