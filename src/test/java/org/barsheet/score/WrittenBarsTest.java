package org.barsheet.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.score.MidiBytes.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenBarsTest {

  @TempDir Path folder;

  private Score read(Track track) {
    return ScoreReader.read(MidiBytes.file().track(track).into(folder));
  }

  private static List<Long> starts(Score score) {
    return score.bars().bars().stream().map(Bar::startTick).toList();
  }

  private static List<Integer> numbers(Score score) {
    return score.bars().bars().stream().map(Bar::number).toList();
  }

  /** A bar of n/d lasts n * 4/d quarter notes: here at 480 ticks to the quarter. */
  @ParameterizedTest
  @CsvSource({
    "4, 2, 1920, 4", "3, 2, 1440, 3", "2, 2, 960, 2", "6, 3, 1440, 2", "7, 3, 1680, 7",
    "5, 3, 1200, 5", "9, 3, 2160, 3", "12, 3, 2880, 4", "2, 1, 1920, 2", "3, 4, 360, 3",
    "3, 3, 720, 3", "6, 2, 2880, 2", "1, 7, 15, 1"
  })
  void bars_are_as_long_as_their_meter_says(int numerator, int power, long ticks, int beats) {
    Score score = read(new Track().meter(0, numerator, power).note(0, 2 * ticks, 0, 60));
    assertThat(starts(score)).containsExactly(0L, ticks);
    assertThat(score.bars().first().beatTicks()).hasSize(beats);
  }

  @Test
  void meters_change_at_bar_lines_without_a_word() {
    Track track = new Track().meter(0, 3, 2).meter(1440, 5, 3).meter(2640, 7, 4);
    Score score = read(track.note(3480, 3500, 0, 60));
    assertThat(starts(score)).containsExactly(0L, 1440L, 2640L, 3480L);
    assertThat(numbers(score)).containsExactly(1, 2, 3, 4);
    assertThat(score.readingNotes()).isEmpty();
  }

  @Test
  void a_meter_that_changes_inside_a_bar_makes_it_short_and_is_noted() {
    Score score = read(new Track().meter(0, 4, 2).meter(2880, 3, 2).note(4000, 4001, 0, 60));
    assertThat(starts(score)).containsExactly(0L, 1920L, 2880L);
    assertThat(score.bars().bars().get(1).isShort()).isTrue();
    assertThat(score.bars().bars().get(1).beatTicks()).containsExactly(1920L, 2400L);
    assertThat(score.readingNotes())
        .extracting(ReadingNote::sentence)
        .containsExactly("the meter changes to 3/4 inside bar 2 of 4/4; that bar is short");
  }

  @Test
  void a_first_bar_of_a_smaller_meter_is_a_pickup() {
    Score score = read(new Track().meter(0, 1, 2).meter(480, 4, 2).note(480, 4000, 0, 60));
    assertThat(numbers(score)).containsExactly(0, 1, 2);
    assertThat(starts(score)).containsExactly(0L, 480L, 2400L);
    assertThat(score.readingNotes()).isEmpty();
  }

  @Test
  void a_first_bar_cut_short_is_a_pickup() {
    Score score = read(new Track().meter(0, 3, 2).meter(480, 3, 2).note(480, 1800, 0, 60));
    assertThat(numbers(score)).containsExactly(0, 1);
  }

  @Test
  void meters_that_take_turns_begin_with_no_pickup() {
    Track track = new Track();
    for (int pair = 0; pair < 3; pair++) {
      track.meter(2400L * pair, 2, 2).meter(2400L * pair + 960, 3, 2);
    }
    assertThat(numbers(read(track.note(7000, 7001, 0, 60)))).containsExactly(1, 2, 3, 4, 5, 6);
  }

  /** A quarter before the repeat sign and a quarter after it, in 2/4. */
  @Test
  void a_bar_written_in_two_parts_counts_as_one() {
    Track track = new Track().meter(0, 2, 2).meter(1920, 1, 2).meter(2400, 2, 3);
    Score score = read(track.meter(2880, 2, 2).note(2880, 4800, 0, 60));
    assertThat(starts(score)).containsExactly(0L, 960L, 1920L, 2880L, 3840L);
    assertThat(numbers(score)).containsExactly(1, 2, 3, 4, 5);
    assertThat(score.bars().bars()).extracting(Bar::meter).containsOnly(new Meter(2, 4));
    assertThat(score.readingNotes())
        .extracting(ReadingNote::sentence)
        .containsExactly(
            "a bar is written in two parts, as at a repeat sign; it is counted as one");
  }

  @Test
  void two_bars_of_a_smaller_meter_stay_two() {
    Track track = new Track().meter(0, 4, 2).meter(1920, 2, 2).meter(3840, 4, 2);
    Score score = read(track.note(3840, 5760, 0, 60));
    assertThat(starts(score)).containsExactly(0L, 1920L, 2880L, 3840L);
    assertThat(score.readingNotes()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0, 2, a time signature of 0/4 isn't possible; left out",
    "4, 200, a time signature of 4/2^200 isn't possible; left out",
    "4, 7, a meter of 4/128 is unusual; bars are counted as it says"
  })
  void odd_meters_are_noted(int numerator, int power, String sentence) {
    Score score = read(new Track().meter(0, numerator, power).note(0, 480, 0, 60));
    assertThat(score.readingNotes()).extracting(ReadingNote::sentence).containsExactly(sentence);
  }

  @Test
  void a_short_time_signature_is_read_as_far_as_it_goes() {
    Score two = read(new Track().meta(0, 0x58, (byte) 3, (byte) 2).note(0, 480, 0, 60));
    assertThat(two.bars().first().meter()).isEqualTo(new Meter(3, 4));
    assertThat(two.readingNotes()).hasSize(1);
    Score one = read(new Track().meta(0, 0x58, (byte) 3).note(0, 480, 0, 60));
    assertThat(one.bars().first().meter()).isEqualTo(Meter.COMMON);
    assertThat(one.readingNotes()).hasSize(1);
  }

  @Test
  void the_last_bar_is_the_one_the_last_note_ends_in() {
    assertThat(starts(read(new Track().note(0, 1920, 0, 60)))).containsExactly(0L);
    assertThat(starts(read(new Track().note(0, 1921, 0, 60)))).containsExactly(0L, 1920L);
    assertThat(starts(read(new Track().note(1920, 1920, 0, 60)))).containsExactly(0L, 1920L);
  }
}
