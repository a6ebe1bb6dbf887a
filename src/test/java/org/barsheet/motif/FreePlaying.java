package org.barsheet.motif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Division;
import org.barsheet.score.Note;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/**
 * Plays a score as a pianist would into a recorder: all parts on one channel, a tempo that wanders
 * and swells by phrases, hands not quite together, touch of its own for every note; the file's own
 * tempo means nothing.
 */
final class FreePlaying {

  private static final int TICKS_PER_SECOND = 1920;
  private static final int STEPS_PER_QUARTER = 4;

  private final Score score;
  private final SplittableRandom random;
  private final double[] times;

  /**
   * Plays it.
   *
   * @param sway how far the tempo strays, as a share of itself
   */
  FreePlaying(Score score, double sway, long seed) {
    this.score = score;
    this.random = new SplittableRandom(seed);
    long end = score.notes().stream().mapToLong(Note::offTick).max().orElse(0);
    this.times = new double[(int) (end * STEPS_PER_QUARTER / score.ticksPerQuarter()) + 8];
    double quarter = 0.45 + 0.5 * random.nextDouble();
    double strayed = 0;
    for (int i = 1; i < times.length; i++) {
      strayed = 0.93 * strayed + 0.36 * sway * random.nextGaussian();
      double phrase = 0.6 * sway * Math.sin(3.0 * i / (8 * STEPS_PER_QUARTER));
      times[i] = times[i - 1] + quarter / STEPS_PER_QUARTER * Math.exp(strayed + phrase);
    }
  }

  /**
   * When a quarter note of the score sounds in the playing, in seconds, without the hands' error.
   */
  double secondsAt(double quarter) {
    double step = Math.max(0, quarter * STEPS_PER_QUARTER);
    int before = (int) step;
    return 1 + times[before] + (step - before) * (times[before + 1] - times[before]);
  }

  Score played() {
    List<Note> notes = new ArrayList<>();
    for (Note note : score.notes()) {
      double on = secondsAt(note.onTick() / (double) score.ticksPerQuarter());
      double off = secondsAt(note.offTick() / (double) score.ticksPerQuarter());
      long tick = Math.round((on + 0.01 * random.nextGaussian()) * TICKS_PER_SECOND);
      double length = Math.max(0.05, (off - on) * (0.6 + 0.5 * random.nextDouble()));
      long end = tick + Math.round(length * TICKS_PER_SECOND);
      notes.add(new Note(0, note.pitch(), 80, Math.max(0, tick), end));
    }
    notes.sort(Comparator.comparingLong(Note::onTick).thenComparingInt(Note::pitch));
    int perQuarter = TICKS_PER_SECOND / 2;
    return new Score(
        0,
        new Division.PerQuarter(perQuarter),
        perQuarter,
        score.parts().subList(0, 1),
        notes,
        List.of(),
        List.of(),
        TempoMap.of(perQuarter, List.of(new TempoMap.Change(0, Seconds.of(1, 2)))),
        1,
        0,
        score.bars(),
        0,
        List.of());
  }

  static double seconds(long tick) {
    return tick / (double) TICKS_PER_SECOND;
  }
}
