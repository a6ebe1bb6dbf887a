package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.score.Note;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantisedTest {

  private static final int HALF_BEAT = 240;

  @TempDir private Path folder;

  /** The invented piece moves in half beats only. */
  @ParameterizedTest
  @CsvSource({"3, 0.03, 0.005", "4, 0.08, 0.01"})
  void notes_played_freely_lie_on_the_divisions_they_were_meant_on(
      int beatsInBar, double spread, double miss) {
    Score played = new PlayedPiece(beatsInBar, 24, 0.55, spread, miss, 5).record(folder);
    Music music = MusicFinder.follow(played, TempoRequest.DEFAULT);
    List<Note> notes = Quantised.of(music).score().notes();
    assertThat(notes).hasSameSizeAs(played.notes());
    long onHalfBeats = notes.stream().filter(note -> note.onTick() % HALF_BEAT == 0).count();
    assertThat(onHalfBeats).isGreaterThan(notes.size() * 95L / 100);
  }

  @Test
  void a_place_in_it_is_found_again_in_the_playing() {
    Score played = new PlayedPiece(4, 16, 0.5, 0.03, 0.005, 2).record(folder);
    Music music = MusicFinder.follow(played, TempoRequest.DEFAULT);
    Quantised quantised = Quantised.of(music);
    Note last = quantised.score().notes().get(quantised.score().notes().size() - 1);
    double seconds = played.tempo().secondsAt(quantised.playedTick(last.onTick())).toDouble();
    List<Note> notes = played.notes();
    double meant = played.tempo().secondsAt(notes.get(notes.size() - 1).onTick()).toDouble();
    assertThat(Math.abs(seconds - meant)).isLessThan(0.1);
  }

  @Test
  void written_quarter_notes_stay_as_they_are() {
    Score score = Scores.read(Scores.quarters(4), folder);
    Music music = MusicFinder.follow(score, TempoRequest.DEFAULT);
    assertThat(Quantised.of(music).score().notes())
        .extracting(Note::onTick)
        .containsExactlyElementsOf(
            score.notes().stream()
                .map(note -> note.onTick() * 480 / score.ticksPerQuarter())
                .toList());
  }
}
