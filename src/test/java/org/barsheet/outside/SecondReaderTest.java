package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Bar;
import org.barsheet.score.Note;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Scores nobody here wrote, read by the main code and by a second reader that shares none of it.
 */
class SecondReaderTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "classical/clair-de-lune.mid",
        "classical/fur-elise.mid",
        "classical/bach-prelude-c-major-bwv846.mid",
        "ragtime/the-entertainer.mid",
        "ragtime/solace.mid",
        "classical/mozart-k545-mvt1.mid"
      })
  void notes_tempo_and_every_frame_agree(String name) throws IOException {
    Path file = RegistryScores.score(name);
    Score score = ScoreReader.read(file);
    SecondReader second = new SecondReader(file);

    assertThat(score.readingNotes()).isEmpty();
    assertThat(score.notes()).hasSameSizeAs(second.onsets);
    assertThat(score.tempoEvents()).isEqualTo(second.tempoEvents);
    int finer = score.ticksPerQuarter() / second.division;
    assertThat(score.notes().stream().map(note -> note.onTick() / finer).toList())
        .isEqualTo(second.onsets);
    for (FrameRate rate : FrameRate.ALL) {
      assertThat(frames(score, rate)).isEqualTo(frames(second, rate));
    }
    assertThat(exactTime(second, score.endTick() / finer))
        .isEqualTo(score.tempo().secondsAt(score.endTick()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "classical/clair-de-lune.mid",
        "classical/satie-gymnopedie-no1.mid",
        "ragtime/maple-leaf-rag.mid"
      })
  void bar_lines_agree(String name) throws IOException {
    Path file = RegistryScores.score(name);
    Score score = ScoreReader.read(file);
    SecondReader second = new SecondReader(file);
    int finer = score.ticksPerQuarter() / second.division;

    List<Long> expected = second.barStarts();
    assertThat(score.bars().bars().stream().map(Bar::startTick).map(tick -> tick / finer).toList())
        .startsWith(expected.toArray(Long[]::new));
  }

  private static List<Long> frames(Score score, FrameRate rate) {
    return score.notes().stream()
        .map(Note::onTick)
        .map(tick -> rate.nearestFrame(score.tempo().secondsAt(tick)))
        .toList();
  }

  private static List<Long> frames(SecondReader second, FrameRate rate) {
    return second.onsets.stream()
        .map(tick -> second.frame(tick, rate.numerator(), rate.denominator()))
        .toList();
  }

  private static Seconds exactTime(SecondReader second, long tick) {
    return new Seconds(
        BigFraction.of(
            second.scaledMicroseconds(tick),
            BigInteger.valueOf(second.division).multiply(BigInteger.valueOf(1_000_000))));
  }
}
