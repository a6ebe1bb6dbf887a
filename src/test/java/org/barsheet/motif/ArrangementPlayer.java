package org.barsheet.motif;

import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.barsheet.score.Score;

/** Plays notes straight, swung, or by hand with a spread and a habit for each part. */
final class ArrangementPlayer {

  private static final double TICKS = ScoreSketch.TICKS_PER_QUARTER / 4.0;

  private final SplittableRandom random;
  private final String timing;
  private final double ratio;
  private final double[] spread;
  private final double[] habit;

  /**
   * A note of a part.
   *
   * @param on where it begins, in sixteenths
   * @param off where it ends, in sixteenths
   */
  record Played(int part, int pitch, double on, double off) {}

  ArrangementPlayer(SplittableRandom random, String timing, int parts) {
    this.random = random;
    this.timing = timing;
    this.ratio = 0.58 + 0.09 * random.nextDouble();
    this.spread = random.doubles(parts, 0.005, 0.03).toArray();
    this.habit = random.doubles(parts, -0.01, 0.01).toArray();
  }

  Score score(List<Played> notes, String[] names) {
    ScoreSketch sketch = new ScoreSketch();
    notes.sort(Comparator.comparingDouble(Played::on).thenComparingInt(Played::pitch));
    for (int part = 0; part < spread.length; part++) {
      sketch.part(names[part]);
      for (Played note : notes) {
        if (note.part() == part) {
          long on = tick(part, note.on());
          sketch.note(note.pitch(), on, Math.max(on + 1, tick(part, note.off())));
        }
      }
    }
    return sketch.score();
  }

  private long tick(int part, double sixteenth) {
    double quarter = sixteenth / 4;
    double place =
        switch (timing) {
          case "swing" -> swung(quarter);
          case "human" -> quarter + habit[part] + spread[part] * random.nextGaussian();
          default -> quarter;
        };
    return Math.max(0, Math.round(place * 4 * TICKS));
  }

  private double swung(double quarter) {
    double beat = Math.floor(quarter);
    double share = quarter - beat;
    return beat + (share < 0.5 ? 2 * share * ratio : ratio + (2 * share - 1) * (1 - ratio));
  }
}
