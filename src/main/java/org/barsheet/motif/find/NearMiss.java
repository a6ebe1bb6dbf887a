package org.barsheet.motif.find;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.LongUnaryOperator;
import java.util.stream.DoubleStream;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Match;
import org.barsheet.motif.Motif;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.NoteField;
import org.barsheet.motif.match.Pattern;
import org.barsheet.score.Score;

/**
 * How near a motif comes to a place.
 *
 * @param motif its name
 * @param match how near the motif wants its returns
 * @param startTick where the nearest thing to it begins
 * @param score 0 to 1, 1 for the motif note for note
 * @param needed the score that a return needs
 * @param certainty how it counts; empty if it does not
 * @param description its form in words, as if it were a return, without single notes
 * @param spoiled what differs, in words; empty if nothing does
 */
public record NearMiss(
    String motif,
    Match match,
    long startTick,
    double score,
    double needed,
    Optional<Certainty> certainty,
    String description,
    String spoiled) {

  /**
   * Shares of its notes that a motif may lose and still be called near, looked for one after the
   * other: what is nearer is found sooner.
   */
  private static final double[] NEAR = {0.2, 0.35, 0.6};

  /** The nearest first. */
  static final Comparator<Chain> NEAREST =
      Comparator.comparingInt(Certainties::damage)
          .thenComparingInt(chain -> chain.pattern().transform().changes())
          .thenComparingLong(Chain::start);

  /**
   * The nearest of all chains.
   *
   * @param within the nearest of those that lose no more than a share of the motif
   */
  static <T> Optional<T> nearest(DoubleFunction<Optional<T>> within) {
    return DoubleStream.of(NEAR).mapToObj(within).flatMap(Optional::stream).findFirst();
  }

  /**
   * The most that a chain may cost which loses a share of its pattern, in thousandths of a note.
   */
  static int budget(Pattern pattern, double share) {
    return (int) (share * pattern.weight());
  }

  /** What a chain is, as a return or nearly one. */
  static NearMiss of(
      Score score,
      NoteField field,
      Motif motif,
      Judgment judgment,
      Chain chain,
      String spoiled,
      LongUnaryOperator played) {
    boolean wanted = !MotifFilter.wanted(field, motif, judgment, List.of(chain)).isEmpty();
    Optional<Certainty> certainty = wanted ? judgment.of(chain) : Optional.empty();
    return new NearMiss(
        motif.name(),
        motif.match(),
        played.applyAsLong(Math.max(0, chain.start())),
        Certainties.score(chain),
        1 - Certainties.most(chain.pattern()) / 1000.0,
        certainty,
        new OccurrenceWriter(score, field, motif, judgment, played).outline(chain),
        spoiled);
  }

  /** "likeness 0.72, 0.80 needed (tonal, up a fifth, in Viola): note 3 missing, note 5 late". */
  public String sentence() {
    String why = spoiled.isEmpty() ? "" : ": " + spoiled;
    return standing() + " (" + description + ")" + why;
  }

  private String standing() {
    if (certainty.isPresent()) {
      return certainty.get().name().toLowerCase(Locale.ROOT);
    }
    if (score >= needed) {
      return "near, but not near enough for match: " + match.name().toLowerCase(Locale.ROOT);
    }
    double below = Math.floor(100 * score) / 100;
    return String.format(Locale.ROOT, "likeness %.2f, %.2f needed", below, needed);
  }
}
