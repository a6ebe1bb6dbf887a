package org.barsheet.motif.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.barsheet.motif.Form;
import org.barsheet.motif.Match;
import org.barsheet.motif.Motif;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.Damage;
import org.barsheet.motif.match.MatchRules;
import org.barsheet.motif.match.NoteField;
import org.barsheet.motif.match.Pattern;
import org.barsheet.motif.match.PlayedChain;
import org.barsheet.motif.match.Transform;
import org.barsheet.score.Score;

/**
 * Finds every return of a motif in a score that was played freely into a recorder, so that its bars
 * and beats mean nothing: only the lengths of the motif's notes against each other count.
 */
public final class PlayedOccurrenceFinder implements MotifFinder {

  /** Ticks to the quarter note of the patterns that are sought. */
  static final int PATTERN_TICKS = 960;

  /** Seconds within which two returns begin together. */
  private static final double BEGINS_TOGETHER = 0.06;

  private final Score score;
  private final NoteField field;
  private final PlayedTimes times;

  private PlayedOccurrenceFinder(Score score) {
    this.score = score;
    this.field = NoteField.of(score);
    this.times = new PlayedTimes(field, score.tempo());
  }

  /** A finder that reads the score once for any number of motifs. */
  public static PlayedOccurrenceFinder of(Score score) {
    return new PlayedOccurrenceFinder(score);
  }

  /** Every return of a motif, in order of time, numbered over the certain and likely ones. */
  public static List<Occurrence> find(Score score, Motif motif) {
    return of(score).find(motif);
  }

  @Override
  public List<Occurrence> find(Motif motif) {
    List<Pattern> patterns = patterns(motif);
    List<Pattern> heads =
        motif.forms().contains(Form.SHORTENED)
            ? patterns.stream().flatMap(pattern -> pattern.head().stream()).toList()
            : List.of();
    List<PlayedChain> whole = chains(motif, patterns);
    PlayedTempo tempo = PlayedTempo.of(motif.forms(), whole);
    List<Hit> hits =
        new HitMerger(field, this::beginTogether)
            .merge(wanted(motif, tempo, whole), wanted(motif, tempo, chains(motif, heads)));
    return new OccurrenceWriter(score, field, motif, Certainties::of, tick -> tick).write(hits);
  }

  private List<Chain> wanted(Motif motif, PlayedTempo tempo, List<PlayedChain> chains) {
    return MotifFilter.wanted(field, motif, Certainties::of, tempo.sort(chains));
  }

  private boolean beginTogether(Chain chain, Chain other) {
    return Math.abs(beginning(chain) - beginning(other)) <= BEGINS_TOGETHER;
  }

  private double beginning(Chain chain) {
    return times.at(chain.notes().get(chain.notes().firstPresent()));
  }

  private static List<Pattern> patterns(Motif motif) {
    List<Pattern> patterns = new ArrayList<>();
    for (List<MotifNote> shape : motif.shapes()) {
      for (Transform transform : Transform.of(motif.forms())) {
        if (!transform.isStretched() && shape.size() > 1) {
          patterns.add(Pattern.of(shape, transform, PATTERN_TICKS));
        }
      }
    }
    return patterns;
  }

  private List<PlayedChain> chains(Motif motif, List<Pattern> patterns) {
    MatchRules rules = MatchRules.of(motif.match());
    return patterns.parallelStream()
        .map(pattern -> matcher(pattern, rules, Certainties.budget(pattern)).chains())
        .flatMap(List::stream)
        .sorted(Comparator.comparingLong(found -> found.chain().start()))
        .toList();
  }

  private PlayedMatcher matcher(Pattern pattern, MatchRules rules, int budget) {
    return new PlayedMatcher(field, times, pattern, rules, budget);
  }

  @Override
  public Optional<NearMiss> nearest(Motif motif, long fromTick, long toTick) {
    MatchRules rules = MatchRules.of(motif.match() == Match.FREE ? Match.FREE : Match.TONAL);
    int from = field.firstNoteAt(field.onsetFrom(fromTick));
    int to = field.firstNoteAt(field.onsetFrom(toTick));
    List<Pattern> patterns = patterns(motif);
    return NearMiss.nearest(share -> nearest(patterns, rules, share, from, to))
        .map(
            near ->
                NearMiss.of(
                    score,
                    field,
                    motif,
                    Certainties::of,
                    near.chain(),
                    spoiled(near),
                    tick -> tick));
  }

  private Optional<PlayedChain> nearest(
      List<Pattern> patterns, MatchRules rules, double share, int from, int to) {
    return patterns.parallelStream()
        .map(one -> matcher(one, rules, NearMiss.budget(one, share)).chains(from, to))
        .flatMap(List::stream)
        .min(Comparator.comparing(PlayedChain::chain, NearMiss.NEAREST));
  }

  private String spoiled(PlayedChain near) {
    String notes = new Damage(field, near.chain(), 0).words();
    String pace = times.unevenness(near);
    return notes + (notes.isEmpty() || pace.isEmpty() ? "" : ", ") + pace;
  }
}
