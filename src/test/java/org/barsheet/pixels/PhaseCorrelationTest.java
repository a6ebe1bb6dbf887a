package org.barsheet.pixels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.barsheet.pixels.PhaseCorrelation.Shift;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Shifts that are known because the image is a sum of waves, which can be drawn at any place: the
 * shift theorem of the Fourier transform (Bracewell, The Fourier Transform and Its Applications,
 * chapter 6) turns each wave's phase by its frequency times the shift.
 */
class PhaseCorrelationTest {

  private static final int SIZE = 64;

  /** Waves of many directions and lengths that do not fit the image: it has no period to help. */
  private static Plane waves(double right, double down) {
    SplittableRandom random = new SplittableRandom(11);
    float[] values = new float[SIZE * SIZE];
    for (int wave = 0; wave < 260; wave++) {
      double across = (random.nextDouble() - 0.5) * 2.2;
      double along = (random.nextDouble() - 0.5) * 2.2;
      double phase = random.nextDouble() * 2 * Math.PI;
      for (int y = 0; y < SIZE; y++) {
        for (int x = 0; x < SIZE; x++) {
          values[y * SIZE + x] +=
              (float) (4 * Math.cos(across * (x - right) + along * (y - down) + phase));
        }
      }
    }
    for (int i = 0; i < values.length; i++) {
      values[i] += 128;
    }
    return new Plane(SIZE, SIZE, values);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "3, 0", "-5, 2", "0, 11", "-9, -9"})
  void whole_pixels_are_found_exactly(int right, int down) {
    Shift shift = PhaseCorrelation.shift(waves(0, 0), waves(right, down));
    assertThat(Math.round(shift.across())).isEqualTo(right);
    assertThat(Math.round(shift.down())).isEqualTo(down);
  }

  @ParameterizedTest
  @CsvSource({"0.3, 0", "2.5, -1.25", "-0.7, 0.45", "6.1, 3.8"})
  void parts_of_a_pixel_are_found_to_a_fifth(double right, double down) {
    Shift shift = PhaseCorrelation.shift(waves(0, 0), waves(right, down));
    assertThat(shift.across()).isCloseTo(right, within(0.2));
    assertThat(shift.down()).isCloseTo(down, within(0.2));
  }
}
