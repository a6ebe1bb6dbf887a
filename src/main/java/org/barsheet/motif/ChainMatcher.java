package org.barsheet.motif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Finds a pattern in a field of notes, all parts together and no voice told from another.
 *
 * <p>For each place where it might begin, the notes at the pattern's onsets are chained at least
 * cost by dynamic programming (one small Viterbi search a place): from the note last matched to
 * each candidate for the next, by how the interval, the length and the part differ, or past a note
 * that is missing.
 */
final class ChainMatcher {

  /** How many notes may be missing at the beginning, at the end, or one after another within. */
  private static final int MOST_LOST_AT_AN_END = 2;

  private static final int MOST_LOST_WITHIN = 1;

  private final NoteField field;
  private final Pattern pattern;
  private final MatchRules rules;
  private final int budget;
  private final long tolerance;
  private final int[][][] rows;

  private final int[] cursors;
  private final int[] levels;
  private final int[] cheapest;
  private final int[] beginCosts;
  private final int last;
  private final int deepest;
  private int[] stateNote = new int[256];
  private int[] stateCost = new int[256];
  private int[] stateFrom = new int[256];
  private int[] stateLevel = new int[256];
  private int states;

  /**
   * Prepares a search.
   *
   * @param budget the most that a chain may cost, in thousandths
   * @param tolerance how many ticks an onset may lie off
   */
  ChainMatcher(NoteField field, Pattern pattern, MatchRules rules, int budget, long tolerance) {
    this.field = field;
    this.pattern = pattern;
    this.rules = rules;
    this.budget = budget;
    this.tolerance = tolerance;
    this.cursors = new int[pattern.size()];
    this.levels = new int[pattern.size() + 1];
    this.cheapest = new int[pattern.size()];
    this.beginCosts = new int[pattern.size()];
    this.last = pattern.size() - 1;
    this.deepest = rules.notesMayBeMissing() ? MOST_LOST_WITHIN + 1 : 1;
    this.rows = new int[pattern.size()][MOST_LOST_WITHIN + 2][];
    for (int i = 0; i < pattern.size(); i++) {
      beginCosts[i] = costOfBeginningAt(i);
      for (int back = 1; back <= Math.min(i, MOST_LOST_WITHIN + 1); back++) {
        rows[i][back] = rules.row(pattern.interval(i - back, i));
      }
    }
  }

  /** Every chain within the budget, in order of start. */
  List<Chain> chains() {
    List<Chain> found = new ArrayList<>();
    int lost = rules.notesMayBeMissing() ? Math.min(MOST_LOST_AT_AN_END, pattern.size() - 1) : 0;
    for (int missing = 0; missing <= lost; missing++) {
      Arrays.fill(cursors, 0);
      for (int onset = 0; onset < field.onsets(); onset++) {
        long start = field.onset(onset) - pattern.onset(missing);
        if (missing == 0 || hasNoOnset(start, missing)) {
          matchAt(start);
          collect(start, found);
        }
      }
    }
    found.sort(Comparator.comparingLong(Chain::start));
    return found;
  }

  /** Chains that begin at one place, whatever they cost up to the budget. */
  List<Chain> chainsAt(long start) {
    for (int i = 0; i < cursors.length; i++) {
      cursors[i] = field.onsetFrom(start + pattern.onset(i) - tolerance);
    }
    List<Chain> found = new ArrayList<>();
    matchAt(start);
    collect(start, found);
    return found;
  }

  /** Whether none of the pattern's first notes has an onset, so that no other start covers this. */
  private boolean hasNoOnset(long start, int missing) {
    for (int i = 0; i < missing; i++) {
      long from = start + pattern.onset(i) - tolerance;
      int onset = field.onsetFrom(from);
      if (onset < field.onsets() && field.onset(onset) <= from + 2 * tolerance) {
        return false;
      }
    }
    return true;
  }

