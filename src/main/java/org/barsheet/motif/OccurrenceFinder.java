package org.barsheet.motif;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.score.Score;

/** Finds every return of a motif in a score played as written. */
public final class OccurrenceFinder {

  private static final int ONSET_TOLERANCE = 24;
  private static final int BEGINS_TOGETHER = 8;

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

  private ChainMatcher matcher(Pattern pattern, MatchRules rules) {
    long tolerance =
        Math.max(
            1, Math.min(score.ticksPerQuarter() / ONSET_TOLERANCE, pattern.shortestStep() / 4));
    return new ChainMatcher(field, pattern, rules, Certainties.budget(pattern), tolerance);
  }
}
