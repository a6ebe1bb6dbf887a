package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.barsheet.pulse.TempoRequest.Pin;
import org.barsheet.score.MidiBytes.Track;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PinnedTempoTest {

  @TempDir Path folder;

  /** Forty bars with a ritardando in bar 8. */
  private Score score() {
    Track tempos = new Track().tempo(0, 500_000);
    for (int i = 0; i < 8; i++) {
      tempos.tempo(7 * 1920 + 240L * i, 500_000 + 40_000 * i);
    }
    return Scores.read(Scores.quarters(40, tempos.tempo(8 * 1920, 500_000)), folder);
  }

  private static Seconds barStart(Music music, int bar) {
    return music.tempo().secondsAt(music.bars().numbered(bar).get(0).startTick());
  }

  @Test
  void one_pin_moves_the_music_and_leaves_its_tempo() {
    Score score = score();
    Music music = MusicFinder.follow(score, Scores.pinned(Scores.pin(1, "0.52")));
    assertThat(music.source()).isEqualTo(Music.Source.PINNED);
    assertThat(music.tempo().secondsAt(0)).isEqualTo(Seconds.parse("0.52"));
    assertThat(barStart(music, 33).minus(score.tempo().secondsAt(32 * 1920)))
        .isEqualTo(Seconds.parse("0.52"));
  }

  @Test
  void pinned_bars_begin_exactly_at_their_times_and_tempos_keep_their_shape() {
    Score score = score();
    Music music =
        MusicFinder.follow(score, Scores.pinned(Scores.pin(33, "61.04"), Scores.pin(1, "0.52")));
    assertThat(barStart(music, 1)).isEqualTo(Seconds.parse("0.52"));
    assertThat(barStart(music, 33)).isEqualTo(Seconds.parse("61.04"));
    TempoMap written = score.tempo();
    BigFraction factor = Seconds.parse("60.52").dividedBy(written.secondsAt(32 * 1920));
    for (long tick = 0; tick < 40 * 1920; tick += 240) {
      assertThat(music.tempo().perQuarterAt(tick))
          .isEqualTo(written.perQuarterAt(tick).times(factor));
    }
  }

  @Test
  void pins_on_random_bars_always_hold_and_time_never_runs_back() {
    Score score = score();
    SplittableRandom random = new SplittableRandom(7);
    for (int trial = 0; trial < 50; trial++) {
      List<Pin> pins = randomPins(score, random);
      Music music = MusicFinder.follow(score, Scores.pinned(pins.toArray(new Pin[0])));
      for (Pin pin : pins) {
        assertThat(barStart(music, pin.bar())).isEqualTo(pin.at());
        FrameRate rate = FrameRate.FPS_23_976;
        assertThat(rate.nearestFrame(barStart(music, pin.bar())))
            .isEqualTo(rate.nearestFrame(pin.at()));
      }
      for (long tick = 240; tick < 40 * 1920; tick += 240) {
        assertThat(music.tempo().secondsAt(tick))
            .isGreaterThan(music.tempo().secondsAt(tick - 240));
      }
    }
  }

  private static List<Pin> randomPins(Score score, SplittableRandom random) {
    List<Pin> pins = new ArrayList<>();
    Seconds shift = Seconds.of(random.nextInt(5_000), 1000);
    for (int bar = 1 + random.nextInt(4); bar <= 40; bar += 4 + random.nextInt(10)) {
      Seconds written = score.tempo().secondsAt((bar - 1) * 1920L);
      pins.add(new Pin(bar, written.plus(shift).plus(Seconds.of(random.nextInt(900), 1000))));
    }
    return pins;
  }

  @Test
  void pins_that_run_backwards_are_refused_with_both() {
    assertThatThrownBy(
            () ->
                MusicFinder.follow(
                    score(), Scores.pinned(Scores.pin(17, "70"), Scores.pin(33, "61.04"))))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("pins: bar 17 at 70.000 s and bar 33 at 61.040 s run backwards");
  }

  @Test
  void all_impossible_pins_are_reported_at_once() {
    assertThatThrownBy(
            () ->
                MusicFinder.follow(
                    score(),
                    Scores.pinned(
                        Scores.pin(-4, "0.5"),
                        Scores.pin(2, "-3"),
                        Scores.pin(5, "8"),
                        Scores.pin(5, "9"))))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("there is no bar -4 to pin")
        .hasMessageContaining("the bars run from 1 to 40")
        .hasMessageContaining("bar 2 at -3.000 s is before the recording begins")
        .hasMessageContaining("bar 5 at 8.000 s and bar 5 at 9.000 s pin the same bar twice");
  }

  @Test
  void pins_that_ask_for_a_tempo_nobody_plays_are_refused() {
    assertThatThrownBy(
            () ->
                MusicFinder.follow(score(), Scores.pinned(Scores.pin(1, "0"), Scores.pin(33, "6"))))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(
            "between bar 1 at 0.000 s and bar 33 at 6.000 s the music would run more than 4 times"
                + " as fast as written");
  }

  @Test
  void a_bar_after_the_last_one_may_be_pinned() {
    Music music =
        MusicFinder.follow(score(), Scores.pinned(Scores.pin(1, "0.5"), Scores.pin(43, "90.5")));
    TempoMap tempo = music.tempo();
    assertThat(tempo.secondsAt(42 * 1920L)).isEqualTo(Seconds.parse("90.5"));
  }

  /** A drift of 3 % either way over 192 bars, pinned every 8 bars: against straight stretches. */
  @Test
  void between_pins_time_bends_smoothly() {
    Score score = Scores.read(Scores.quarters(193), folder);
    List<Pin> pins = new ArrayList<>();
    for (int bar = 1; bar <= 193; bar += 8) {
      long microseconds = Math.round(1e6 * drifting(2.0 * (bar - 1)));
      pins.add(new Pin(bar, Seconds.of(microseconds, 1_000_000)));
    }
    Music music = MusicFinder.follow(score, Scores.pinned(pins.toArray(new Pin[0])));
    double worst = 0;
    double worstStraight = 0;
    for (int beat = 0; beat < 4 * 192; beat++) {
      double written = 0.5 * beat;
      double from = Math.floor(written / 16) * 16;
      double share = (written - from) / 16;
      double straight = drifting(from) * (1 - share) + drifting(from + 16) * share;
      double bent = music.tempo().secondsAt(480L * beat).toDouble();
      worst = Math.max(worst, Math.abs(bent - drifting(written)));
      worstStraight = Math.max(worstStraight, Math.abs(straight - drifting(written)));
    }
    assertThat(worst).isLessThan(worstStraight / 2);
  }

  private static double drifting(double seconds) {
    double period = 120;
    return 1 + seconds + 0.03 * period / (2 * Math.PI) * Math.sin(2 * Math.PI * seconds / period);
  }

  /** A fermata between the last two pins; before it the recording keeps to the written tempo. */
  @ParameterizedTest
  @CsvSource({"1, 49, 51", "1, 49, 50", "1, 9, 17"})
  void a_fermata_between_two_pins_leaves_the_bars_before_it_where_they_are(
      int first, int last, int after) {
    Score score = Scores.read(Scores.quarters(60), folder);
    Seconds lastAt = Seconds.of(2L * (last - first), 1);
    Music music =
        MusicFinder.follow(
            score,
            Scores.pinned(
                Scores.pin(first, "0"),
                new Pin(last, lastAt),
                new Pin(after, lastAt.plus(Seconds.of(4L * (after - last), 1)))));
    for (int bar = first; bar <= last; bar++) {
      assertThat(barStart(music, bar)).isEqualTo(Seconds.of(2L * (bar - first), 1));
    }
  }

  /** 49 bars as written, then two slower by a tenth. */
  @Test
  void a_short_stretch_bends_a_long_one_hardly() {
    Score score = Scores.read(Scores.quarters(60), folder);
    Music music =
        MusicFinder.follow(
            score,
            Scores.pinned(Scores.pin(1, "0"), Scores.pin(50, "98"), Scores.pin(52, "102.4")));
    for (int bar = 1; bar <= 50; bar++) {
      assertThat(barStart(music, bar).toDouble()).isCloseTo(2.0 * (bar - 1), within(0.1));
    }
  }

  @Test
  void a_pin_that_contradicts_its_neighbors_is_named() {
    Pin[] pins = new Pin[5];
    for (int i = 0; i < pins.length; i++) {
      pins[i] = Scores.pin(8 * i + 1, Integer.toString(17 * i + (i == 2 ? 4 : 0)));
    }
    Score score = Scores.read(Scores.quarters(40), folder);
    Music music = MusicFinder.follow(score, Scores.pinned(pins));
    assertThat(music.doubts())
        .filteredOn(doubt -> doubt.kind() == Doubt.Kind.PIN_AT_ODDS)
        .extracting(Doubt::sentence)
        .containsExactly(
            "the pin of bar 17 at 38.000 s contradicts its neighbors: without it the music runs"
                + " evenly there");
  }
}
