package org.barsheet.motif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/**
 * Finds every return of a motif in a score that was played freely into a recorder, so that its bars
 * and beats mean nothing: only the lengths of the motif's notes against each other count.
 */
public final class PlayedOccurrenceFinder {

  /** Ticks to the quarter note of the patterns that are sought. */
  static final int PATTERN_TICKS = 960;

  /** Seconds within which two returns begin together. */
  private static final double BEGINS_TOGETHER = 0.06;

  private final Score score;
  private final NoteField field;
  private final PlayedTimes times;

  private PlayedOccurrenceFinder(Score score, TempoMap tempo) {
    this.score = score;
    this.field = NoteField.of(score);
    this.times = new PlayedTimes(field, tempo);
  }

  /**
   * A finder that reads the score once for any number of motifs.
   *
   * @param tempo when each tick sounded as it was played: the file's own map
   */
  public static PlayedOccurrenceFinder of(Score score, TempoMap tempo) {
    return new PlayedOccurrenceFinder(score, tempo);
  }

  /**
   * Every return of a motif, in order of time, numbered over the certain and likely ones.
   *
   * @param tempo when each tick sounded as it was played: the file's own map
   */
  public static List<Occurrence> find(Score score, TempoMap tempo, Motif motif) {
    return of(score, tempo).find(motif);
  }

  /** Every return of a motif, in order of time, numbered over the certain and likely ones. */
  public List<Occurrence> find(Motif motif) {
    List<Chain> chains = new PlayedTempo(motif.forms()).sort(chains(motif));
    List<Chain> wanted = MotifFilter.wanted(field, motif, chains);
    List<Hit> hits = new HitMerger(field, this::beginTogether).merge(wanted, List.of());
    return new OccurrenceWriter(score, field, motif).write(hits);
  }

  private boolean beginTogether(Chain chain, Chain other) {
    return Math.abs(beginning(chain) - beginning(other)) <= BEGINS_TOGETHER;
  }

  private double beginning(Chain chain) {
    return times.at(chain.notes().get(chain.notes().firstPresent()));
  }

  private List<PlayedChain> chains(Motif motif) {
    MatchRules rules = MatchRules.of(motif.match());
    List<Pattern> patterns = new ArrayList<>();
    for (List<MotifNote> shape : motif.shapes()) {
      for (Transform transform : Transform.of(motif.forms())) {
        if (!transform.isStretched() && shape.size() > 1) {
          patterns.add(Pattern.of(shape, transform, PATTERN_TICKS));
        }
      }
    }
    return patterns.parallelStream()
        .map(pattern -> matcher(pattern, rules).chains())
        .flatMap(List::stream)
        .sorted(Comparator.comparingLong(found -> found.chain().start()))
        .toList();
  }

  private PlayedMatcher matcher(Pattern pattern, MatchRules rules) {
    return new PlayedMatcher(field, times, pattern, rules, Certainties.budget(pattern));
  }
}
