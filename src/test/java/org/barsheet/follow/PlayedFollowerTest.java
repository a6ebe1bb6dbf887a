package org.barsheet.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.barsheet.input.InputException;
import org.barsheet.motif.ScoreSketch;
import org.barsheet.score.Note;
import org.barsheet.score.Score;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every beat of a score is found in a played MIDI file of it. */
final class PlayedFollowerTest {

  private static final double TICKS = 2.0 * ScoreSketch.TICKS_PER_QUARTER;

  /** The score played in a time of its own, some notes missing, wrong or added. */
  private static Score played(
      Score score, DoubleUnaryOperator timeOf, double faults, double loose, Random random) {
    ScoreSketch sketch = new ScoreSketch().part("Piano");
    for (Note note : score.notes()) {
      double on = timeOf.applyAsDouble(note.onTick() / TICKS) + loose * random.nextGaussian();
      double off = timeOf.applyAsDouble(note.offTick() / TICKS) + 0.03;
      double fault = random.nextDouble() / Math.max(1e-9, faults);
      int pitch = note.pitch() + (fault > 1 && fault < 1.6 ? 1 : 0);
      if (fault > 1) {
        sketch.note(pitch, Math.max(0, Math.round(on * TICKS)), Math.round((off + 0.1) * TICKS));
      }
      if (fault > 1.6 && fault < 2.6) {
        long stray = Math.round(timeOf.applyAsDouble(random.nextInt(40)) * TICKS);
        sketch.note(55 + random.nextInt(20), stray, stray + 100);
      }
    }
    return sketch.score();
  }

  @ParameterizedTest
  @CsvSource({"1, 0, 0.008", "2, 0.05, 0.01", "3, 0.08, 0.01"})
  void beats_are_found_among_wrong_missing_and_added_notes(long seed, double faults, double loose) {
    Score score = InventedMix.score(seed, 60, 0);
    DoubleUnaryOperator curve = Renderings.curve(seed, 0.2, 0.7);
    Score performance = played(score, curve, faults, loose, new Random(seed));

    Followed followed = PlayedFollower.follow(score, performance);

    List<Double> errors = new ArrayList<>();
    for (double beat = 0; beat < 59; beat += InventedMix.BEAT) {
      errors.add(Math.abs(followed.secondsAt(beat) - curve.applyAsDouble(beat)));
    }
    assertThat(errors.stream().filter(error -> error < 0.0208).count() / (double) errors.size())
        .isGreaterThan(0.85);
    assertThat(errors).allMatch(error -> error < 0.12);
    assertThat(followed.differences()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {5, 6})
  void another_piece_is_refused(long seed) {
    Score other = InventedMix.score(seed + 100, 40, 0);

    assertThatThrownBy(() -> PlayedFollower.follow(InventedMix.score(seed, 40, 0), other))
        .isInstanceOf(InputException.class);
  }
}
