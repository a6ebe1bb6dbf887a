package org.barsheet.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/**
 * Walks a whole day label by label, skipping the labels that drop-frame skips, and holds every
 * frame against the formulas, both ways.
 */
class EveryFrameOfADayTest {

  static final List<FrameRate> RATES = FrameRate.ALL;

  @ParameterizedTest
  @FieldSource("RATES")
  void labels_and_frames_agree_both_ways(FrameRate rate) {
    int skipped = rate.dropFrame() ? rate.nominal() / 15 : 0;
    long frame = 0;
    for (int minute = 0; minute < 24 * 60; minute++) {
      int first = minute % 10 == 0 ? 0 : skipped;
      for (int second = 0; second < 60; second++) {
        for (int label = second == 0 ? first : 0; label < rate.nominal(); label++) {
          check(rate, frame++, minute, second, label);
        }
      }
    }
    assertThat(rate.framesPerDay()).isEqualTo(frame);
  }

  private static void check(FrameRate rate, long frame, int minute, int second, int label) {
    Timecode timecode = Timecode.ofFrame(rate, frame);
    boolean same =
        timecode.hours() == minute / 60
            && timecode.minutes() == minute % 60
            && timecode.seconds() == second
            && timecode.frames() == label
            && timecode.frame() == frame;
    if (!same) {
      throw new AssertionError("frame " + frame + " at " + rate + " is " + timecode);
    }
  }
}
