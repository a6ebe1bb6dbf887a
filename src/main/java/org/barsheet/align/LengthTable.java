package org.barsheet.align;

import java.util.HashMap;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.MusicRuler;
import org.barsheet.plan.Length.Unit;

/** Where an amount of music from a moment on ends in the film, each worked out once. */
final class LengthTable {

  private record Amount(Unit unit, BigFraction number) {}

  private final MusicRuler ruler;
  private final long filmFrames;
  private final Map<Amount, Map<Seconds, Long>> known = new HashMap<>();
  private final Map<Amount, long[]> knownFromFrames = new HashMap<>();

  LengthTable(MusicRuler ruler, long filmFrames) {
    this.ruler = ruler;
    this.filmFrames = filmFrames;
  }

  /** The film frame reached after an amount from a moment on. */
  long frameAfter(Seconds from, Unit unit, BigFraction amount) {
    return known
        .computeIfAbsent(new Amount(unit, amount), a -> new HashMap<>())
        .computeIfAbsent(from, f -> ruler.frameAfter(f, unit, amount));
  }

  /** The film frame reached after an amount from each frame of the film on. */
  long[] framesAfter(Unit unit, BigFraction amount) {
    return knownFromFrames.computeIfAbsent(new Amount(unit, amount), this::fromEveryFrame);
  }

  private long[] fromEveryFrame(Amount amount) {
    long[] ends = new long[Math.toIntExact(filmFrames)];
    for (int frame = 0; frame < ends.length; frame++) {
      ends[frame] = ruler.frameAfter(ruler.momentOf(frame), amount.unit, amount.number);
    }
    return ends;
  }
}
