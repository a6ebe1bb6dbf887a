package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.pulse.Beat;
import org.barsheet.pulse.FMeasure;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.pulse.TempoEvidence;
import org.barsheet.pulse.TempoEvidence.Verdict;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Scores of a registry package played to a steady click of their own, in a file left at 120. */
class OtherTempoTest {

  private static final int DEFAULT_TEMPO = 120;
  private static final double TOLERANCE = 0.07;

  /** Notes at a steady tempo, each struck about so many seconds beside its time. */
  private static Score played(Score score, double beatsPerMinute, double missSeconds) {
    Random random = new Random(1);
    double perTick = 60 / beatsPerMinute / score.ticksPerQuarter();
    return Recorder.record(
        score,
        tick -> tick * perTick + missSeconds * random.nextGaussian(),
        tick -> tick * perTick);
  }

  /** Beats where the tempo is said (70 ms); measured 0.98 to 1.00. */
  @ParameterizedTest
  @CsvSource({
    "ragtime/the-entertainer.mid, 72, 0",
    "ragtime/the-entertainer.mid, 96, 0",
    "ragtime/the-entertainer.mid, 80, 0.004",
    "ragtime/the-easy-winners.mid, 100, 0",
    "ragtime/bethena.mid, 84, 0"
  })
  void a_click_of_its_own_is_heard_and_the_unset_tempo_left(
      String name, double beatsPerMinute, double missSeconds) {
    Score score = ScoreReader.read(RegistryScores.score(name));
    TempoRequest request = hints(score, Math.round(beatsPerMinute));
    Music music = MusicFinder.follow(played(score, beatsPerMinute, missSeconds), request);
    assertThat(music.evidence().verdict()).isEqualTo(Verdict.UNTRUE);
    assertThat(music.evidence().sentence()).contains("follow a steady pulse of ");
    assertThat(music.source()).isEqualTo(Music.Source.PLAYED);
    List<Double> found = music.beats().stream().map(beat -> beat.seconds().toDouble()).toList();
    assertThat(FMeasure.of(beats(score, beatsPerMinute), found, TOLERANCE)).isGreaterThan(0.95);
  }

  private static TempoRequest hints(Score score, long beatsPerMinute) {
    TempoRequest any = TempoRequest.DEFAULT;
    return new TempoRequest(
        any.tempo(),
        any.firstBar(),
        any.pickup(),
        any.playedOrder(),
        any.pins(),
        Optional.of(score.bars().bars().get(1).meter()),
        Optional.of(BigFraction.of(beatsPerMinute)),
        any.feltBeat());
  }

  private static List<Double> beats(Score score, double beatsPerMinute) {
    double perTick = 60 / beatsPerMinute / score.ticksPerQuarter();
    Music written = MusicFinder.follow(score, TempoRequest.DEFAULT);
    return written.beats().stream().map(Beat::tick).map(tick -> tick * perTick).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ragtime/maple-leaf-rag.mid",
        "ragtime/solace.mid",
        "ragtime/bethena.mid",
        "classical/clair-de-lune.mid",
        "classical/debussy-arabesque-no1.mid",
        "classical/fur-elise.mid",
        "classical/satie-gymnopedie-no1.mid"
      })
  void a_score_that_is_meant_at_120_is_followed_as_written(String name) {
    Score score = ScoreReader.read(RegistryScores.score(name));
    assertThat(TempoEvidence.of(played(score, DEFAULT_TEMPO, 0)).verdict()).isEqualTo(Verdict.TRUE);
    assertThat(TempoEvidence.of(played(score, DEFAULT_TEMPO, 0.008)).verdict())
        .isNotEqualTo(Verdict.UNTRUE);
  }
}
