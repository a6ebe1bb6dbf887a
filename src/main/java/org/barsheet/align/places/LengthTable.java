package org.barsheet.align.places;

import java.util.HashMap;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.MusicRuler;
import org.barsheet.plan.Length.Unit;

/** Where an amount of music from a moment on ends in the film, each worked out once. */
public final class LengthTable {

  private record Amount(Unit unit, BigFraction number) {}

  /** Frames from one moment looked at to the next. */
  private static final int STEP = 4;

  /**
   * Frames an amount of music has.
   *
   * @param least the fewest
   * @param most the most
   */
  public record Range(long least, long most) {}

  private final MusicRuler ruler;
  private final long filmFrames;
  private final Map<Amount, Map<Seconds, Long>> known = new HashMap<>();
  private final Map<Amount, long[]> knownFromFrames = new HashMap<>();

  private final Map<Amount, Range> knownRanges = new HashMap<>();

  public LengthTable(MusicRuler ruler, long filmFrames) {
    this.ruler = ruler;
    this.filmFrames = filmFrames;
  }

  /** The film frame reached after an amount from a moment on. */
  public long frameAfter(Seconds from, Unit unit, BigFraction amount) {
    return known
        .computeIfAbsent(new Amount(unit, amount), a -> new HashMap<>())
        .computeIfAbsent(from, f -> ruler.frameAfter(f, unit, amount));
  }

  /** The film frame reached after an amount from each frame of the film on. */
  public long[] framesAfter(Unit unit, BigFraction amount) {
    return knownFromFrames.computeIfAbsent(new Amount(unit, amount), this::fromEveryFrame);
  }

  /** The fewest and the most frames that an amount has, wherever in the film it begins. */
  public Range range(Unit unit, BigFraction amount) {
    return knownRanges.computeIfAbsent(new Amount(unit, amount), this::rangeOf);
  }

  /**
   * What begins between two frames looked at ends between where those two end: so no length is
   * passed over.
   */
  private Range rangeOf(Amount amount) {
    long least = Long.MAX_VALUE;
    long most = Long.MIN_VALUE;
    long before = ruler.frameAfter(ruler.momentOf(0), amount.unit, amount.number);
    for (long frame = STEP; frame < filmFrames + STEP; frame += STEP) {
      long end = ruler.frameAfter(ruler.momentOf(frame), amount.unit, amount.number);
      least = Math.min(least, before - frame);
      most = Math.max(most, end - (frame - STEP));
      before = end;
    }
    return new Range(Math.max(0, least - 1), most + 1);
  }

  private long[] fromEveryFrame(Amount amount) {
    long[] ends = new long[Math.toIntExact(filmFrames)];
    for (int frame = 0; frame < ends.length; frame++) {
      ends[frame] = ruler.frameAfter(ruler.momentOf(frame), amount.unit, amount.number);
    }
    return ends;
  }
}
