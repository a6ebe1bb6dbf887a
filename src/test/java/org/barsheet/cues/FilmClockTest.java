package org.barsheet.cues;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Recording;
import org.barsheet.plan.Where;
import org.junit.jupiter.api.Test;

/** Where a recording lies on the film. */
class FilmClockTest {

  /** The music starts on frame 48 with the first note, one second into the score. */
  private static final FilmClock CLOCK = new FilmClock(FrameRate.FPS_24, 48, Seconds.of(1));

  private static Recording recording(Optional<Seconds> starts) {
    return new Recording(Path.of("mix.wav"), starts, new Where("quay.yaml", "line 5"));
  }

  /** Pins count from the recording's first sample, so that is where the score's time begins. */
  @Test
  void a_recording_begins_where_the_score_s_time_does() {
    assertThat(CLOCK.startOf(recording(Optional.empty()))).isEqualTo(Seconds.of(1));
    assertThat(CLOCK.startOf(recording(Optional.empty()))).isEqualTo(CLOCK.filmTime(Seconds.ZERO));
  }

  @Test
  void a_recording_begins_where_the_plan_says() {
    Seconds said = Seconds.of(-1, 2);
    assertThat(CLOCK.startOf(recording(Optional.of(said)))).isEqualTo(said);
  }
}
