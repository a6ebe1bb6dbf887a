package org.barsheet.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.barsheet.input.InputException;
import org.barsheet.recording.Sound;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every beat of a score is found in a recording of it. */
final class RecordingFollowerTest {

  private static List<Double> errors(Score score, Followed followed, DoubleUnaryOperator truth) {
    List<Double> errors = new ArrayList<>();
    double end = score.tempo().secondsAt(score.endTick()).toDouble();
    for (double beat = 0; beat < end - 0.5; beat += InventedMix.BEAT) {
      errors.add(Math.abs(followed.secondsAt(beat) - truth.applyAsDouble(beat)));
    }
    errors.sort(null);
    return errors;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void beats_are_found_within_milliseconds_whatever_the_tempo_does(long seed) {
    Score score = InventedMix.score(seed, 48, 0);
    DoubleUnaryOperator curve = Renderings.curve(seed, 0.05, 1.3);
    Sound mix = InventedMix.of(score, curve, new Random(seed));

    Followed followed = RecordingFollower.follow(score, mix);

    List<Double> errors = errors(score, followed, curve);
    assertThat(errors.get(errors.size() / 2)).isLessThan(0.01);
    assertThat(errors.get(errors.size() * 9 / 10)).isLessThan(0.0208);
    assertThat(errors.get(errors.size() - 1)).isLessThan(0.05);
    assertThat(followed.semitones()).isZero();
    assertThat(followed.differences()).isEmpty();
    assertThat(followed.confidenceAt(20)).isGreaterThan(0.5);
  }

  @Test
  void a_recording_in_another_key_is_followed_and_the_key_told() {
    Score score = InventedMix.score(3, 32, 0);
    DoubleUnaryOperator curve = Renderings.curve(3, 0.03, 0.5);
    Sound mix = InventedMix.of(InventedMix.score(3, 32, -2), curve, new Random(3));

    Followed followed = RecordingFollower.follow(score, mix);

    assertThat(followed.semitones()).isEqualTo(-2);
    List<Double> errors = errors(score, followed, curve);
    assertThat(errors.get(errors.size() / 2)).isLessThan(0.01);
  }

  @Test
  void bars_left_out_are_named_and_both_sides_of_the_cut_are_right() {
    Score score = InventedMix.score(4, 48, 0);
    DoubleUnaryOperator cut = t -> t < 24 ? t + 0.4 : t < 32 ? 24.4 : t - 7.6;
    Sound mix = InventedMix.of(InventedMix.without(score, 24, 32), cut, new Random(4));

    Followed followed = RecordingFollower.follow(score, mix);

    assertThat(followed.differences()).hasSize(1);
    Difference found = followed.differences().get(0);
    assertThat(found.kind()).isEqualTo(Difference.Kind.LEFT_OUT);
    assertThat(found.fromScore()).isBetween(22.0, 26.0);
    assertThat(found.toScore()).isBetween(30.0, 34.0);
    assertThat(Math.abs(followed.secondsAt(16) - 16.4)).isLessThan(0.02);
    assertThat(Math.abs(followed.secondsAt(40) - 32.4)).isLessThan(0.02);
    assertThat(followed.confidenceAt(28)).isLessThan(0.5);
  }

  @Test
  void bars_played_twice_are_named() {
    Score score = InventedMix.score(5, 40, 0);
    Score twice = InventedMix.twice(score, 16, 24);
    Sound mix = InventedMix.of(twice, t -> t + 0.4, new Random(5));

    Followed followed = RecordingFollower.follow(score, mix);

    assertThat(followed.differences())
        .anySatisfy(one -> assertThat(one.kind()).isEqualTo(Difference.Kind.ADDED));
    assertThat(Math.abs(followed.secondsAt(8) - 8.4)).isLessThan(0.02);
    assertThat(Math.abs(followed.secondsAt(34) - 42.4)).isLessThan(0.02);
  }

  @Test
  void another_piece_is_refused() {
    Sound other = InventedMix.of(InventedMix.score(7, 32, 0), t -> t, new Random(7));

    assertThatThrownBy(() -> RecordingFollower.follow(InventedMix.score(8, 32, 0), other))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("another piece");
  }

  @Test
  void silence_is_refused() {
    Sound silence = new Sound(new float[24_000], 48_000);

    assertThatThrownBy(() -> RecordingFollower.follow(InventedMix.score(8, 8, 0), silence))
        .isInstanceOf(InputException.class);
  }
}
