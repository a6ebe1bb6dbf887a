package org.barsheet.cues;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Plan;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.pulse.TempoEvidence;
import org.barsheet.score.Note;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.api.Test;

/** How a plan's motifs are looked for, told of the demo's own plan. */
class MotifSearchTest {

  private static final Plan PLAN = PlanReader.read(Path.of("scores/lamplighters-quay.yaml"));

  @Test
  void a_score_played_some_milliseconds_off_its_beats_loses_no_certain_return() {
    Score written = ScoreReader.read(PLAN.music().score());
    Music loose = MusicFinder.follow(loosely(written), PLAN.music().tempo());
    assertThat(loose.evidence().verdict()).isEqualTo(TempoEvidence.Verdict.MIXED);

    List<String> certain = certain(MusicFinder.follow(written, PLAN.music().tempo()));
    assertThat(returns(loose)).containsAll(certain);
    assertThat(certain(loose)).hasSizeGreaterThan(20);
  }

  @Test
  void ornamented_and_shortened_returns_are_looked_for_when_asked() {
    MotifSearch search =
        MotifSearch.of(
            PLAN, MusicFinder.follow(ScoreReader.read(PLAN.music().score()), PLAN.music().tempo()));
    assertThat(search.withPossible().occurrences()).containsAll(search.occurrences());
  }

  /** Every note begins and ends some 15 ms too early or too late. */
  private static Score loosely(Score score) {
    SplittableRandom random = new SplittableRandom(12);
    double ticks = score.ticksPerQuarter() / score.tempo().perQuarterAt(0).toDouble();
    List<Note> notes = new ArrayList<>();
    for (Note note : score.notes()) {
      long on = Math.max(0, note.onTick() + off(random, ticks));
      long end = Math.max(on + 1, note.offTick() + off(random, ticks));
      notes.add(new Note(note.part(), note.pitch(), note.velocity(), on, end));
    }
    notes.sort(
        Comparator.comparingLong(Note::onTick)
            .thenComparingInt(Note::part)
            .thenComparingInt(Note::pitch));
    return score.withNotes(notes);
  }

  private static long off(SplittableRandom random, double ticksPerSecond) {
    return Math.round(Math.max(-2, Math.min(2, random.nextGaussian())) * 0.015 * ticksPerSecond);
  }

  private static List<String> certain(Music music) {
    return MotifSearch.of(PLAN, music).occurrences().stream()
        .filter(found -> found.certainty() == Certainty.CERTAIN)
        .map(found -> inBar(music, found))
        .toList();
  }

  private static List<String> returns(Music music) {
    return MotifSearch.of(PLAN, music).occurrences().stream()
        .map(found -> inBar(music, found))
        .toList();
  }

  /** Motif and bar, the start taken to the nearest beat. */
  private static String inBar(Music music, Occurrence found) {
    long half = music.score().ticksPerQuarter() / 4;
    return found.motif() + " in bar " + music.bars().barAt(found.startTick() + half).number();
  }
}
