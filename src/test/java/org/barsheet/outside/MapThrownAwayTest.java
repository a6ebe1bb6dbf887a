package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.LongToDoubleFunction;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.pulse.Beat;
import org.barsheet.pulse.FMeasure;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.pulse.Readings;
import org.barsheet.pulse.TempoEvidence.Verdict;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.score.Meter;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Scores whose dense tempo maps are true, played out by them and recorded at a constant 120 that
 * means nothing: playing with known beats.
 */
class MapThrownAwayTest {

  private static final double TOLERANCE = 0.07;

  /**
   * Least F-measures (70 ms) of beats with no hint, and of beats and downbeats with the meter and
   * the tempo to the nearest five. Measured: 0.49 0.93 0.92, 0.80 0.97 0.96, 1.00 1.00 1.00, 0.78
   * 0.96 0.97.
   */
  @ParameterizedTest
  @CsvSource({
    "classical/clair-de-lune.mid, 0.44, 0.90, 0.89",
    "classical/fur-elise.mid, 0.74, 0.93, 0.93",
    "classical/mozart-k545-mvt1.mid, 0.98, 0.98, 0.98",
    "classical/bach-prelude-c-major-bwv846.mid, 0.73, 0.93, 0.93"
  })
  void beats_are_found_again(String name, double unasked, double hinted, double downbeats) {
    Score score = ScoreReader.read(RegistryScores.score(name));
    Music written = MusicFinder.follow(score, TempoRequest.DEFAULT);
    assertThat(written.source()).isEqualTo(Music.Source.WRITTEN);
    List<Double> beats = times(written.beats());

    Score recorded = recorded(score);
    Music found = MusicFinder.follow(recorded, TempoRequest.DEFAULT);
    assertThat(found.evidence().verdict()).isEqualTo(Verdict.UNTRUE);
    assertThat(found.source()).isEqualTo(Music.Source.PLAYED);
    assertThat(FMeasure.of(beats, times(found.beats()), TOLERANCE)).isGreaterThan(unasked);

    Music asked = MusicFinder.follow(recorded, hints(written));
    assertThat(FMeasure.of(beats, times(asked.beats()), TOLERANCE)).isGreaterThan(hinted);
    assertThat(FMeasure.of(downbeats(written), downbeats(asked), TOLERANCE))
        .isGreaterThan(downbeats);
  }

  /** The meter of the first full bar and the usual tempo to the nearest five. */
  private static TempoRequest hints(Music written) {
    TempoRequest any = TempoRequest.DEFAULT;
    Meter meter = written.bars().bars().get(Math.min(1, written.bars().bars().size() - 1)).meter();
    long bpm = 5 * Math.round(Readings.beatsPerMinute(written).doubleValue() / 5);
    return new TempoRequest(
        any.tempo(),
        any.firstBar(),
        any.pickup(),
        any.playedOrder(),
        any.pins(),
        Optional.of(meter),
        Optional.of(BigFraction.of(bpm)),
        any.feltBeat());
  }

  private static List<Double> downbeats(Music music) {
    return times(music.firstDownbeats(Integer.MAX_VALUE));
  }

  private static List<Double> times(List<Beat> beats) {
    return beats.stream().map(beat -> beat.seconds().toDouble()).toList();
  }

  private static Score recorded(Score score) {
    LongToDoubleFunction seconds = tick -> score.tempo().secondsAt(tick).toDouble();
    return Recorder.record(score, seconds, seconds);
  }
}
