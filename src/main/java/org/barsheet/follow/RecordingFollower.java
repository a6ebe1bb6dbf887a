package org.barsheet.follow;

import java.util.Arrays;
import java.util.List;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.recording.Chromagram;
import org.barsheet.recording.PitchRises;
import org.barsheet.recording.Sound;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/**
 * Follows a score through a recording of it.
 *
 * <pre>{@code
 * Followed followed = RecordingFollower.follow(ScoreReader.read(score), SoundReader.read(mix));
 * double inMix = followed.secondsAt(score.tempo().secondsAt(tick).toDouble());
 * }</pre>
 *
 * <p>To find one part in a performer's recording, follow {@code
 * score.withNotes(score.notesOf(part))}. First the two are warped onto each other by what sounds
 * and what begins in each pitch class ({@link CoarseToFine}), then every onset is found by the rise
 * of its own pitches ({@link OnsetRefiner}).
 */
public final class RecordingFollower {

  /**
   * The right score costs 0.23 to 0.42 of what it costs in wrong keys, measured on 16 renderings;
   * other pieces cost 0.75 or more.
   */
  private static final double ANOTHER_PIECE = 0.65;

  private RecordingFollower() {}

  /**
   * Finds the times of all notes.
   *
   * @throws InputException if the score has no notes with pitch, or the recording is of another
   *     piece; its problem names no file
   */
  public static Followed follow(Score score, Sound sound) {
    if (sound.seconds() < 1 || score.notes().stream().allMatch(note -> isDrum(score, note))) {
      throw nothing();
    }
    Chromagram heard = Chromagram.of(sound);
    int shift = shift(score, heard);
    Score sounding = shifted(score, shift);
    double[] path = new CoarseToFine(ScoreChroma.of(sounding, 0), heard).path();
    List<Difference> differences = Difference.along(path);
    List<ScoreOnset> onsets = ScoreOnset.of(sounding);
    double[] expected = new double[onsets.size()];
    Arrays.setAll(expected, i -> at(path, onsets.get(i).seconds()));
    int[] segments = segments(onsets, differences);
    OnsetLine line =
        new OnsetRefiner(sounding, onsets, PitchRises.of(sound), segments).refine(expected);
    return followed(onsets, line, shift, differences);
  }

  static Followed followed(
      List<ScoreOnset> onsets, OnsetLine line, int shift, List<Difference> differences) {
    double[] confidence = doubtful(line.clarity(), onsets, differences);
    double[] scoreSeconds = onsets.stream().mapToDouble(ScoreOnset::seconds).toArray();
    return new Followed(scoreSeconds, line.seconds(), confidence, shift, differences);
  }

  private static boolean isDrum(Score score, Note note) {
    return score.parts().get(note.part()).drums();
  }

  static InputException nothing() {
    return refused(
        "there is nothing to follow: no notes with pitch, or less than a second of sound");
  }

  private static InputException refused(String sentence) {
    return new InputException(
        Problem.ofFile("", sentence, "name the recording of this score, or leave it out"));
  }

  /** The key the recording is in, against the score's. */
  static int shift(Score score, Chromagram heard) {
    double[] costs = new double[Chromagram.CLASSES];
    Arrays.setAll(costs, k -> CoarseToFine.coarseCost(ScoreChroma.of(score, k), heard));
    int best = 0;
    for (int k = 1; k < costs.length; k++) {
      best = costs[k] < costs[best] ? k : best;
    }
    double[] sorted = costs.clone();
    Arrays.sort(sorted);
    if (costs[best] > ANOTHER_PIECE * sorted[sorted.length / 2]) {
      throw refused("this recording is of another piece, or too unlike the score to be followed");
    }
    return best > 6 ? best - 12 : best;
  }

  static Score shifted(Score score, int shift) {
    return shift == 0
        ? score
        : score.withNotes(
            score.notes().stream()
                .filter(note -> note.pitch() + shift >= 0 && note.pitch() + shift < 128)
                .map(note -> isDrum(score, note) ? note : shifted(note, shift))
                .toList());
  }

  private static Note shifted(Note note, int shift) {
    return new Note(
        note.part(), note.pitch() + shift, note.velocity(), note.onTick(), note.offTick());
  }

  static double at(double[] path, double scoreSecond) {
    double place = Math.min(path.length - 1.001, scoreSecond * Chromagram.RATE);
    int before = (int) place;
    double part = place - before;
    return (path[before] + part * (path[before + 1] - path[before])) / Chromagram.RATE;
  }

  /** Onsets between two differences are a run; those inside one belong to the run before it. */
  static int[] segments(List<ScoreOnset> onsets, List<Difference> differences) {
    int[] segments = new int[onsets.size()];
    Arrays.setAll(
        segments,
        i ->
            (int)
                differences.stream()
                    .filter(one -> one.toScore() <= onsets.get(i).seconds())
                    .count());
    return segments;
  }

  /** Nothing is sure where recording and score differ. */
  private static double[] doubtful(
      double[] confidence, List<ScoreOnset> onsets, List<Difference> differences) {
    double[] doubtful = confidence.clone();
    for (int i = 0; i < doubtful.length; i++) {
      double at = onsets.get(i).seconds();
      if (differences.stream().anyMatch(one -> one.fromScore() <= at && at < one.toScore())) {
        doubtful[i] = 0;
      }
    }
    return doubtful;
  }
}
