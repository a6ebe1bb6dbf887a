package org.barsheet.motif.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds a pattern in a field of notes, all parts together and no voice told from another.
 *
 * <p>Each place where it might begin is searched twice: quickly for notes on time, with a little
 * more damage allowed than a return may have; and where that comes through, again with notes that
 * may come early or late, as in a dotted variant.
 */
public final class ChainMatcher {

  private final NoteField field;
  private final List<Beginning> beginnings;
  private final Pattern pattern;
  private final MatchRules rules;
  private final long tolerance;
  private final int forgiven;
  private final ChainSearch onTime;
  private final ChainSearch shifted;

  /**
   * Prepares a search.
   *
   * @param beginnings the whole pattern, then any of its beginnings; beginnings only by rules that
   *     let no end be late
   * @param tolerance how many ticks an onset may lie off
   */
  public ChainMatcher(
      NoteField field, List<Beginning> beginnings, MatchRules rules, long tolerance) {
    this.field = field;
    this.beginnings = List.copyOf(beginnings);
    this.pattern = beginnings.get(0).pattern();
    this.rules = rules;
    this.tolerance = tolerance;
    // the quick search takes early and late notes for missing ones
    this.forgiven = rules.mostShifted(pattern.size()) * (1000 - rules.shiftCost());
    int budget = Beginning.largestBudget(beginnings);
    this.onTime =
        new ChainSearch(field, pattern, rules, Leeway.ON_TIME, budget + forgiven, tolerance);
    this.shifted = new ChainSearch(field, pattern, rules, Leeway.SHIFTED, budget, tolerance);
  }

  /** For each beginning every chain within its budget, in order of start. */
  public List<List<Chain>> chains() {
    List<List<Chain>> found = new ArrayList<>();
    beginnings.forEach(beginning -> found.add(new ArrayList<>()));
    int lost = rules.notesMayBeMissing() ? ChainSearch.MOST_LOST_AT_AN_END : 0;
    for (int missing = 0; missing <= lost && missing < pattern.size(); missing++) {
      onTime.anywhere();
      for (int onset = 0; onset < field.onsets(); onset++) {
        long start = field.onset(onset) - pattern.onset(missing);
        if (missing == 0 || hasNoOnset(start, missing)) {
          onTime.searchOnwards(start);
          addChainsOfLastSearch(start, found);
        }
      }
    }
    found.forEach(chains -> chains.sort(Comparator.comparingLong(Chain::start)));
    return found;
  }

  private void addChainsOfLastSearch(long start, List<List<Chain>> found) {
    boolean searched = !rules.mayShift();
    ChainSearch search = rules.mayShift() ? shifted : onTime;
    for (int i = 0; i < beginnings.size(); i++) {
      Beginning wanted = beginnings.get(i);
      if (onTime.reached(new Beginning(wanted.pattern(), wanted.budget() + forgiven))) {
        if (!searched) {
          shifted.searchAt(start);
          searched = true;
        }
        found.get(i).addAll(search.chains(start, wanted));
      }
    }
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
}
