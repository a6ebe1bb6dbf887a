package org.barsheet.score;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;

/**
 * Exact time of every tick: a chain of stretches, each at one tempo.
 *
 * <p>Ticks are the score's own, {@link Score#ticksPerQuarter} to the quarter note.
 */
public final class TempoMap {

  /**
   * A tempo from one tick on.
   *
   * @param startTick where it begins
   * @param perQuarter how long a quarter note lasts, more than 0 s
   */
  public record Change(long startTick, Seconds perQuarter) {
    public Change {
      if (perQuarter.signum() <= 0) {
        throw new IllegalArgumentException("a quarter note lasts longer than " + perQuarter + " s");
      }
    }
  }

  /**
   * A stretch at one tempo.
   *
   * @param startTick where it begins; it lasts to the next stretch
   * @param start its exact time
   * @param perQuarter how long a quarter note lasts in it
   */
  public record Stretch(long startTick, Seconds start, Seconds perQuarter) {}

  private final int ticksPerQuarter;
  private final List<Stretch> stretches;

  private TempoMap(int ticksPerQuarter, List<Stretch> stretches) {
    this.ticksPerQuarter = ticksPerQuarter;
    this.stretches = List.copyOf(stretches);
  }

  /**
   * A map from tempo changes.
   *
   * @param changes in order of their ticks, the first at tick 0; of two at one tick the later
   *     counts
   * @throws IllegalArgumentException if there is no change at tick 0 or they are out of order
   */
  public static TempoMap of(int ticksPerQuarter, List<Change> changes) {
    return of(ticksPerQuarter, changes, Seconds.ZERO);
  }

  /**
   * A map from tempo changes whose tick 0 does not sound at 0 s, as in a recording with silence
   * before the music.
   *
   * @param changes in order of their ticks, the first at tick 0; of two at one tick the later
   *     counts
   * @param timeOfTickZero when tick 0 sounds
   * @throws IllegalArgumentException if there is no change at tick 0 or they are out of order
   */
  public static TempoMap of(int ticksPerQuarter, List<Change> changes, Seconds timeOfTickZero) {
    if (changes.isEmpty() || changes.get(0).startTick() != 0) {
      throw new IllegalArgumentException("the tempo at tick 0 is missing");
    }
    List<Stretch> stretches = new ArrayList<>(changes.size());
    for (Change change : changes) {
      Stretch last = stretches.isEmpty() ? null : stretches.get(stretches.size() - 1);
      if (last == null) {
        stretches.add(new Stretch(0, timeOfTickZero, change.perQuarter()));
      } else if (change.startTick() < last.startTick()) {
        throw new IllegalArgumentException("tempo changes out of order");
      } else if (change.startTick() == last.startTick()) {
        stretches.set(
            stretches.size() - 1, new Stretch(last.startTick(), last.start(), change.perQuarter()));
      } else {
        Seconds start = timeIn(last, BigFraction.of(change.startTick()), ticksPerQuarter);
        stretches.add(new Stretch(change.startTick(), start, change.perQuarter()));
      }
    }
    return new TempoMap(ticksPerQuarter, stretches);
  }

  private static Seconds timeIn(Stretch stretch, BigFraction tick, int ticksPerQuarter) {
    BigFraction quarters = tick.subtract(stretch.startTick()).divide(ticksPerQuarter);
    return stretch.start().plus(stretch.perQuarter().times(quarters));
  }

  /** Exact time of a tick. */
  public Seconds secondsAt(long tick) {
    return secondsAt(BigFraction.of(tick));
  }

  /** Exact time of a fraction of a tick. Before tick 0 the first tempo runs backwards. */
  public Seconds secondsAt(BigFraction tick) {
    return timeIn(stretchAtTick(tick), tick, ticksPerQuarter);
  }

  /** The tick, possibly a fraction, that sounds at an exact time. */
  public BigFraction tickAt(Seconds time) {
    int low = 0;
    int high = stretches.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (stretches.get(middle).start().compareTo(time) <= 0) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    Stretch stretch = stretches.get(low);
    BigFraction quarters = time.minus(stretch.start()).dividedBy(stretch.perQuarter());
    return quarters.multiply(ticksPerQuarter).add(stretch.startTick());
  }

  /** How long a quarter note lasts at a tick. */
  public Seconds perQuarterAt(long tick) {
    return stretchAtTick(BigFraction.of(tick)).perQuarter();
  }

  private Stretch stretchAtTick(BigFraction tick) {
    int low = 0;
    int high = stretches.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (BigFraction.of(stretches.get(middle).startTick()).compareTo(tick) <= 0) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return stretches.get(low);
  }

  /** Every stretch, in order; at least one. */
  public List<Stretch> stretches() {
    return stretches;
  }

  public int ticksPerQuarter() {
    return ticksPerQuarter;
  }
}
