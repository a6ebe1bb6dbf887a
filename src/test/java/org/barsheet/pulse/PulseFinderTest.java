package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.barsheet.pulse.TempoRequest.Mode;
import org.barsheet.pulse.TempoRequest.Pickup;
import org.barsheet.pulse.TempoRequest.Pin;
import org.barsheet.score.Bar;
import org.barsheet.score.Meter;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PulseFinderTest {

  private static final double TOLERANCE = 0.07;

  @TempDir Path folder;

  private static TempoRequest request(
      Mode mode, Optional<Meter> meter, Optional<BigFraction> bpm, Pin... pins) {
    return new TempoRequest(
        mode, 1, Pickup.AUTO, Optional.empty(), List.of(pins), meter, bpm, Optional.empty());
  }

  private static TempoRequest auto(Pin... pins) {
    return request(Mode.AUTO, Optional.empty(), Optional.empty(), pins);
  }

  private static double beats(PlayedPiece piece, Music music) {
    List<Double> found = music.beats().stream().map(beat -> beat.seconds().toDouble()).toList();
    return FMeasure.of(piece.beats(), found, TOLERANCE);
  }

  private static double downbeats(PlayedPiece piece, Music music) {
    List<Double> found =
        music.firstDownbeats(Integer.MAX_VALUE).stream()
            .map(beat -> beat.seconds().toDouble())
            .toList();
    return FMeasure.of(piece.downbeats(), found, TOLERANCE);
  }

  /** F-measures that an invented piece is recovered to, by how freely it is played. */
  @ParameterizedTest
  @CsvSource({
    "3, 0.03, 0.005, 0.98, 0.97", "4, 0.03, 0.005, 0.98, 0.97",
    "3, 0.08, 0.010, 0.98, 0.97", "4, 0.08, 0.010, 0.98, 0.97",
    "3, 0.15, 0.015, 0.95, 0.90", "4, 0.15, 0.015, 0.95, 0.90",
    "5, 0.03, 0.005, 0.98, 0.97", "5, 0.08, 0.010, 0.98, 0.97"
  })
  void a_piece_played_freely_is_recovered(
      int beatsInBar, double spread, double miss, double leastBeats, double leastDownbeats) {
    for (long seed = 1; seed <= 2; seed++) {
      PlayedPiece piece = new PlayedPiece(beatsInBar, 32, 0.55, spread, miss, seed);
      Music music = MusicFinder.follow(piece.record(folder), auto());
      assertThat(music.source()).isEqualTo(Music.Source.PLAYED);
      assertThat(beats(piece, music)).isGreaterThan(leastBeats);
      assertThat(downbeats(piece, music)).isGreaterThan(leastDownbeats);
    }
  }

  @ParameterizedTest
  @CsvSource({"2, 6/8", "3, 9/8", "4, 12/8"})
  void beats_divided_into_three_are_dotted(int beatsInBar, String meter) {
    PlayedPiece piece = new PlayedPiece(beatsInBar, 3, 32, 0.75, 0.05, 0.008, 3);
    Music music = MusicFinder.follow(piece.record(folder), auto());
    assertThat(beats(piece, music)).isGreaterThan(0.97);
    assertThat(music.bars().bars().get(8).meter()).hasToString(meter);
    assertThat(music.sentence()).contains("mostly of " + beatsInBar + " dotted beats");
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4})
  void beats_divided_into_two_are_plain(int beatsInBar) {
    PlayedPiece piece = new PlayedPiece(beatsInBar, 32, 0.6, 0.05, 0.008, 3);
    Music music = MusicFinder.follow(piece.record(folder), auto());
    assertThat(music.bars().bars()).noneMatch(bar -> bar.meter().isCompound());
  }

  @Test
  void what_was_found_is_said_and_not_doubted_where_the_notes_tell_it_clearly() {
    PlayedPiece piece = new PlayedPiece(3, 32, 0.55, 0.03, 0.005, 1);
    Music music = MusicFinder.follow(piece.record(folder), auto());
    assertThat(music.sentence())
        .contains("found in the playing")
        .contains("mostly of 3 beats")
        .contains("don't follow the written beats");
    assertThat(music.sentence()).contains(", bar 1 at 1.0");
    assertThat(music.doubts()).extracting(Doubt::kind).doesNotContain(Doubt.Kind.FOUND_BARS);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void where_the_notes_tell_no_beat_clearly_the_first_bars_are_to_be_confirmed(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Track track = new Track();
    long at = 0;
    for (int note = 0; note < 300; note++) {
      track.note(at, at + 50, 0, 50 + random.nextInt(20));
      at += 60 + random.nextInt(400);
    }
    Music music = MusicFinder.follow(Scores.read(MidiBytes.file().track(track), folder), auto());
    String times =
        music.firstDownbeats(3).stream()
            .map(beat -> beat.seconds().toDecimal(2).toPlainString() + " s")
            .collect(Collectors.joining(", "));
    assertThat(music.doubts())
        .filteredOn(doubt -> doubt.kind() == Doubt.Kind.FOUND_BARS)
        .singleElement()
        .extracting(Doubt::sentence)
        .asString()
        .endsWith("check that bars begin at " + times);
  }

  @Test
  void the_file_keeps_its_own_time_and_beats_stand_on_notes() {
    PlayedPiece piece = new PlayedPiece(4, 32, 0.5, 0.08, 0.01, 4);
    Score score = piece.record(folder);
    Music music = MusicFinder.follow(score, auto());
    assertThat(music.tempo()).isSameAs(score.tempo());
    List<Long> onsets = score.notes().stream().map(note -> note.onTick()).distinct().toList();
    long onNotes = music.beats().stream().filter(beat -> onsets.contains(beat.tick())).count();
    assertThat(onNotes).isGreaterThan(music.beats().size() * 95L / 100);
  }

  @Test
  void a_tempo_asked_for_decides_between_a_beat_and_its_half() {
    PlayedPiece piece = new PlayedPiece(4, 32, 0.5, 0.03, 0.005, 5);
    Score score = piece.record(folder);
    for (int bpm : new int[] {60, 120}) {
      Music music =
          MusicFinder.follow(
              score, request(Mode.AUTO, Optional.empty(), Optional.of(BigFraction.of(bpm))));
      List<Beat> beats = music.beats();
      double mean =
          beats.get(beats.size() - 1).seconds().minus(beats.get(0).seconds()).toDouble()
              / (beats.size() - 1);
      assertThat(60 / mean).isBetween(bpm * 0.9, bpm * 1.1);
    }
  }

  @Test
  void a_meter_asked_for_is_counted() {
    PlayedPiece piece = new PlayedPiece(4, 32, 0.5, 0.03, 0.005, 6);
    Optional<Meter> meter = Optional.of(new Meter(4, 4));
    Music music =
        MusicFinder.follow(piece.record(folder), request(Mode.PLAYED, meter, Optional.empty()));
    assertThat(music.bars().bars().stream().filter(bar -> bar.number() > 0))
        .extracting(Bar::meter)
        .allMatch(new Meter(4, 4)::equals);
    assertThat(downbeats(piece, music)).isGreaterThan(0.97);
  }

  @Test
  void pinned_bars_begin_at_their_times_and_hold_as_many_bars_as_they_say() {
    for (long seed = 1; seed <= 2; seed++) {
      PlayedPiece piece = new PlayedPiece(3, 40, 0.6, 0.15, 0.015, seed);
      Pin[] pins = new Pin[5];
      for (int i = 0; i < pins.length; i++) {
        long milliseconds = Math.round(piece.downbeats().get(9 * i) * 1000);
        pins[i] = new Pin(9 * i + 1, Seconds.of(milliseconds, 1000));
      }
      Music music = MusicFinder.follow(piece.record(folder), auto(pins));
      for (Pin pin : pins) {
        Bar bar = music.bars().numbered(pin.bar()).get(0);
        Seconds start = music.tempo().secondsAt(bar.startTick());
        assertThat(start.minus(pin.at()).toDouble()).isBetween(-0.001, 0.001);
      }
      assertThat(downbeats(piece, music)).isGreaterThan(0.95);
    }
  }

  @Test
  void a_pin_in_the_middle_numbers_the_bars_before_it() {
    PlayedPiece piece = new PlayedPiece(4, 32, 0.55, 0.03, 0.005, 8);
    long milliseconds = Math.round(piece.downbeats().get(20) * 1000);
    Pin pin = new Pin(121, Seconds.of(milliseconds, 1000));
    Music music = MusicFinder.follow(piece.record(folder), auto(pin));
    assertThat(music.bars().numbered(101)).hasSize(1);
    double first = music.firstDownbeats(1).get(0).seconds().toDouble();
    assertThat(first).isBetween(0.95, 1.05);
  }

  @Test
  void pins_that_playing_cannot_meet_are_refused_with_both() {
    Score score = new PlayedPiece(4, 32, 0.55, 0.03, 0.005, 8).record(folder);
    Pin first = Scores.pin(1, "1");
    assertThatThrownBy(() -> MusicFinder.follow(score, auto(first, Scores.pin(40, "4"))))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(
            "between bar 1 at 1.000 s and bar 40 at 4.000 s a bar would last 0.08");
    assertThatThrownBy(
            () -> MusicFinder.follow(score, auto(Scores.pin(9, "5"), Scores.pin(5, "9"))))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("bar 5 at 9.000 s and bar 9 at 5.000 s run backwards");
    assertThatThrownBy(() -> MusicFinder.follow(score, auto(Scores.pin(9, "500"))))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("is after the last note");
  }

  @Test
  void a_division_of_real_time_is_followed_by_its_playing() {
    Track track = new Track();
    for (int beat = 0; beat < 80; beat++) {
      track.note(600L * beat, 600L * beat + 300, 0, beat % 4 == 0 ? 40 : 64);
      track.note(600L * beat + 300, 600L * beat + 400, 1, 67);
    }
    Score score = Scores.read(MidiBytes.file().division(0xE728).track(track), folder);
    Music music = MusicFinder.follow(score, TempoRequest.DEFAULT);
    assertThat(music.source()).isEqualTo(Music.Source.PLAYED);
    assertThat(music.beats().get(8).seconds().minus(music.beats().get(7).seconds()).toDouble())
        .isBetween(0.599, 0.601);
  }

  @ParameterizedTest
  @CsvSource({"0", "1", "8"})
  void too_few_notes_to_hear_a_pulse_leave_bars_as_written(int notes) {
    Track track = new Track();
    for (int i = 0; i < notes; i++) {
      track.note(777L * i, 777L * i + 100, 9, 36);
    }
    Score score = Scores.read(MidiBytes.file().track(track), folder);
    Music music =
        MusicFinder.follow(score, request(Mode.PLAYED, Optional.empty(), Optional.empty()));
    assertThat(music.source()).isEqualTo(Music.Source.WRITTEN);
    assertThat(music.doubts()).hasSize(1);
  }

  @Test
  void many_notes_at_once_have_no_pulse() {
    Track track = new Track();
    for (int i = 0; i < 100; i++) {
      track.note(3L * i, 3L * i + 1, 0, 60);
    }
    Score score = Scores.read(MidiBytes.file().track(track), folder);
    Music music =
        MusicFinder.follow(score, request(Mode.PLAYED, Optional.empty(), Optional.empty()));
    assertThat(music.source()).isEqualTo(Music.Source.WRITTEN);
  }

  @Test
  void the_same_playing_is_found_the_same_twice() {
    Score score = new PlayedPiece(3, 32, 0.6, 0.08, 0.01, 9).record(folder);
    assertThat(MusicFinder.follow(score, auto()).bars())
        .isEqualTo(MusicFinder.follow(score, auto()).bars());
  }

  @Test
  void drums_alone_have_a_pulse() {
    Track track = new Track();
    for (int i = 0; i < 200; i++) {
      long tick = 500L * i + 3L * (i % 7);
      track.note(tick, tick + 50, 9, i % 2 == 0 ? 36 : 42);
    }
    Score score = Scores.read(MidiBytes.file().track(track), folder);
    Music music =
        MusicFinder.follow(score, request(Mode.PLAYED, Optional.empty(), Optional.empty()));
    assertThat(music.source()).isEqualTo(Music.Source.PLAYED);
  }

  @Test
  void two_hours_with_two_notes_are_read_as_written() {
    Track track = new Track().note(0, 100, 0, 60).note(7200 * 960, 7200 * 960 + 5, 0, 60);
    Score score = Scores.read(MidiBytes.file().track(track), folder);
    Music music =
        MusicFinder.follow(score, request(Mode.PLAYED, Optional.empty(), Optional.empty()));
    assertThat(music.bars().bars()).hasSize(3601);
  }
}
