package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.Beat;
import org.barsheet.pulse.FMeasure;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.pulse.TempoEvidence;
import org.barsheet.pulse.TempoEvidence.Verdict;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Division;
import org.barsheet.score.Meter;
import org.barsheet.score.Note;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.barsheet.score.TempoMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Scores of a registry package played to a steady click of their own, in a file left at 120. */
class OtherTempoTest {

  private static final int TICKS_PER_QUARTER = 480;
  private static final int DEFAULT_TEMPO = 120;
  private static final int TICKS_PER_SECOND = 2 * TICKS_PER_QUARTER;
  private static final double TOLERANCE = 0.07;

  /** Notes at a steady tempo, each missing its time by about so many seconds. */
  private static Score played(Score score, double beatsPerMinute, double missSeconds) {
    Random random = new Random(1);
    double stretch = DEFAULT_TEMPO / beatsPerMinute * TICKS_PER_QUARTER / score.ticksPerQuarter();
    List<Note> notes = new ArrayList<>();
    for (Note note : score.notes()) {
      double miss = missSeconds * TICKS_PER_SECOND * random.nextGaussian();
      long on = Math.max(0, Math.round(note.onTick() * stretch + miss));
      long off = Math.max(on + 1, Math.round(note.offTick() * stretch));
      notes.add(new Note(note.part(), note.pitch(), note.velocity(), on, off));
    }
    notes.sort(
        Comparator.comparingLong(Note::onTick)
            .thenComparingInt(Note::part)
            .thenComparingInt(Note::pitch));
    long end = notes.stream().mapToLong(Note::offTick).max().orElseThrow();
    return new Score(
        1,
        new Division.PerQuarter(TICKS_PER_QUARTER),
        TICKS_PER_QUARTER,
        score.parts(),
        notes,
        List.of(),
        List.of(),
        TempoMap.of(TICKS_PER_QUARTER, List.of(new TempoMap.Change(0, Seconds.of(1, 2)))),
        1,
        new BarGrid(bars(end)),
        end,
        List.of());
  }

  private static List<Bar> bars(long end) {
    List<Bar> bars = new ArrayList<>();
    for (long start = 0; start < end; start += 4L * TICKS_PER_QUARTER) {
      long next = start + 4L * TICKS_PER_QUARTER;
      bars.add(Bar.counted(bars.size(), Meter.COMMON, start, next, TICKS_PER_QUARTER));
    }
    return bars;
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
    assertThat(music.evidence().sentence()).contains("but to a steady pulse of ");
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
