package org.barsheet.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Power spectra against transforms that are published: the Hann window's three lines (F. J. Harris,
 * "On the use of windows for harmonic analysis with the discrete Fourier transform", Proceedings of
 * the IEEE 66, 1978: amplitudes 1/2 in the middle, 1/4 on both sides, none elsewhere).
 */
final class SpectraTest {

  private static final int SIZE = 256;
  private static final int RATE = 25_600;

  private static List<float[]> frames(float[] samples) {
    List<float[]> frames = new ArrayList<>();
    new Spectra(new Sound(samples, RATE), SIZE, 100)
        .forEach((i, power) -> frames.add(power.clone()));
    return frames;
  }

  @Test
  void a_sine_on_a_bin_has_the_three_lines_of_the_hann_window() {
    float[] sine = new float[4 * SIZE];
    for (int i = 0; i < sine.length; i++) {
      sine[i] = (float) Math.cos(2 * Math.PI * 20 * i / SIZE);
    }

    float[] power = frames(sine).get(2);

    assertThat(power[20]).isCloseTo(0.25f, within(1e-6f));
    assertThat(power[19]).isCloseTo(0.0625f, within(1e-6f));
    assertThat(power[21]).isCloseTo(0.0625f, within(1e-6f));
    assertThat(power[17]).isCloseTo(0, within(1e-10f));
    assertThat(power[60]).isCloseTo(0, within(1e-10f));
  }

  @Test
  void two_frames_transformed_at_once_do_not_mix() {
    float[] halves = new float[4 * SIZE];
    for (int i = 0; i < halves.length; i++) {
      int bin = i < 2 * SIZE ? 10 : 40;
      halves[i] = (float) Math.sin(2 * Math.PI * bin * i / SIZE);
    }

    List<float[]> frames = frames(halves);

    assertThat(frames).hasSize(5);
    assertThat(frames.get(1)[10]).isCloseTo(0.25f, within(1e-6f));
    assertThat(frames.get(1)[40]).isCloseTo(0, within(1e-10f));
    assertThat(frames.get(3)[40]).isCloseTo(0.25f, within(1e-6f));
    assertThat(frames.get(3)[10]).isCloseTo(0, within(1e-10f));
  }
}
