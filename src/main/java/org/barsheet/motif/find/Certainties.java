package org.barsheet.motif.find;

import java.util.Optional;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Form;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.Pattern;

/**
 * How much a chain's damage lets one rely on it.
 *
 * <p>The more notes a motif has, the less likely is it that chance puts together something like it,
 * so the more damage it may bear. Each change of form (inverted, retrograde, stretched) is one more
 * thing that chance may bring about and costs one note of that.
 *
 * <p>How the limits were chosen. How they grow with the number of notes was read off the finds of
 * fugue subjects cut to 4, 5, 6 … notes in seven other fugues each, where every find is chance:
 * from six notes on each row of limits keeps about the same number of chance finds in a piece,
 * hardly any certain one and about 0.1 likely ones; shorter motifs have more. Then each row was
 * scaled as a whole, leaving out one of eight fugues at a time and judging the scale that was best
 * for the other seven on the eighth: for likely ones that gave the same scale seven times out of
 * eight, the one used. For certain ones every scale up to 1.3 of the one used kept all eight free
 * of false finds; the margin was kept.
 */
final class Certainties {

  /** By number of notes from 0 on; longer motifs as the last. Thousandths of the motif. */
  private static final int[] CERTAIN = {0, 0, 0, 0, 20, 20, 60, 120, 125, 130};

  private static final int[] LIKELY = {40, 40, 40, 40, 80, 100, 130, 165, 180, 180};

  private static final int HEAD = 50;

  private Certainties() {}

  /** What differs, in thousandths of the whole motif. */
  static int damage(Chain chain) {
    return (int) (1000L * chain.cost() / Math.max(1, chain.pattern().weight()));
  }

  /** 0 to 1, 1 for a chain without damage. */
  static double score(Chain chain) {
    return Math.max(0, 1 - damage(chain) / 1000.0);
  }

  /** The most a chain may cost to be looked at, in thousandths of a note. */
  static int budget(Pattern pattern) {
    return most(pattern) * pattern.weight() / 1000;
  }

  /** The most a chain of a whole motif may cost to be certain, in thousandths of a note. */
  static int certainBudget(Pattern pattern) {
    return limit(CERTAIN, pattern) * pattern.weight() / 1000;
  }

  /** Certain, likely or nothing; possible if it is an ornamented or shortened return. */
  static Optional<Certainty> of(Chain chain) {
    int damage = damage(chain);
    if (damage > most(chain.pattern())) {
      return Optional.empty();
    }
    if (chain.pattern().variant().isPresent()) {
      return Optional.of(Certainty.POSSIBLE);
    }
    return Optional.of(
        damage <= limit(CERTAIN, chain.pattern()) ? Certainty.CERTAIN : Certainty.LIKELY);
  }

  /** The most damage that still counts, in thousandths of the motif. */
  static int most(Pattern pattern) {
    boolean head = pattern.variant().equals(Optional.of(Form.SHORTENED));
    return head ? Math.min(HEAD, limit(CERTAIN, pattern)) : limit(LIKELY, pattern);
  }

  /**
   * The most damage of a motif worth so many notes in the motif's own form, in thousandths of the
   * motif.
   */
  static int mostUnchanged(double notes) {
    int below = (int) Math.max(0, Math.min(notes, LIKELY.length - 1));
    int above = Math.min(below + 1, LIKELY.length - 1);
    double share = Math.min(1, notes - below);
    return (int) (LIKELY[below] + share * (LIKELY[above] - LIKELY[below]));
  }

  private static int limit(int[] byNotes, Pattern pattern) {
    int notes = Math.max(0, pattern.size() - pattern.transform().changes());
    return byNotes[Math.min(notes, byNotes.length - 1)];
  }
}
