package org.barsheet.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A recording is laid into another by what is heard in both. */
final class PlacementTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 3, 4})
  void a_players_own_recording_finds_its_place_in_the_mix(long seed) {
    Random random = new Random(seed);
    Ensemble ensemble = new Ensemble(random, 100, 5);
    Sound mix = ensemble.mix(-1, 100);
    double from = 5 + 20 * random.nextDouble();
    double drift = 200 * (random.nextDouble() - 0.5);
    Sound clip = ensemble.alone(random.nextInt(5), from, 60, drift, 0.01, random);

    Placement place = Placement.of(clip, mix);

    assertThat(place.isSure()).isTrue();
    assertThat(place.start()).isCloseTo(from + 1, within(0.005));
    assertThat(place.drift()).isCloseTo(drift, within(150.0));
  }

  @Test
  void a_recording_that_begins_before_the_other_has_a_start_below_zero() {
    Ensemble ensemble = new Ensemble(new Random(9), 60, 4);
    Sound mix = ensemble.mix(0, 60);

    Placement place = Placement.of(ensemble.mix(-12.5, 60), mix);

    assertThat(place.start()).isCloseTo(-12.5, within(0.001));
    assertThat(place.drift()).isCloseTo(0, within(5.0));
    assertThat(place.at(20)).isCloseTo(7.5, within(0.001));
    assertThat(place.isSure()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 4})
  void other_music_is_never_placed_with_confidence(long seed) {
    Random random = new Random(seed);
    Sound clip = new Ensemble(random, 40, 1).mix(0, 40);

    Placement place = Placement.of(clip, new Ensemble(random, 80, 4).mix(0, 80));

    assertThat(place.isSure()).isFalse();
  }

  @Test
  void silence_has_no_place() {
    Sound silence = new Sound(new float[10 * Ensemble.RATE], Ensemble.RATE);

    assertThat(Placement.of(silence, new Ensemble(new Random(3), 30, 3).mix(0, 30)).isSure())
        .isFalse();
    assertThat(Placement.of(new Sound(new float[0], 48_000), silence).isSure()).isFalse();
  }

  @Test
  void clicks_alone_fit_a_beat_earlier_or_later_as_well_and_are_not_sure() {
    float[] clicks = new float[30 * Ensemble.RATE];
    for (int beat = 0; beat < 60; beat++) {
      for (int i = 0; i < 300; i++) {
        clicks[beat * Ensemble.RATE / 2 + i] = (float) (0.5 * Math.sin(0.3 * i));
      }
    }
    float[] later = new float[20 * Ensemble.RATE];
    System.arraycopy(clicks, 5 * Ensemble.RATE + 700, later, 0, later.length);

    Placement place =
        Placement.of(new Sound(later, Ensemble.RATE), new Sound(clicks, Ensemble.RATE));

    assertThat(place.isSure()).isFalse();
  }
}