  private void matchAt(long start) {
    states = 0;
    int empty = 0;
    Arrays.fill(levels, 0);
    for (int i = 0; i < pattern.size(); i++) {
      if (empty > MOST_LOST_WITHIN && i > MOST_LOST_AT_AN_END) {
        Arrays.fill(levels, i, levels.length, states);
        return;
      }
      cheapest[i] = MatchRules.NEVER;
      fillLevel(i, start + pattern.onset(i));
      empty = states > levels[i] ? 0 : empty + 1;
      levels[i + 1] = states;
    }
  }

  private void fillLevel(int i, long target) {
    int onset = cursors[i];
    int onsets = field.onsets();
    while (onset < onsets && field.onset(onset) < target - tolerance) {
      onset++;
    }
    cursors[i] = onset;
    for (; onset < onsets && field.onset(onset) <= target + tolerance; onset++) {
      int end = field.firstNoteAt(onset + 1);
      for (int note = field.firstNoteAt(onset); note < end; note++) {
        reach(i, note);
      }
    }
  }

  /**
   * Keeps the cheapest way to a note of the field as note i of the pattern, if it is affordable.
   */
  private void reach(int i, int note) {
    int own = i == last ? 0 : MatchRules.length(pattern.length(i), field.length(note));
    int best = Math.min(beginCosts[i], budget - own + 1);
    int from = -1;
    int column = MatchRules.column(field.pitch(note));
    int skipped = 0;
    for (int back = 1; back <= deepest && back <= i; back++) {
      int level = i - back;
      if (cheapest[level] + skipped < best) {
        int[] row = rows[i][back];
        for (int state = levels[level]; state < levels[level + 1]; state++) {
          int before = stateNote[state];
          int cost = stateCost[state] + skipped + row[column - field.pitch(before)];
          if (cost < best && !field.sharePart(before, note)) {
            cost += MatchRules.OTHER_PART;
          }
          if (cost < best) {
            best = cost;
            from = state;
          }
        }
      }
      skipped += pattern.weight(level);
    }
    if (best + own <= budget) {
      push(note, best + own, from, i);
    }
  }

  private int costOfBeginningAt(int i) {
    if (i == 0) {
      return 0;
    }
    if (i > MOST_LOST_AT_AN_END || !rules.notesMayBeMissing()) {
      return MatchRules.NEVER;
    }
    int cost = 0;
    for (int lost = 0; lost < i; lost++) {
      cost += pattern.weight(lost);
    }
    return cost;
  }

  private void push(int note, int cost, int from, int level) {
    if (states == stateNote.length) {
      int more = 2 * states;
      stateNote = Arrays.copyOf(stateNote, more);
      stateCost = Arrays.copyOf(stateCost, more);
      stateFrom = Arrays.copyOf(stateFrom, more);
      stateLevel = Arrays.copyOf(stateLevel, more);
    }
    stateNote[states] = note;
    stateCost[states] = cost;
    stateFrom[states] = from;
    stateLevel[states] = level;
    cheapest[level] = Math.min(cheapest[level], cost);
    states++;
  }

  private void collect(long start, List<Chain> found) {
    int lost = 0;
    int most = rules.notesMayBeMissing() ? MOST_LOST_AT_AN_END : 0;
    for (int missing = 0; missing <= most && missing < pattern.size(); missing++) {
      int level = pattern.size() - 1 - missing;
      for (int state = levels[level]; state < levels[level + 1]; state++) {
        if (stateCost[state] + lost <= budget) {
          found.add(new Chain(pattern, start, trace(state), stateCost[state] + lost));
        }
      }
      lost += pattern.weight(level);
    }
  }

  private Picks trace(int state) {
    int[] notes = new int[pattern.size()];
    Arrays.fill(notes, Picks.NONE);
    for (int at = state; at >= 0; at = stateFrom[at]) {
      notes[stateLevel[at]] = stateNote[at];
    }
    return new Picks(notes);
  }
}
