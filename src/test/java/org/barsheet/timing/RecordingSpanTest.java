package org.barsheet.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmClock;
import org.barsheet.plan.Recording;
import org.barsheet.plan.Where;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked by hand: at 30000/1001 a frame lasts 1601.6 samples of 48 kHz (SMPTE ST 299-1, five frames
 * hold 8008 samples), so frame 3 begins 4804.8 samples after frame 0.
 */
class RecordingSpanTest {

  @ParameterizedTest
  @CsvSource({
    "24, 0, 0, 0",
    "24, 2, 48, 0",
    "24, -1.5, 0, 72000",
    "24, 0.01, 1, 1520",
    "29.97, 0.1, 3, 5",
    "29.97, -0.00001, 0, 0",
    "29.97, -0.00002, 0, 1"
  })
  void a_recording_begins_on_the_next_whole_frame_with_the_sample_due_there(
      String rate, String starts, long frame, long sample) {
    FilmClock clock = new FilmClock(FrameRate.parse(rate), 0, Seconds.ZERO);
    Recording recording =
        new Recording(
            Path.of("mix.wav"),
            Optional.of(Seconds.parse(starts)),
            new Where("quay.yaml", "line 5"));
    assertThat(RecordingSpan.of(recording, clock)).isEqualTo(new RecordingSpan(frame, sample));
  }
}
