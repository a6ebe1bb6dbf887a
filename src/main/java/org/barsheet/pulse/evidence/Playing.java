package org.barsheet.pulse.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/**
 * The notes of a score as sounds in time: onsets that belong together gathered into strokes.
 * Statistics of playing, so in {@code double}; exact places stay ticks.
 *
 * @param strokes in order of time, at least one
 */
public record Playing(List<Stroke> strokes) {

  /** Onsets closer than this are one stroke. */
  private static final double TOGETHER_SECONDS = 0.03;

  /** A stroke without a pitch, of drums alone. */
  static final int NO_PITCH = 128;

  /** A longer note weighs no more than this in the harmony. */
  private static final double LONGEST_COUNTED = 1.5;

  private static final double SHORTEST_COUNTED = 0.01;

  /** A part that was silent for longer than this begins again. */
  private static final double REST_SECONDS = 0.4;

  /**
   * Notes struck together.
   *
   * @param seconds mean onset
   * @param tick onset of its middle note
   * @param notes how many
   * @param longestSeconds length of its longest note
   * @param velocity of its loudest note
   * @param lowest lowest pitch, or {@link #NO_PITCH}
   * @param entries how many parts begin again after a rest
   * @param pedal how clearly the pedal is renewed for it, from 0 to 1
   * @param chroma weight of each of the 12 pitch classes
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared, never changed
  public record Stroke(
      double seconds,
      long tick,
      int notes,
      double longestSeconds,
      int velocity,
      int lowest,
      int entries,
      double pedal,
      double[] chroma) {}

  public Playing {
    strokes = List.copyOf(strokes);
  }

  /** The playing of a score with notes, timed by its own tempo map. */
  public static Playing of(Score score) {
    PedalRenewal pedal = PedalRenewal.of(score);
    Clock clock = new Clock(score.tempo());
    double[] silentFrom = new double[score.parts().size()];
    Arrays.fill(silentFrom, Double.NEGATIVE_INFINITY);
    List<Stroke> strokes = new ArrayList<>();
    List<Note> together = new ArrayList<>();
    double first = 0;
    for (Note note : score.notes()) {
      double onset = clock.seconds(note.onTick());
      if (!together.isEmpty() && onset - first > TOGETHER_SECONDS) {
        strokes.add(stroke(score, clock, pedal, silentFrom, together));
        together.clear();
      }
      if (together.isEmpty()) {
        first = onset;
      }
      together.add(note);
    }
    strokes.add(stroke(score, clock, pedal, silentFrom, together));
    return new Playing(strokes);
  }

  /** Times of ticks; the last ones are remembered, as many notes begin and end together. */
  private static final class Clock {
    private static final int REMEMBERED = 1024;
    private final TempoMap tempo;
    private final long[] ticks = new long[REMEMBERED];
    private final double[] times = new double[REMEMBERED];

    Clock(TempoMap tempo) {
      this.tempo = tempo;
      Arrays.fill(ticks, -1);
    }

    double seconds(long tick) {
      int place = (int) (tick % REMEMBERED);
      if (ticks[place] != tick) {
        ticks[place] = tick;
        times[place] = tempo.secondsAt(tick).toDouble();
      }
      return times[place];
    }
  }

  private static Stroke stroke(
      Score score, Clock clock, PedalRenewal pedal, double[] silentFrom, List<Note> together) {
    double sum = 0;
    double longest = 0;
    int velocity = 0;
    int entries = 0;
    int lowest = NO_PITCH;
    double[] chroma = new double[12];
    for (Note note : together) {
      double onset = clock.seconds(note.onTick());
      double length = clock.seconds(note.offTick()) - onset;
      sum += onset;
      longest = Math.max(longest, length);
      velocity = Math.max(velocity, note.velocity());
      if (onset - silentFrom[note.part()] > REST_SECONDS) {
        entries++;
      }
      silentFrom[note.part()] = Math.max(silentFrom[note.part()], onset + length);
      Part part = score.parts().get(note.part());
      if (!part.drums()) {
        lowest = Math.min(lowest, note.pitch());
        double counted = Math.max(SHORTEST_COUNTED, Math.min(length, LONGEST_COUNTED));
        chroma[note.pitch() % 12] += Math.sqrt(counted);
      }
    }
    long tick = together.get((together.size() - 1) / 2).onTick();
    int count = together.size();
    double renewed = pedal.at(sum / count);
    return new Stroke(
        sum / count, tick, count, longest, velocity, lowest, entries, renewed, chroma);
  }

  public double endSeconds() {
    return strokes.get(strokes.size() - 1).seconds();
  }

  /** The stroke nearest to a time. */
  public Stroke nearest(double seconds) {
    int low = 0;
    int high = strokes.size() - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (strokes.get(middle).seconds() < seconds) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    Stroke after = strokes.get(low);
    Stroke before = strokes.get(Math.max(0, low - 1));
    return seconds - before.seconds() < after.seconds() - seconds ? before : after;
  }
}
