package org.barsheet.pulse.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.barsheet.pulse.Scores;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PedalRenewalTest {

  private static final int DAMPER_PEDAL = 64;

  @TempDir Path folder;

  /** A press at 1 s tells of what sounds shortly before it. */
  @ParameterizedTest
  @CsvSource({
    "0.60, 0",
    "0.70, 0.7",
    "0.79, 0.7",
    "0.81, 1",
    "0.93, 1",
    "0.95, 0.5",
    "1.00, 0.5",
    "1.05, 0.5",
    "1.07, 0"
  })
  void a_press_tells_of_a_stroke_just_before(double seconds, double renewed) {
    Track track = new Track().event(480, 0x90, 60, 64).event(960, 0xB0, DAMPER_PEDAL, 127);
    track.event(1920, 0x80, 60, 0);
    PedalRenewal pedal = PedalRenewal.of(Scores.read(MidiBytes.file().track(track), folder));
    assertThat(pedal.at(seconds)).isEqualTo(renewed);
  }

  @Test
  void without_a_pedal_nothing_is_told() {
    Track track = new Track().event(0, 0x90, 60, 64).event(960, 0x80, 60, 0);
    PedalRenewal pedal = PedalRenewal.of(Scores.read(MidiBytes.file().track(track), folder));
    assertThat(pedal.at(0)).isZero();
  }
}
