package org.barsheet.motif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.barsheet.score.Score;

/** Finds every return of a motif in a score played as written. */
public final class OccurrenceFinder {

  private static final int ONSET_TOLERANCE = 24;
  private static final int BEGINS_TOGETHER = 8;

  /** Share of its notes that a motif may lose and still be called near. */
  private static final double NEARLY_NOTHING = 0.6;

  private static final Comparator<Chain> NEAREST =
      Comparator.comparingInt(Certainties::damage)
          .thenComparingInt(chain -> chain.pattern().transform().changes())
          .thenComparingLong(Chain::start);

  private final Score score;
  private final NoteField field;

  private OccurrenceFinder(Score score) {
    this.score = score;
    this.field = NoteField.of(score);
  }

  /** A finder that reads the score once for any number of motifs. */
  public static OccurrenceFinder of(Score score) {
    return new OccurrenceFinder(score);
  }

  /** Every return of a motif, in order of time, numbered over the certain and likely ones. */
  public static List<Occurrence> find(Score score, Motif motif) {
    return of(score).find(motif);
  }

  /** Every return of a motif, in order of time, numbered over the certain and likely ones. */
  public List<Occurrence> find(Motif motif) {
    return new OccurrenceWriter(score, field, motif).write(hits(motif));
  }

  private List<Hit> hits(Motif motif) {
    MatchRules rules = MatchRules.of(motif.match());
    List<Pattern> patterns = patterns(motif);
    List<Chain> variants = new ArrayList<>();
    if (motif.forms().contains(Form.SHORTENED)) {
      List<Pattern> heads = patterns.stream().flatMap(p -> p.head().stream()).toList();
      variants.addAll(chains(motif, heads, rules));
    }
    if (motif.forms().contains(Form.ORNAMENTED)) {
      List<Pattern> ornamented = patterns.stream().map(Pattern::ornamented).toList();
      variants.addAll(chains(motif, ornamented, MatchRules.ORNAMENTED));
    }
    return new HitMerger(field, this::beginTogether)
        .merge(chains(motif, patterns, rules), variants);
  }

  private List<Pattern> patterns(Motif motif) {
    List<Pattern> patterns = new ArrayList<>();
    for (List<MotifNote> shape : motif.shapes()) {
      for (Transform transform : Transform.of(motif.forms())) {
        patterns.add(Pattern.of(shape, transform, score.ticksPerQuarter()));
      }
    }
    return patterns;
  }

  private List<Chain> chains(Motif motif, List<Pattern> patterns, MatchRules rules) {
    List<Chain> chains =
        patterns.parallelStream()
            .map(pattern -> matcher(pattern, rules).chains())
            .flatMap(List::stream)
            .toList();
    return MotifFilter.wanted(field, motif, chains);
  }

  private boolean beginTogether(Chain chain, Chain other) {
    return Math.abs(chain.start() - other.start()) <= score.ticksPerQuarter() / BEGINS_TOGETHER;
  }

  /**
   * The nearest that a motif comes among what begins between two ticks, whether it counts or not.
   *
   * @param fromTick first tick that counts
   * @param toTick first tick that no longer counts
   * @return empty if nothing like it begins there
   */
  public Optional<NearMiss> nearest(Motif motif, long fromTick, long toTick) {
    MatchRules rules = MatchRules.of(motif.match() == Match.FREE ? Match.FREE : Match.TONAL);
    return patterns(motif).parallelStream()
        .flatMap(pattern -> nearest(pattern, rules, fromTick, toTick).stream())
        .min(NEAREST)
        .map(chain -> nearMiss(motif, chain));
  }

  private Optional<Chain> nearest(Pattern pattern, MatchRules rules, long fromTick, long toTick) {
    int budget = (int) (NEARLY_NOTHING * pattern.weight());
    ChainSearch search =
        new ChainSearch(field, pattern, rules, Leeway.NEAR, budget, tolerance(pattern));
    Optional<Chain> best = Optional.empty();
    int onset = field.onsetFrom(fromTick);
    for (; onset < field.onsets() && field.onset(onset) < toTick; onset++) {
      search.searchOnwards(field.onset(onset));
      Stream<Chain> chains = search.chains(field.onset(onset)).stream();
      best = Stream.concat(best.stream(), chains).min(NEAREST);
    }
    return best;
  }

  private NearMiss nearMiss(Motif motif, Chain chain) {
    Optional<Certainty> certainty =
        MotifFilter.wanted(field, motif, List.of(chain)).isEmpty()
            ? Optional.empty()
            : Certainties.of(chain);
    Occurrence as =
        new OccurrenceWriter(score, field, motif)
            .write(new Hit(chain, List.of()), 0, certainty.orElse(Certainty.POSSIBLE));
    return new NearMiss(
        motif.name(),
        motif.match(),
        chain.start(),
        as.score(),
        1 - Certainties.most(chain.pattern()) / 1000.0,
        certainty,
        as.description(),
        new Damage(field, chain, tolerance(chain.pattern())).words());
  }

  private ChainMatcher matcher(Pattern pattern, MatchRules rules) {
    int budget = Certainties.budget(pattern);
    return new ChainMatcher(field, pattern, rules, budget, tolerance(pattern));
  }

  private long tolerance(Pattern pattern) {
    int most = score.ticksPerQuarter() / ONSET_TOLERANCE;
    return Math.max(1, Math.min(most, pattern.shortestStep() / 4));
  }
}
