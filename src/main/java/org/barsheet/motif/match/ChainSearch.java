package org.barsheet.motif.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The cheapest chains of a pattern from one place, by dynamic programming: from the note last
 * matched to each candidate for the next, by how the interval, the length, the moment and the part
 * differ, or past a note that is missing.
 *
 * <p>The cheapest way to a note is the same whatever follows it, so one search finds the chains of
 * a pattern and those of its beginnings.
 */
public final class ChainSearch {

  /** How many notes may be missing at the beginning or at the end. */
  public static final int MOST_LOST_AT_AN_END = 2;

  private final NoteField field;
  private final Pattern pattern;
  private final MatchRules rules;
  private final int budget;
  private final long tolerance;
  private final int last;
  private final int mostLostAtAnEnd;
  private final int mostLostWithin;

  private final int[][][] rows;
  private final int[] beginCosts;
  private final long[] early;
  private final long[] late;
  private final int[] cursors;
  private final int[] levels;
  private final int[] cheapest;
  private final int[] cheapestEnds;
  private final ChainStates states;

  /** Cost of the best way to the note looked at, and the state that it comes from. */
  private int best;

  private int from;

  /**
   * Prepares a search.
   *
   * @param rules what differences cost
   * @param leeway how far a chain may stray
   * @param budget the most that a chain may cost, in thousandths of a note
   * @param tolerance how many ticks an onset may lie off without being early or late
   */
  public ChainSearch(
      NoteField field,
      Pattern pattern,
      MatchRules rules,
      Leeway leeway,
      int budget,
      long tolerance) {
    this.field = field;
    this.pattern = pattern;
    this.rules = rules;
    this.budget = budget;
    this.tolerance = tolerance;
    int size = pattern.size();
    this.last = size - 1;
    this.mostLostAtAnEnd = rules.notesMayBeMissing() ? Math.min(MOST_LOST_AT_AN_END, last) : 0;
    this.mostLostWithin = rules.notesMayBeMissing() ? leeway.mostLostWithin() : 0;
    this.states = new ChainStates(size);
    this.rows = new int[size][mostLostWithin + 2][];
    this.beginCosts = new int[size];
    this.early = new long[size];
    this.late = new long[size];
    this.cursors = new int[size];
    this.levels = new int[size + 1];
    this.cheapest = new int[size];
    this.cheapestEnds = new int[size];
    for (int i = 0; i < size; i++) {
      prepare(i, leeway.shifts());
    }
  }

  private void prepare(int i, boolean shifts) {
    for (int back = 1; back <= Math.min(i, mostLostWithin + 1); back++) {
      rows[i][back] = rules.row(pattern.interval(i - back, i));
    }
    beginCosts[i] = i <= mostLostAtAnEnd ? 0 : MatchRules.NEVER;
    for (int lost = 0; lost < i && i <= mostLostAtAnEnd; lost++) {
      beginCosts[i] += pattern.weight(lost);
    }
    early[i] = shifts && i > 0 ? (pattern.onset(i) - pattern.onset(i - 1)) / 2 : 0;
    boolean within = i > 0 && i < last;
    long next = i < last ? pattern.onset(i + 1) : pattern.end();
    late[i] = shifts && (within || rules.endsMayBeLate()) ? (next - pattern.onset(i)) / 2 : 0;
  }

  /** Forgets the place of the last search, so that any place may be next. */
  void anywhere() {
    Arrays.fill(cursors, 0);
  }

  /** Searches from a place, no earlier than that of the last search. */
  void searchOnwards(long start) {
    states.clear();
    Arrays.fill(levels, 0);
    int empty = 0;
    for (int i = 0; i <= last; i++) {
      if (empty > mostLostWithin && i > mostLostAtAnEnd) {
        Arrays.fill(levels, i, levels.length, states.size());
        return;
      }
      cheapest[i] = MatchRules.NEVER;
      cheapestEnds[i] = MatchRules.NEVER;
      fillLevel(i, start + pattern.onset(i));
      empty = states.size() > levels[i] ? 0 : empty + 1;
      levels[i + 1] = states.size();
    }
  }

  /** Searches from any place. */
  public void searchAt(long start) {
    for (int i = 0; i <= last; i++) {
      cursors[i] = field.onsetFrom(start + pattern.onset(i) - tolerance - early[i]);
    }
    searchOnwards(start);
  }

