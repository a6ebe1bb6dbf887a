package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.SavedPieces.Read;
import org.barsheet.pulse.SavedPieces.Saved;
import org.barsheet.pulse.TempoEvidence.Verdict;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenCheckTest {

  @TempDir private Path folder;

  private static ComposedPiece piece(String meter, long seed) {
    return new ComposedPiece(seed, 0, List.of(SavedPieces.meter(meter)), 48);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2/4", "3/4", "4/4", "6/8", "9/8", "12/8", "5/4", "7/8"})
  void what_was_written_on_purpose_is_followed_without_a_doubt(String meter) {
    Read read = new SavedPieces(folder).read(piece(meter, 1), Saved.RIGHTLY, 120);
    assertThat(read.music().source()).isEqualTo(Music.Source.WRITTEN);
    assertThat(read.isRight()).isTrue();
    assertThat(read.music().doubts()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"3/4", "4/4", "9/8", "12/8", "5/4", "7/8"})
  void notes_that_all_lie_beside_the_beats_move_the_bars(String meter) {
    Read read = new SavedPieces(folder).read(piece(meter, 2), Saved.LATE, 92);
    assertThat(read.isRight()).isTrue();
    assertThat(read.music().sentence()).startsWith("tempo and bars as written, but later");
    assertThat(read.music().evidence().sentence()).contains("beside the written beats");
  }

  @Test
  void a_click_of_its_own_is_heard_where_the_file_sets_no_tempo() {
    Read read = new SavedPieces(folder).read(piece("4/4", 4), Saved.AT_ANOTHER_TEMPO, 97.3);
    assertThat(read.isRight()).isTrue();
    assertThat(read.music().source()).isEqualTo(Music.Source.PLAYED);
    assertThat(read.music().evidence().verdict()).isEqualTo(Verdict.UNTRUE);
    assertThat(read.music().sentence()).contains("97.3 bpm, bar 1 at 0.00 s");
  }

  /** Bars of 7/8 have the seven beats that a written 7/8 has. */
  @ParameterizedTest
  @CsvSource({"3/4, 7", "3/4, 8", "9/8, 2", "5/4, 2", "5/4, 4", "7/8, 4", "7/8, 5"})
  void bars_are_found_on_the_written_beats_where_no_time_signature_is(String meter, long seed) {
    Read read = new SavedPieces(folder).read(piece(meter, seed), Saved.WITHOUT_METER, 100);
    assertThat(read.music().sentence()).startsWith("tempo as written, bars found in the notes");
    assertThat(read.music().bars().bars().get(8).meter()).hasToString(meter);
    assertThat(read.isRight()).isTrue();
  }

  /** Played to a click of its own, the file left at 120; 90 shares its thirds with 120. */
  @ParameterizedTest
  @CsvSource({"72, 0", "96, 0.003", "100, 0", "132, 0", "144, 0.003", "160, 0.003"})
  void a_steady_pulse_that_contradicts_an_unset_tempo_makes_it_untrue(int bpm, double miss) {
    PlayedPiece piece = new PlayedPiece(4, 32, 60.0 / bpm, 0, miss, 1);
    TempoEvidence evidence = follow(piece.record(folder)).evidence();
    assertThat(evidence.verdict()).isEqualTo(Verdict.UNTRUE);
    assertThat(evidence.sentence()).contains("follow a steady pulse of ");
  }

  @ParameterizedTest
  @CsvSource({"3, 0", "4, 0.003", "4, 0.01", "5, 0"})
  void a_steady_pulse_at_the_tempo_of_the_file_does_not(int beatsInBar, double miss) {
    PlayedPiece piece = new PlayedPiece(beatsInBar, 32, 0.5, 0, miss, 1);
    assertThat(follow(piece.record(folder)).evidence().verdict()).isNotEqualTo(Verdict.UNTRUE);
  }

  /** A tempo that was set is not doubted because another fits as well. */
  @Test
  void a_tempo_that_was_set_is_believed() {
    Track tempo = new Track().tempo(0, 600_000);
    Track notes = new Track();
    for (long i = 1; i < 200; i++) {
      notes.note(i * 320, i * 320 + 100, 0, 60);
    }
    Music unset = follow(Scores.read(MidiBytes.file().track(notes), folder));
    Music set = follow(Scores.read(MidiBytes.file().track(tempo).track(notes), folder));
    assertThat(unset.evidence().verdict()).isEqualTo(Verdict.UNTRUE);
    assertThat(set.evidence().verdict()).isEqualTo(Verdict.TRUE);
  }

  private static Music follow(Score score) {
    return MusicFinder.follow(score, TempoRequest.DEFAULT);
  }

  /** Silence first, and every note about 12 ms beside the click: beats lie on the click. */
  @Test
  void playing_to_a_click_has_the_beats_of_the_click() {
    Read read = new SavedPieces(folder).read(piece("4/4", 2), Saved.PLAYED_TO_A_CLICK, 87);
    assertThat(read.isRight()).isTrue();
    List<Beat> beats = read.music().beats();
    for (int i = 1; i < beats.size(); i++) {
      double length = beats.get(i).seconds().minus(beats.get(i - 1).seconds()).toDouble();
      assertThat(length).isBetween(60 / 87.0 - 0.006, 60 / 87.0 + 0.006);
    }
  }

  @ParameterizedTest
  @CsvSource({"60", "120"})
  void the_beat_that_is_said_settles_the_question(int beatsPerMinute) {
    ComposedPiece piece = piece("4/4", 3);
    Score score = piece.save(folder, new Track(), at -> 2 * at * ComposedPiece.TICKS, 0);
    TempoRequest said = TempoRequest.DEFAULT.withBeatsPerMinute(BigFraction.of(beatsPerMinute));
    Music music = MusicFinder.follow(score, said);
    assertThat(Readings.beatsPerMinute(music).doubleValue()).isEqualTo(beatsPerMinute);
    assertThat(music.doubts()).extracting(Doubt::kind).doesNotContain(Doubt.Kind.BEAT_LEVEL);
    assertThat(Optional.of(music.bars().first().number())).contains(1);
  }

  /** The file is left at 120, where its bars would be others and fewer. */
  @ParameterizedTest
  @CsvSource({"90, 4/4", "97.3, 3/4", "72, 6/8", "84, 5/4"})
  void right_pins_number_bars_and_leave_right_ones_alone(double beatsPerMinute, String meter) {
    ComposedPiece piece = piece(meter, 2);
    double perQuarter = 2 * ComposedPiece.TICKS * 60 / beatsPerMinute;
    Score score = piece.save(folder, new Track(), at -> at * perQuarter, 0);
    List<TempoRequest.Pin> pins = new ArrayList<>();
    for (int bar = 0; bar < 48; bar += 8) {
      long microseconds = Math.round(piece.bars().get(bar) * 60 / beatsPerMinute * 1e6);
      pins.add(new TempoRequest.Pin(bar + 101, Seconds.of(microseconds, 1_000_000)));
    }
    Music music = MusicFinder.follow(score, TempoRequest.DEFAULT.withPins(pins));
    List<Double> found =
        music.firstDownbeats(48).stream().map(beat -> beat.seconds().toDouble()).toList();
    List<Double> meant = piece.bars().stream().map(at -> at * 60 / beatsPerMinute).toList();
    assertThat(FMeasure.of(meant, found, 0.005)).isEqualTo(1);
    assertThat(music.bars().first().number()).isEqualTo(101);
  }

  @Test
  void the_nearest_of_several_questions_is_asked_with_the_line_that_settles_it() {
    ComposedPiece piece = piece("4/4", 2);
    Question beat = Question.beat(0.4, 60 / 90.0, 60 / 180.0);
    Question bar = Question.bar(0.7, 17, 0, 0.28);
    Question sure = Question.beat(1.2, 60 / 90.0, 60 / 45.0);
    Score score = piece.save(folder, new Track(), at -> at * ComposedPiece.TICKS, 0);
    assertThat(Question.nearest(List.of(sure, bar, beat), score.bars()).orElseThrow().sentence())
        .isEqualTo(
            "is the beat you hear 90 or 180 bpm? 90 is followed; for 180 write bpm: 180 under"
                + " music");
    assertThat(Question.nearest(List.of(sure, bar), score.bars()).orElseThrow().sentence())
        .isEqualTo(
            "does bar 17 begin at 0.00 s or 0.28 s? 0.00 s is followed; for the other write pins:"
                + " [{bar: 17, at: 0.28 s}] under music");
    assertThat(Question.nearest(List.of(sure), score.bars())).isEmpty();
  }
}
