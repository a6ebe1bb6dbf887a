package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.SplittableRandom;
import org.barsheet.pulse.TempoEvidence.Verdict;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TempoEvidenceTest {

  @TempDir Path folder;

  private TempoEvidence of(MidiBytes file) {
    return TempoEvidence.of(Scores.read(file, folder));
  }

  /** Notes at random ticks, as a recorder that ignores the tempo takes them down. */
  private static Track free(long from, long to, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Track track = new Track();
    for (long tick = from; tick < to; tick += 100 + random.nextInt(300)) {
      track.note(tick, tick + 50, 0, 60);
    }
    return track;
  }

  /** Eighth notes that miss the grid by up to so many ticks. */
  private static Track eighths(int bars, int miss) {
    SplittableRandom random = new SplittableRandom(3);
    Track track = new Track();
    for (long i = 1; i < 8L * bars; i++) {
      long tick = i * 240 + random.nextInt(-miss, miss + 1);
      track.note(tick, tick + 100, 0, 60);
    }
    return track;
  }

  @Test
  void notes_on_the_grid_make_the_tempo_true() {
    TempoEvidence evidence = of(MidiBytes.file().track(eighths(40, 0)));
    assertThat(evidence.verdict()).isEqualTo(Verdict.TRUE);
    assertThat(evidence.score()).isEqualTo(1);
    assertThat(evidence.sentence()).contains("fall on the written beats").contains("319 notes");
    assertThat(evidence.weakStretches()).isEmpty();
  }

  @Test
  void notes_anywhere_make_it_untrue() {
    TempoEvidence evidence = of(MidiBytes.file().track(free(0, 200_000, 5)));
    assertThat(evidence.verdict()).isEqualTo(Verdict.UNTRUE);
    assertThat(evidence.score()).isLessThan(0.1);
  }

  @Test
  void notes_near_the_grid_keep_to_it_in_part() {
    TempoEvidence evidence = of(MidiBytes.file().track(eighths(60, 25)));
    assertThat(evidence.verdict()).isEqualTo(Verdict.MIXED);
    assertThat(evidence.weakStretches()).isEmpty();
  }

  /** Runs of sixteenth notes, in which no beat stands out: theirs is the only pulse heard. */
  @ParameterizedTest
  @CsvSource({"2, 1", "4, 2", "2, 2", "3, 3", "6, 3", "12, 3", "9, 4"})
  void running_notes_belong_to_the_beat_that_they_divide(int numerator, int power) {
    Track track = new Track().meter(0, numerator, power);
    for (long i = 0; i < 600; i++) {
      track.note(i * 120, i * 120 + 100, 0, 60 + (int) (i % 7));
    }
    assertThat(of(MidiBytes.file().track(track)).verdict()).isEqualTo(Verdict.TRUE);
  }

  @Test
  void a_free_passage_amid_strict_bars_is_found() {
    Track strict = eighths(40, 0);
    MidiBytes file = MidiBytes.file().track(strict).track(free(40L * 1920, 64L * 1920, 9));
    TempoEvidence evidence = of(file);
    assertThat(evidence.verdict()).isEqualTo(Verdict.MIXED);
    assertThat(evidence.weakStretches())
        .containsExactly(new TempoEvidence.WeakStretch(40L * 1920, 64L * 1920));
    assertThat(evidence.parts()).hasSize(2);
    assertThat(evidence.parts().get(0).score()).isEqualTo(1);
    assertThat(evidence.parts().get(1).score()).isLessThan(0.2);
  }

  @Test
  void a_few_notes_and_a_division_of_real_time_tell_nothing() {
    assertThat(of(MidiBytes.file().track(Track.scale(480))).verdict()).isEqualTo(Verdict.NONE);
    assertThat(of(MidiBytes.file().track(new Track())).verdict()).isEqualTo(Verdict.NONE);
    assertThat(of(MidiBytes.file().division(0xE728).track(eighths(40, 0))).verdict())
        .isEqualTo(Verdict.NONE);
  }

  @Test
  void an_untrue_tempo_asked_for_is_followed_with_a_word() {
    Score score = Scores.read(MidiBytes.file().track(free(0, 200_000, 5)), folder);
    TempoRequest all = TempoRequest.DEFAULT;
    Music music =
        MusicFinder.follow(
            score,
            new TempoRequest(
                TempoRequest.Mode.WRITTEN,
                1,
                all.pickup(),
                all.playedOrder(),
                all.pins(),
                all.meter(),
                all.beatsPerMinute(),
                all.feltBeat()));
    assertThat(music.doubts()).extracting(Doubt::kind).contains(Doubt.Kind.UNTRUE_TEMPO);
  }
}