  private void fillLevel(int i, long target) {
    int onset = cursors[i];
    int onsets = field.onsets();
    while (onset < onsets && field.onset(onset) < target - tolerance - early[i]) {
      onset++;
    }
    cursors[i] = onset;
    for (; onset < onsets && field.onset(onset) <= target + tolerance + late[i]; onset++) {
      boolean onTime = Math.abs(field.onset(onset) - target) <= tolerance;
      int end = field.firstNoteAt(onset + 1);
      for (int note = field.firstNoteAt(onset); note < end; note++) {
        reach(i, note, onTime ? 0 : rules.shiftCost());
      }
    }
  }

  /** Keeps the cheapest way to a note of the field as note i of the pattern, if affordable. */
  private void reach(int i, int note, int shift) {
    best = Math.min(beginCosts[i], budget - shift + 1);
    from = ChainStates.NONE;
    int skipped = 0;
    for (int back = 1; back <= mostLostWithin + 1 && back <= i; back++) {
      if (cheapest[i - back] + skipped < best) {
        reachFrom(i, back, skipped, note);
      }
      skipped += pattern.weight(i - back);
    }
    int end = best + shift;
    if (end <= budget) {
      int length = lengthCost(pattern.length(i), note);
      states.add(note, end, length, from, i, field.pitch(note));
      cheapest[i] = Math.min(cheapest[i], end + length);
      cheapestEnds[i] = Math.min(cheapestEnds[i], end);
    }
  }

  /** Improves the best way by the states some levels back; of equal ones the oldest counts. */
  private void reachFrom(int i, int back, int skipped, int note) {
    int before = from;
    int pitch = field.pitch(note);
    int asked = pattern.interval(i - back, i);
    int[] row = rows[i][back];
    int top = Math.min(127, pitch - rules.lowest(asked));
    for (int low = Math.max(0, pitch - rules.highest(asked)); low <= top; low++) {
      int interval = row[MatchRules.column(pitch - low)] + skipped;
      int state = states.newest(i - back, low);
      for (; state != ChainStates.NONE; state = states.older(state)) {
        int cost = states.cost(state) + interval;
        if (cost <= best) {
          cost += stepCost(states.note(state), note);
        }
        if (cost < best || (cost == best && from != before && state < from)) {
          best = cost;
          from = state;
        }
      }
    }
  }

  /** The least that any part's length in a unison costs. */
  private int lengthCost(long asked, int note) {
    int cost = MatchRules.length(asked, field.length(note));
    return cost == 0 ? 0 : Math.min(cost, MatchRules.length(asked, field.shortestLength(note)));
  }

  private int stepCost(int before, int note) {
    if (field.onTick(before) >= field.onTick(note)) {
      return MatchRules.NEVER;
    }
    return MatchRules.part(field, before, note);
  }

  /** Whether the last search, for notes on time, reached the end of a beginning affordably. */
  boolean reached(Beginning beginning) {
    int end = beginning.pattern().size() - 1;
    int lost = 0;
    for (int missing = 0; missing <= Math.min(mostLostAtAnEnd, end); missing++) {
      int level = end - missing;
      int cost = missing == 0 ? cheapestEnds[level] : cheapest[level] + lost;
      if (levels[level + 1] > levels[level] && cost <= beginning.budget()) {
        return true;
      }
      lost += beginning.pattern().weight(level);
    }
    return false;
  }

  /** The chains of the last search, one for each note that they end on. */
  public List<Chain> chains(long start, Beginning beginning) {
    Pattern wanted = beginning.pattern();
    List<Chain> found = new ArrayList<>();
    int lost = 0;
    for (int missing = 0; missing <= Math.min(mostLostAtAnEnd, wanted.size() - 1); missing++) {
      int level = wanted.size() - 1 - missing;
      long latest = latestEnd(start, level, missing);
      for (int state = levels[level]; state < levels[level + 1]; state++) {
        int cost = (missing == 0 ? states.endCost(state) : states.cost(state)) + lost;
        if (cost <= beginning.budget() && field.onTick(states.note(state)) <= latest) {
          found.add(new Chain(wanted, start, states.trace(state, wanted.size()), cost));
        }
      }
      lost += wanted.weight(level);
    }
    return found;
  }

  /** The last note of all may be late only where the rules say so. */
  private long latestEnd(long start, int level, int missing) {
    boolean mayBeLate = missing > 0 || rules.endsMayBeLate();
    return mayBeLate ? Long.MAX_VALUE : start + pattern.onset(level) + tolerance;
  }
}
