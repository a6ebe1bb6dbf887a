package org.barsheet.motif;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.score.Score;

/**
 * How many returns chance alone would show: what decoys find, lines with the motif's own rhythm and
 * its intervals shuffled.
 *
 * @param chanceFinds how many certain and likely returns a decoy has in the score, on average
 */
public record MotifReliability(double chanceFinds) {

  private static final int DECOYS = 12;
  private static final int TRIES = 40;
  private static final long SEED = 20_250_301;

  /** From this many on a motif is too plain to be believed. */
  private static final double TOO_PLAIN = 0.5;

  /** Measures one motif in one score; the same always gives the same. */
  public static MotifReliability of(Score score, Motif motif) {
    return of(OccurrenceFinder.of(score), motif);
  }

  /** Measures one motif with a finder that already read the score. */
  public static MotifReliability of(OccurrenceFinder finder, Motif motif) {
    SplittableRandom random = new SplittableRandom(SEED);
    List<MotifNote> shape = motif.shapes().get(0);
    int found = 0;
    for (int decoy = 0; decoy < DECOYS; decoy++) {
      Motif shuffled =
          new Motif(
              motif.name(),
              List.of(shuffled(shape, random)),
              Accent.FIRST,
              motif.match(),
              motif.forms());
      found += (int) finder.find(shuffled).stream().filter(o -> o.number() > 0).count();
    }
    return new MotifReliability((double) found / DECOYS);
  }

  public boolean isTooPlain() {
    return chanceFinds >= TOO_PLAIN;
  }

  /** "too plain: expect about 3 chance finds", or that none is to be expected. */
  public String sentence() {
    if (!isTooPlain()) {
      return "distinct: hardly a chance find to be expected";
    }
    long about = Math.max(1, Math.round(chanceFinds));
    return String.format(
        Locale.ROOT, "too plain: expect about %d chance %s", about, about == 1 ? "find" : "finds");
  }

  /** The same rhythm over intervals in another order and direction, unlike the motif itself. */
  private static List<MotifNote> shuffled(List<MotifNote> shape, SplittableRandom random) {
    List<MotifNote> decoy = shape;
    for (int tries = 0; tries < TRIES && resembles(shape, decoy); tries++) {
      decoy = onceShuffled(shape, random);
    }
    return decoy;
  }

  private static List<MotifNote> onceShuffled(List<MotifNote> shape, SplittableRandom random) {
    List<Integer> intervals = new ArrayList<>();
    for (int i = 1; i < shape.size(); i++) {
      int interval = shape.get(i).pitch() - shape.get(i - 1).pitch();
      int turned = random.nextInt(2) == 0 ? interval : -interval;
      intervals.add(random.nextInt(intervals.size() + 1), turned);
    }
    List<MotifNote> line = new ArrayList<>(List.of(shape.get(0)));
    for (int i = 1; i < shape.size(); i++) {
      int pitch = line.get(i - 1).pitch() + intervals.get(i - 1);
      line.add(at(shape.get(i), Math.max(0, Math.min(127, pitch))));
    }
    return line;
  }

  private static MotifNote at(MotifNote note, int pitch) {
    BigFraction onset = note.onset();
    return new MotifNote(onset, note.length(), pitch);
  }

  /** Whether fewer than two intervals differ by scale steps. */
  private static boolean resembles(List<MotifNote> shape, List<MotifNote> decoy) {
    int differing = 0;
    for (int i = 1; i < shape.size(); i++) {
      int asked = shape.get(i).pitch() - shape.get(i - 1).pitch();
      int other = decoy.get(i).pitch() - decoy.get(i - 1).pitch();
      differing += Intervals.stepsApart(asked, other) > 0 ? 1 : 0;
    }
    return differing < 2;
  }
}
