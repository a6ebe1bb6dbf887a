package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.pulse.Reading.Kind;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingsTest {

  @TempDir private Path folder;

  @Test
  void playing_may_be_heard_at_other_levels_from_other_beats_or_as_written() {
    PlayedPiece piece = new PlayedPiece(3, 24, 0.6, 0.03, 0.01, 4);
    List<Reading> readings = Readings.of(piece.record(folder), TempoRequest.DEFAULT);
    assertThat(readings)
        .extracting(Reading::kind)
        .startsWith(Kind.FOLLOWED, Kind.HALF_AS_FAST)
        .contains(Kind.LATER)
        .endsWith(Kind.AS_WRITTEN);
    assertThat(readings).extracting(reading -> reading.music().beats()).doesNotHaveDuplicates();
    double followed = Readings.beatsPerMinute(readings.get(0).music()).doubleValue();
    assertThat(followed).isCloseTo(100, within(6.0));
  }

  @Test
  void a_reading_is_what_its_request_gives() {
    Score score = new PlayedPiece(4, 16, 0.5, 0.03, 0.01, 7).record(folder);
    for (Reading reading : Readings.of(score, TempoRequest.DEFAULT)) {
      assertThat(MusicFinder.follow(score, reading.request()).beats())
          .isEqualTo(reading.music().beats());
    }
  }

  @Test
  void notes_on_the_written_beats_have_no_alternative() {
    Score score = Scores.read(Scores.quarters(16), folder);
    assertThat(Readings.of(score, TempoRequest.DEFAULT))
        .extracting(Reading::kind)
        .containsExactly(Kind.FOLLOWED);
  }
}
