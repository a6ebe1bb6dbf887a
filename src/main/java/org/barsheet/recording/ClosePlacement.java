package org.barsheet.recording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A placement measured again piece by piece, so that it is known how far off it may be: a line
 * through where the pieces lie, people playing loosely and clocks drifting little.
 *
 * @param start where the first sample lies in the other, in seconds
 * @param drift in millionths, as in {@link Placement}
 * @param error the standard error of the start, in seconds; infinite where too few pieces agree
 * @param confidence that of the placement as a whole
 */
public record ClosePlacement(double start, double drift, double error, double confidence) {

  private static final double PIECE_SECONDS = 6;
  private static final double STEP_SECONDS = 3;

  /** Room on each side of a piece. */
  private static final double ROOM_SECONDS = 0.3;

  /** A piece this far from where it should lie was found elsewhere. */
  private static final double ELSEWHERE_SECONDS = 0.045;

  /** Standard deviation of the drift of clocks (common practice, no source: cheap crystals). */
  private static final double USUAL_DRIFT = 50e-6;

  private static final int FEWEST_PIECES = 5;
  private static final double OUTLIER = 3;

  /** Pieces overlap by half, so two of them say little more than one. */
  private static final double OVERLAP = PIECE_SECONDS / STEP_SECONDS;

  /** Slow attacks and rooms put starts off by as much as loose playing does (measured). */
  private static final double ATTACKS = 2;

  private static final double LEAST_SPREAD = 0.0005;

  /** Where one piece lies: the other's seconds less its own. */
  private record Piece(double middle, double offset) {}

  /** Measures a placement again. */
  public static ClosePlacement of(Sound clip, Sound other, Placement place) {
    List<Piece> pieces = new ArrayList<>();
    for (double from = 0; from + PIECE_SECONDS <= clip.seconds(); from += STEP_SECONDS) {
      piece(clip, other, place, from, pieces);
    }
    return line(pieces, place);
  }

  private static void piece(
      Sound clip, Sound other, Placement place, double from, List<Piece> pieces) {
    double at = place.at(from) - ROOM_SECONDS;
    Sound piece = slice(clip, from, PIECE_SECONDS);
    Sound around = slice(other, at, PIECE_SECONDS + 2 * ROOM_SECONDS);
    Placement found = Placement.of(piece, around);
    double middle = from + PIECE_SECONDS / 2;
    double lies = at + found.at(PIECE_SECONDS / 2) - middle;
    double expected = place.at(middle) - middle;
    if (found.confidence() > 0 && Math.abs(lies - expected) < ELSEWHERE_SECONDS) {
      pieces.add(new Piece(middle, lies));
    }
  }

  private static Sound slice(Sound sound, double from, double seconds) {
    int first = (int) Math.round(from * sound.rate());
    float[] samples = new float[(int) Math.round(seconds * sound.rate())];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = sound.at(first + i);
    }
    return new Sound(samples, sound.rate());
  }

  private static ClosePlacement line(List<Piece> all, Placement place) {
    List<Piece> pieces = all;
    double start = place.start();
    double drift = place.drift() / 1e6;
    double error = Double.POSITIVE_INFINITY;
    for (int turn = 0; turn < 4 && pieces.size() >= FEWEST_PIECES; turn++) {
      double spread = spread(pieces, start, drift);
      double weight = 1 / (spread * spread * OVERLAP);
      double n = 0;
      double x = 0;
      double xx = 1 / (USUAL_DRIFT * USUAL_DRIFT * weight);
      double y = 0;
      double xy = 0;
      for (Piece piece : pieces) {
        n++;
        x += piece.middle();
        xx += piece.middle() * piece.middle();
        y += piece.offset();
        xy += piece.middle() * piece.offset();
      }
      double determinant = n * xx - x * x;
      start = (y * xx - x * xy) / determinant;
      drift = (n * xy - x * y) / determinant;
      error = Math.sqrt(xx / determinant / weight);
      pieces = near(all, start, drift, OUTLIER * spread);
    }
    boolean enough = pieces.size() >= FEWEST_PIECES && pieces.size() >= all.size() / 2;
    return new ClosePlacement(
        start,
        drift * 1e6,
        enough ? ATTACKS * error : Double.POSITIVE_INFINITY,
        place.confidence());
  }

  private static List<Piece> near(List<Piece> all, double start, double drift, double most) {
    return all.stream().filter(piece -> Math.abs(off(piece, start, drift)) <= most).toList();
  }

  private static double off(Piece piece, double start, double drift) {
    return piece.offset() - start - drift * piece.middle();
  }

  /** From the median of distances, as if they were normal. */
  private static double spread(List<Piece> pieces, double start, double drift) {
    double[] off = pieces.stream().mapToDouble(p -> Math.abs(off(p, start, drift))).toArray();
    Arrays.sort(off);
    return Math.max(LEAST_SPREAD, 1.4826 * off[off.length / 2]);
  }
}
