package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.pulse.SavedPieces.Read;
import org.barsheet.pulse.SavedPieces.Saved;
import org.barsheet.pulse.TempoEvidence.Verdict;
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
}
