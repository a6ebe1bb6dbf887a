package org.barsheet.motif.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.barsheet.motif.Form;
import org.barsheet.motif.Match;
import org.barsheet.motif.Motif;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.match.Beginning;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.ChainMatcher;
import org.barsheet.motif.match.ChainSearch;
import org.barsheet.motif.match.Damage;
import org.barsheet.motif.match.Leeway;
import org.barsheet.motif.match.MatchRules;
import org.barsheet.motif.match.NoteField;
import org.barsheet.motif.match.Pattern;
import org.barsheet.motif.match.Transform;
import org.barsheet.notation.WrittenMusic;
import org.barsheet.score.Score;

/** Finds every return of a motif in a score played as written. */
public final class OccurrenceFinder implements MotifFinder {

  private final Score score;
  private final WrittenMusic written;
  private final NoteField field;
  private final LineJudgment judgment;

  private OccurrenceFinder(Score score, WrittenMusic written) {
    this.score = score;
    this.written = written;
    this.field = NoteField.of(score, written);
    this.judgment = new LineJudgment(field, score.ticksPerQuarter());
  }

  /** A finder that reads the score once for any number of motifs. */
  public static OccurrenceFinder of(Score score) {
    return new OccurrenceFinder(score, WrittenMusic.of(score));
  }

  /** Every return of a motif, in order of time, numbered over the certain and likely ones. */
  public static List<Occurrence> find(Score score, Motif motif) {
    return of(score).find(motif);
  }

  @Override
  public List<Occurrence> find(Motif motif) {
    return new OccurrenceWriter(score, field, motif, judgment, written::played).write(hits(motif));
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
    return HitMerger.ofWritten(field, score.ticksPerQuarter())
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
        patterns.parallelStream().flatMap(pattern -> chains(pattern, rules).stream()).toList();
    return MotifFilter.wanted(field, motif, judgment, chains);
  }

  @Override
  public Optional<NearMiss> nearest(Motif motif, long fromTick, long toTick) {
    MatchRules rules = MatchRules.of(motif.match() == Match.FREE ? Match.FREE : Match.TONAL);
    List<Pattern> patterns = patterns(motif);
    return NearMiss.nearest(
            share ->
                patterns.parallelStream()
                    .flatMap(
                        one ->
                            nearest(
                                one,
                                rules,
                                share,
                                written.written(fromTick),
                                written.written(toTick))
                                .stream())
                    .min(NearMiss.NEAREST))
        .map(
            chain ->
                NearMiss.of(score, field, motif, judgment, chain, spoiled(chain), written::played));
  }

  private Optional<Chain> nearest(
      Pattern pattern, MatchRules rules, double share, long fromTick, long toTick) {
    int budget = NearMiss.budget(pattern, share);
    ChainSearch search =
        new ChainSearch(field, pattern, rules, Leeway.NEAR, budget, tolerance(pattern));
    Beginning whole = new Beginning(pattern, budget);
    Optional<Chain> best = Optional.empty();
    for (long start : starts(pattern, fromTick, toTick)) {
      search.searchAt(start);
      Stream<Chain> chains = search.chains(start, whole).stream();
      best = Stream.concat(best.stream(), chains).min(NearMiss.NEAREST);
    }
    return best;
  }

  /** Where a pattern may begin whose first note, or whose first but one or two, is there. */
  private Set<Long> starts(Pattern pattern, long fromTick, long toTick) {
    Set<Long> starts = new TreeSet<>();
    int most = Math.min(ChainSearch.MOST_LOST_AT_AN_END, pattern.size() - 1);
    for (int missing = 0; missing <= most; missing++) {
      long later = pattern.onset(missing);
      int onset = field.onsetFrom(fromTick + later);
      for (; onset < field.onsets() && field.onset(onset) < toTick + later; onset++) {
        starts.add(field.onset(onset) - later);
      }
    }
    return starts;
  }

  private String spoiled(Chain chain) {
    return new Damage(field, chain, tolerance(chain.pattern())).words();
  }

  private List<Chain> chains(Pattern pattern, MatchRules rules) {
    Beginning whole = new Beginning(pattern, judgment.budget(pattern));
    return new ChainMatcher(field, List.of(whole), rules, tolerance(pattern)).chains().get(0);
  }

  private long tolerance(Pattern pattern) {
    return pattern.tolerance(score.ticksPerQuarter());
  }
}
