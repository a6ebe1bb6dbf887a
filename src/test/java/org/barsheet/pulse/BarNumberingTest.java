package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.input.InputException;
import org.barsheet.pulse.TempoRequest.Pickup;
import org.barsheet.score.Bar;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarNumberingTest {

  @TempDir Path folder;

  private Music follow(MidiBytes file, Pickup pickup, int firstBar, String order) {
    return MusicFinder.follow(
        Scores.read(file, folder), Scores.request(pickup, firstBar, order, List.of()));
  }

  private static List<Integer> numbers(Music music) {
    return music.bars().bars().stream().map(Bar::number).toList();
  }

  private static MidiBytes shortFirstBar() {
    Track meters = new Track().meter(0, 1, 2).meter(480, 4, 2);
    return Scores.quarters(3, meters);
  }

  /** Four bars of which the first holds its last quarter only. */
  private static MidiBytes paddedFirstBar(long firstOnset) {
    Track track = new Track().note(firstOnset, firstOnset + 10, 0, 60);
    return MidiBytes.file().track(track.note(1920, 4 * 1920, 0, 62));
  }

  @Test
  void a_short_first_bar_is_bar_0_unless_the_request_says_no() {
    assertThat(numbers(follow(shortFirstBar(), Pickup.AUTO, 1, ""))).startsWith(0, 1);
    assertThat(numbers(follow(shortFirstBar(), Pickup.NO, 1, ""))).startsWith(1, 2);
    assertThat(numbers(follow(shortFirstBar(), Pickup.AUTO, 33, ""))).startsWith(32, 33);
  }

  @Test
  void a_first_bar_that_is_silent_for_half_its_length_is_a_pickup_and_doubtful() {
    Music music = follow(paddedFirstBar(1440), Pickup.AUTO, 1, "");
    assertThat(numbers(music)).containsExactly(0, 1, 2, 3);
    assertThat(music.pickup()).isTrue();
    assertThat(music.doubts()).extracting(Doubt::kind).containsExactly(Doubt.Kind.PICKUP);
    assertThat(music.firstDownbeats(2)).extracting(Beat::tick).containsExactly(1920L, 3840L);
  }

  @Test
  void a_first_bar_that_begins_with_a_short_rest_is_no_pickup() {
    Music music = follow(paddedFirstBar(240), Pickup.AUTO, 1, "");
    assertThat(numbers(music)).containsExactly(1, 2, 3, 4);
    assertThat(music.doubts()).isEmpty();
    assertThat(numbers(follow(paddedFirstBar(240), Pickup.YES, 1, ""))).startsWith(0, 1);
  }

  @Test
  void repeats_give_bars_their_printed_numbers_and_the_time_round() {
    Music music = follow(Scores.quarters(8), Pickup.AUTO, 1, "1-3, 2-3, 5-7");
    assertThat(numbers(music)).containsExactly(1, 2, 3, 2, 3, 5, 6, 7);
    assertThat(music.bars().bars()).extracting(Bar::time).containsExactly(1, 1, 1, 2, 2, 1, 1, 1);
    assertThat(music.bars().numbered(3)).extracting(Bar::index).containsExactly(2, 4);
  }

  @Test
  void a_pickup_may_be_left_out_of_the_played_order() {
    Music music = follow(shortFirstBar(), Pickup.AUTO, 1, "1-2, 1");
    assertThat(numbers(music)).containsExactly(0, 1, 2, 1);
    assertThat(numbers(follow(shortFirstBar(), Pickup.AUTO, 1, "0-2, 1")))
        .containsExactly(0, 1, 2, 1);
  }

  @Test
  void a_played_order_of_another_length_is_refused_with_both_counts() {
    assertThatThrownBy(() -> follow(Scores.quarters(8), Pickup.AUTO, 1, "1-4, 1-2"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("played-order: it lists 6 bars, but the music plays 8 bars");
  }

  @Test
  void a_played_order_that_is_none_is_refused_with_a_caret() {
    assertThatThrownBy(() -> follow(Scores.quarters(8), Pickup.AUTO, 1, "1-4, da capo"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("1-4, da capo\n         ^");
  }

  private Music feel(MidiBytes file, BigFraction quarters) {
    TempoRequest all = TempoRequest.DEFAULT;
    return MusicFinder.follow(
        Scores.read(file, folder),
        new TempoRequest(
            all.tempo(),
            1,
            Pickup.AUTO,
            all.playedOrder(),
            all.pins(),
            all.meter(),
            all.beatsPerMinute(),
            Optional.of(quarters)));
  }

  @Test
  void the_felt_beat_may_be_another_than_the_meters() {
    Music music = feel(Scores.quarters(2), BigFraction.of(2));
    assertThat(music.bars().first().beatTicks()).containsExactly(0L, 960L);
    assertThat(music.bars().first().isShort()).isFalse();
    Track meter = new Track().meter(0, 6, 3);
    assertThat(feel(Scores.quarters(3, meter), BigFraction.of(1, 2)).bars().first().beatTicks())
        .hasSize(6);
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "-1, 1", "1, 7"})
  void a_felt_beat_that_cannot_be_counted_is_refused(int numerator, int denominator) {
    assertThatThrownBy(() -> feel(Scores.quarters(2), BigFraction.of(numerator, denominator)))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("felt-beat");
  }

  @Test
  void beats_have_their_place_in_quarters_and_seconds() {
    Music music = follow(Scores.quarters(2), Pickup.AUTO, 1, "");
    Beat beat = music.beats().get(5);
    assertThat(beat.bar().number()).isEqualTo(2);
    assertThat(beat.number()).isEqualTo(2);
    assertThat(beat.quarter()).isEqualTo(BigFraction.of(5));
    assertThat(beat.seconds()).hasToString("5/2");
    assertThat(beat.isDownbeat()).isFalse();
    assertThat(music.beats()).hasSize(8);
  }
}
