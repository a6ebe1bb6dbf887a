package org.barsheet.pulse;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.barsheet.score.BarGrid;

/** Says what else the playing might mean, and by how much that lost. */
final class PulseAlternatives {

  /** A alternative beat that fits this much worse a beat, or less, is worth a look. */
  private static final double CLOSE_LEVEL = 0.15;

  /** A alternative first beat that fits this much worse a bar, or less, is worth a look. */
  private static final double CLOSE_PHASE = 0.5;

  private PulseAlternatives() {}

  /**
   * Another level of the beat.
   *
   * @param length beat length taken, in seconds
   * @param other the alternative's
   * @param margin how much better the taken one fits, a beat
   */
  static Optional<Doubt> level(BarGrid bars, double length, double other, double margin) {
    if (margin > CLOSE_LEVEL) {
      return Optional.empty();
    }
    String sentence =
        String.format(
            Locale.ROOT,
            "the beat may be %s as fast, %.0f bpm instead of %.0f; that fits %s",
            other > length ? "half" : "twice",
            60 / other,
            60 / length,
            margin >= 0 ? "almost as well" : "just as well if you ignore the bars");
    return Optional.of(new Doubt(Doubt.Kind.BEAT_LEVEL, bars.first(), bars.last(), sentence));
  }

  /**
   * Another beat to begin bars on.
   *
   * @param totals how well each place of the first beat fits, from 0
   */
  static Optional<Doubt> phase(BarGrid bars, double[] totals) {
    if (totals.length < 2) {
      return Optional.empty();
    }
    int best = indexOfMost(totals);
    double[] others = totals.clone();
    others[best] = Double.NEGATIVE_INFINITY;
    int second = indexOfMost(others);
    double margin = (totals[best] - totals[second]) / bars.bars().size();
    if (margin > CLOSE_PHASE) {
      return Optional.empty();
    }
    int later = Math.floorMod(best - second, totals.length);
    String sentence =
        String.format(
            Locale.ROOT,
            "bars may begin %d %s later; that fits almost as well",
            later,
            later == 1 ? "beat" : "beats");
    return Optional.of(new Doubt(Doubt.Kind.BAR_PHASE, bars.first(), bars.last(), sentence));
  }

  private static int indexOfMost(double[] values) {
    double most = Arrays.stream(values).max().orElseThrow();
    int index = 0;
    while (values[index] != most) {
      index++;
    }
    return index;
  }
}
