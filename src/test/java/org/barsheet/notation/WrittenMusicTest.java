package org.barsheet.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.barsheet.motif.ScoreSketch;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenMusicTest {

  private static final int QUARTER = ScoreSketch.TICKS_PER_QUARTER;

  /** A rhythm of eighths, quarters and sixteenths; onsets in quarter notes of a common-time bar. */
  private static final double[] BAR = {0, 0.5, 1, 1.5, 2, 2.25, 2.5, 3, 3.5, 3.75};

  private static final double[] TRIPLETS = {0, 1 / 3., 2 / 3., 1, 2, 2 + 1 / 3., 2 + 2 / 3., 3};

  @Test
  void written_music_stays_as_it_is_to_the_tick() {
    Score score = score(BAR, place -> place);
    assertThat(WrittenMusic.of(score).isAsPlayed()).isTrue();
    assertThat(WrittenMusic.of(score).score()).isSameAs(score);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.56, 0.6, 0.62, 2 / 3.})
  void swung_eighths_are_written_straight_and_their_beats_stay(double ratio) {
    Swing swing = new Swing(ratio);
    WrittenMusic written = WrittenMusic.of(score(BAR, swing::played));
    assertThat(places(written)).isEqualTo(repeated(BAR));
    assertThat(written.played(Math.round(0.5 * QUARTER))).isEqualTo(Math.round(ratio * QUARTER));
    assertThat(written.written(4 * QUARTER)).isEqualTo(4 * QUARTER);
  }

  @Test
  void triplets_are_no_swing() {
    WrittenMusic written = WrittenMusic.of(score(TRIPLETS, place -> place));
    assertThat(written.isAsPlayed()).isTrue();
  }

  @Test
  void notes_some_milliseconds_off_are_written_where_they_were_meant() {
    SplittableRandom random = new SplittableRandom(3);
    Score played = score(BAR, place -> place + 0.012 * random.nextGaussian());
    WrittenMusic written = WrittenMusic.of(played);
    assertThat(written.isOnBeats()).isTrue();
    assertThat(places(written)).isEqualTo(repeated(BAR));
    assertThat(written.notes())
        .extracting(note -> note.played())
        .containsExactlyInAnyOrderElementsOf(played.notes());
  }

  @Test
  void triplets_played_by_hand_stay_triplets() {
    SplittableRandom random = new SplittableRandom(4);
    WrittenMusic written =
        WrittenMusic.of(score(TRIPLETS, place -> place + 0.012 * random.nextGaussian()));
    assertThat(places(written)).isEqualTo(repeated(TRIPLETS));
  }

  @Test
  void playing_at_a_pace_of_its_own_keeps_to_no_beats_and_is_left_alone() {
    SplittableRandom random = new SplittableRandom(5);
    WrittenMusic written =
        WrittenMusic.of(score(BAR, place -> 1.0737 * place + 0.02 * random.nextGaussian()));
    assertThat(written.isOnBeats()).isFalse();
    assertThat(written.isAsPlayed()).isTrue();
  }

  /** Sixteen bars of a rhythm, each onset where the player puts it. */
  private static Score score(double[] rhythm, DoubleUnaryOperator player) {
    ScoreSketch sketch = new ScoreSketch().part("Oboe");
    for (double place : repeatedPlaces(rhythm)) {
      long on = Math.max(0, Math.round(player.applyAsDouble(place) * QUARTER));
      sketch.note(72, on, on + QUARTER / 5);
    }
    return sketch.score();
  }

  private static List<Double> repeatedPlaces(double[] rhythm) {
    List<Double> places = new ArrayList<>();
    for (int bar = 0; bar < 16; bar++) {
      for (double place : rhythm) {
        places.add(4 * bar + place);
      }
    }
    return places;
  }

  private static List<Long> repeated(double[] rhythm) {
    return repeatedPlaces(rhythm).stream().map(place -> Math.round(place * QUARTER)).toList();
  }

  private static List<Long> places(WrittenMusic written) {
    return written.notes().stream().map(note -> note.written().onTick()).toList();
  }
}
