package org.barsheet.motif.find;

import java.util.Optional;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.LengthEvidence;
import org.barsheet.motif.match.LineEvidence;
import org.barsheet.motif.match.NoteField;
import org.barsheet.motif.match.Pattern;

/**
 * Judges chains by their damage, and those too damaged for that, with about one note missing or
 * changed, by whether one part plays them as a line and how rare that line is in the score.
 *
 * <p>How the limits were chosen. On 36 composed arrangements (seeds 1 to 12, straight, swung and by
 * hand) limits on expected chance finds from 0.5 to 4 gave no false find and the same returns; 8
 * gave the first false ones. On 24 others (seeds 101 to 108) the limits used gave no false find
 * either. In a changed form a likely return must be a line without a break: most false finds there
 * were put together from several parts.
 */
final class LineJudgment implements Judgment {

  /** By number of notes from 0 on: the damage of one note missing and a little more. */
  private static final int[] ONE_NOTE = {0, 0, 0, 0, 0, 320, 255, 215, 185};

  /** From so many notes on a line with a note missing may be likely. */
  private static final int LONG_ENOUGH = 7;

  private static final double MOST_CHANCE_FINDS = 2;
  private static final double MOST_FOR_LIKELY = 0.1;

  private final NoteField field;
  private final LineEvidence evidence;
  private final LengthEvidence lengths;
  private final int ticksPerQuarter;

  LineJudgment(NoteField field, int ticksPerQuarter) {
    this.field = field;
    this.evidence = new LineEvidence(field);
    this.lengths = new LengthEvidence(field);
    this.ticksPerQuarter = ticksPerQuarter;
  }

  /** The most a chain may cost to be looked at, in thousandths of a note. */
  int budget(Pattern pattern) {
    int most = Math.max(mostAsLine(pattern), mostForLengths(pattern, lengths.notes(pattern)));
    return Math.max(Certainties.budget(pattern), most * pattern.weight() / 1000);
  }

  /** The most damage of a motif worth some notes more for its lengths, in thousandths of it. */
  private static int mostForLengths(Pattern pattern, double more) {
    return pattern.variant().isPresent() || isChanged(pattern)
        ? 0
        : Certainties.mostUnchanged(pattern.size() + more);
  }

  /** The most damage of a line that one part plays, in thousandths of the motif. */
  private static int mostAsLine(Pattern pattern) {
    if (pattern.variant().isPresent()) {
      return 0;
    }
    return isChanged(pattern)
        ? Certainties.mostUnchanged(pattern.size())
        : pattern.size() < ONE_NOTE.length ? ONE_NOTE[pattern.size()] : 0;
  }

  private static boolean isChanged(Pattern pattern) {
    return pattern.transform().changes() > 0;
  }

  @Override
  public Optional<Certainty> of(Chain chain) {
    Optional<Certainty> byDamage = byDamage(chain);
    if (byDamage.isEmpty() && Certainties.damage(chain) <= mostAsLine(chain.pattern())) {
      return asLine(chain);
    }
    return needsLine(chain, byDamage) && !evidence.isWithoutBreak(chain)
        ? Optional.empty()
        : byDamage;
  }

  private Optional<Certainty> byDamage(Chain chain) {
    int damage = Certainties.damage(chain);
    boolean isWorthMore =
        damage > Certainties.most(chain.pattern())
            && damage <= mostForLengths(chain.pattern(), lengths.notes(field, chain));
    return isWorthMore ? Optional.of(Certainty.LIKELY) : Certainties.of(chain);
  }

  private static boolean needsLine(Chain chain, Optional<Certainty> byDamage) {
    boolean isLikely = byDamage.equals(Optional.of(Certainty.LIKELY));
    return isLikely && isChanged(chain.pattern());
  }

  private Optional<Certainty> asLine(Chain chain) {
    long tolerance = chain.pattern().tolerance(ticksPerQuarter);
    int part = evidence.linePart(chain, tolerance);
    if (part < 0) {
      return Optional.empty();
    }
    double chance = evidence.chance(chain, part, tolerance);
    int size = chain.pattern().size();
    boolean isWhole = chain.notes().present() == size || size >= LONG_ENOUGH;
    if (isWhole && chance <= MOST_FOR_LIKELY) {
      return Optional.of(Certainty.LIKELY);
    }
    boolean isPossible = chance <= MOST_CHANCE_FINDS && !isChanged(chain.pattern());
    return isPossible ? Optional.of(Certainty.POSSIBLE) : Optional.empty();
  }
}
