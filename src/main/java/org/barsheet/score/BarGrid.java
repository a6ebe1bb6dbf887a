package org.barsheet.score;

import java.math.BigInteger;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The bars of a piece from first to last, without gaps.
 *
 * @param bars in the order played, at least one
 */
public record BarGrid(List<Bar> bars) {

  public BarGrid {
    bars = List.copyOf(bars);
    if (bars.isEmpty()) {
      throw new IllegalArgumentException("a piece has at least one bar");
    }
  }

  /** The bar a tick falls in; the first bar for ticks before it, the last for ticks after. */
  public Bar barAt(long tick) {
    int low = 0;
    int high = bars.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (bars.get(middle).startTick() <= tick) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return bars.get(low);
  }

  /** Every time a printed bar number is played, in order; empty if there is no such bar. */
  public List<Bar> numbered(int number) {
    return bars.stream().filter(bar -> bar.number() == number).toList();
  }

  /** The same bars with printed numbers one after the other, each played once. */
  public BarGrid numberedFrom(int firstNumber) {
    return new BarGrid(
        bars.stream().map(bar -> bar.numbered(firstNumber + bar.index(), 1)).toList());
  }

  public Bar first() {
    return bars.get(0);
  }

  public Bar last() {
    return bars.get(bars.size() - 1);
  }

  /** Where a tick lies; between two beats in proportion. Ticks before the grid lie on its start. */
  public BarBeat locate(long tick) {
    return locate(BigFraction.of(tick));
  }

  /** Where a fraction of a tick lies; between two beats in proportion. */
  public BarBeat locate(BigFraction tick) {
    BigFraction from =
        tick.compareTo(BigFraction.of(first().startTick())) < 0
            ? BigFraction.of(first().startTick())
            : tick;
    Bar bar = barAt(floor(from));
    int beat = 0;
    while (beat + 1 < bar.beatTicks().size()
        && BigFraction.of(bar.beatTicks().get(beat + 1)).compareTo(from) <= 0) {
      beat++;
    }
    BigFraction into = from.subtract(bar.beatTicks().get(beat));
    BigFraction length = BigFraction.of(beatLength(bar, beat));
    return new BarBeat(bar.number(), bar.time(), into.divide(length).add(beat + 1));
  }

  /**
   * The tick, possibly a fraction, of a place in one bar. A beat past the bar's last one runs on at
   * the last beat's length, so the caller decides whether it is still welcome.
   */
  public BigFraction tickOf(Bar bar, BigFraction beat) {
    int whole = (int) Math.min(floor(beat), bar.beatTicks().size());
    BigFraction rest = beat.subtract(whole);
    long length = beatLength(bar, whole - 1);
    return rest.multiply(length).add(bar.beatTicks().get(whole - 1));
  }

  /** Length in ticks of a bar's beat, counted from 0. The last beat ends with the full beat. */
  private static long beatLength(Bar bar, int beat) {
    List<Long> ticks = bar.beatTicks();
    if (beat + 1 < ticks.size()) {
      return ticks.get(beat + 1) - ticks.get(beat);
    }
    return bar.endTick() - ticks.get(beat);
  }

  private static long floor(BigFraction number) {
    BigInteger[] parts = number.getNumerator().divideAndRemainder(number.getDenominator());
    return (parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0]).longValueExact();
  }
}
