package org.barsheet.timing;

import java.util.HashMap;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Length.Unit;

/** Frames that an amount of music takes from a moment on, each worked out once. */
final class LengthTable {

  private record Question(Seconds from, Unit unit, BigFraction amount) {}

  /** Natural logarithms are kept for films up to this long: a day at 24 frames a second. */
  private static final int MOST_KEPT = 2_100_000;

  private final MusicRuler ruler;
  private final Map<Question, Long> known = new HashMap<>();
  private final double[] logarithms;

  LengthTable(MusicRuler ruler, long filmFrames) {
    this.ruler = ruler;
    this.logarithms = new double[(int) Math.min(filmFrames + 1, MOST_KEPT)];
    for (int frames = 1; frames < logarithms.length; frames++) {
      logarithms[frames] = StrictMath.log((double) frames);
    }
  }

  /** The film frame reached after an amount from a moment on. */
  long frameAfter(Seconds from, Unit unit, BigFraction amount) {
    return known.computeIfAbsent(
        new Question(from, unit, amount), q -> ruler.frameAfter(q.from, q.unit, q.amount));
  }

  /** Natural logarithm of a number of frames, 1 or more. */
  double logarithm(long frames) {
    return frames < logarithms.length ? logarithms[(int) frames] : StrictMath.log((double) frames);
  }
}
