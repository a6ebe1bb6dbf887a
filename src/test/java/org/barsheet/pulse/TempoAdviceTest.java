package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.TempoAdvice.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TempoAdviceTest {

  private static final FrameRate RATE = FrameRate.FPS_24;

  private static Piece piece(int bpm, int beatsInBar, int bars) {
    return new Piece(BigFraction.of(bpm), beatsInBar, bars);
  }

  /** Reckoned by hand: on twos, in 4/4, 24 bars at 100 and at 14 frames per beat (102.857). */
  @Test
  void at_100_fourteen_of_24_bar_lines_fall_on_even_frames_and_at_14_0_all_of_them() {
    Piece piece = piece(100, 4, 24);
    assertThat(TempoAdvice.onGrid(piece, Seconds.of(3, 5), RATE, 2)).isEqualTo(14);
    TempoAdvice best =
        TempoAdvice.near(piece, RATE, 2).stream()
            .filter(advice -> advice.tempo().toString().equals("14-0"))
            .findFirst()
            .orElseThrow();
    assertThat(best.barsOnGrid()).isEqualTo(24);
    assertThat(new Seconds(best.beatsPerMinute()).toDecimal(3)).hasToString("102.857");
  }

  @Test
  void tempos_with_more_bar_lines_on_the_grid_come_first_then_the_nearer_ones() {
    List<TempoAdvice> advice = TempoAdvice.near(piece(100, 4, 24), RATE, 2);
    for (int i = 1; i < advice.size(); i++) {
      TempoAdvice better = advice.get(i - 1);
      TempoAdvice worse = advice.get(i);
      assertThat(better.barsOnGrid()).isGreaterThanOrEqualTo(worse.barsOnGrid());
      if (better.barsOnGrid() == worse.barsOnGrid()) {
        assertThat(far(better)).isLessThanOrEqualTo(far(worse));
      }
    }
  }

  private static BigFraction far(TempoAdvice advice) {
    return advice.beatsPerMinute().subtract(BigFraction.of(100)).abs();
  }

  /** Every eighth of a frame tried one by one, in decimal arithmetic. */
  @ParameterizedTest
  @CsvSource({"100, 4, 24, 2", "63, 3, 40, 2", "144, 4, 17, 3", "92, 2, 100, 1", "240, 4, 9, 2"})
  void brute_force_agrees(int bpm, int beatsInBar, int bars, int framesPerPhotograph) {
    List<TempoAdvice> advice =
        TempoAdvice.near(piece(bpm, beatsInBar, bars), RATE, framesPerPhotograph);
    int found = 0;
    for (int eighths = 1; eighths < 400; eighths++) {
      BigDecimal frames = new BigDecimal(eighths).divide(new BigDecimal(8));
      double tempo = 1440 / frames.doubleValue();
      if (tempo < bpm * 0.97 || tempo > bpm * 1.03) {
        continue;
      }
      found++;
      int onGrid = 0;
      for (int bar = 0; bar < bars; bar++) {
        BigDecimal exact = frames.multiply(new BigDecimal(bar * beatsInBar));
        long frame = exact.setScale(0, RoundingMode.HALF_UP).longValueExact();
        onGrid += frame % framesPerPhotograph == 0 ? 1 : 0;
      }
      long wanted = eighths;
      assertThat(advice)
          .filteredOn(one -> one.tempo().eighths() == wanted)
          .singleElement()
          .extracting(TempoAdvice::barsOnGrid)
          .isEqualTo(onGrid);
    }
    assertThat(advice).hasSize(found);
  }
}
