package org.barsheet.motif.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.MatchRules;
import org.barsheet.motif.match.NoteField;
import org.barsheet.motif.match.Pattern;
import org.barsheet.motif.match.Picks;
import org.barsheet.motif.match.PlayedChain;
import org.jspecify.annotations.Nullable;

/**
 * Finds a pattern in freely played notes, whose tempo is told by nothing but the playing.
 *
 * <p>From each note the pattern is followed note by note with a local tempo of its own: each next
 * note is sought where that tempo would have it, some way to either side, and bends the tempo
 * toward itself. At each step the few cheapest ways are kept.
 */
final class PlayedMatcher {

  /** Seconds a quarter note may last on the first step. */
  private static final double FASTEST = 0.2;

  private static final double SLOWEST = 1.6;

  /** How far the next note may come early or late, against the local tempo. */
  private static final double EARLY = 0.55;

  private static final double LATE = 1.8;

  /** How much of a step bends the local tempo, and how far one step may bend it. */
  private static final double BEND = 0.4;

  private static final double LEAST_BEND = 0.7;
  private static final double MOST_BEND = 1.4;

  /** What lies off by this many seconds is the hand, not the tempo. */
  private static final double JITTER = 0.03;

  /** How long a note is held says little in playing: only far too long or short tells. */
  private static final double TOO_LONG = 1.6;

  private static final double FAR_TOO_LONG = 3;
  private static final double TOO_SHORT = 0.25;

  private static final double UNEVEN = 600;
  private static final double UNEVEN_SLOPE = 1.2;
  private static final int WAYS_KEPT = 12;
  private static final int MOST_SKIPPED = 2;

  private final NoteField field;
  private final PlayedTimes times;
  private final Pattern pattern;
  private final double[] quarters;
  private final MatchRules rules;
  private final int budget;

  /** One way through the first notes of the pattern. */
  private record Way(int level, int note, double rate, int cost, @Nullable Way before) {}

  PlayedMatcher(NoteField field, PlayedTimes times, Pattern pattern, MatchRules rules, int budget) {
    this.field = field;
    this.times = times;
    this.pattern = pattern;
    this.rules = rules;
    this.budget = budget;
    this.quarters = new double[pattern.size()];
    for (int i = 0; i < quarters.length; i++) {
      quarters[i] = pattern.onset(i) / (double) PlayedOccurrenceFinder.PATTERN_TICKS;
    }
  }

  /** Every way through the pattern within the budget, in order of its first note. */
  List<PlayedChain> chains() {
    return chains(0, field.size());
  }

  /**
   * Every way that begins with one of some notes.
   *
   * @param from the first of them
   * @param to after the last of them
   */
  List<PlayedChain> chains(int from, int to) {
    List<PlayedChain> found = new ArrayList<>();
    for (int note = from; note < to; note++) {
      follow(note, found);
    }
    return found;
  }

  private void follow(int first, List<PlayedChain> found) {
    int size = pattern.size();
    List<List<Way>> levels = new ArrayList<>();
    int skips = rules.notesMayBeMissing() ? 1 : 0;
    for (int i = 0; i < size; i++) {
      List<Way> ways = new ArrayList<>();
      if (i <= skips && i < size - 1) {
        int begin = i == 0 ? 0 : pattern.weight(0);
        ways.add(new Way(i, first, 0, begin, null));
      }
      for (int back = 1;
          back <= (rules.notesMayBeMissing() ? MOST_SKIPPED : 1) && back <= i;
          back++) {
        int skipped = back == 2 ? pattern.weight(i - 1) : 0;
        for (Way way : levels.get(i - back)) {
          extend(way, i, skipped, ways);
        }
      }
      levels.add(cheapest(ways));
      boolean lost = ways.isEmpty() && levels.get(Math.max(0, i - 1)).isEmpty();
      if (lost && i > skips) {
        return;
      }
    }
    finish(levels.get(size - 1), 0, found);
    if (rules.notesMayBeMissing()) {
      finish(levels.get(size - 2), pattern.weight(size - 1), found);
    }
  }

  private void extend(Way way, int i, int skipped, List<Way> ways) {
    if (way.cost() + skipped > budget) {
      return;
    }
    double step = quarters[i] - quarters[way.level()];
    double from = times.at(way.note());
    boolean free = way.rate() == 0;
    double earliest = from + step * (free ? FASTEST : EARLY * way.rate());
    double latest = from + step * (free ? SLOWEST : LATE * way.rate());
    int[] row = rules.row(pattern.interval(way.level(), i));
    for (int note = times.firstFrom(earliest); note < field.size(); note++) {
      double time = times.at(note);
      if (time > latest) {
        return;
      }
      int cost = way.cost() + skipped;
      cost += row[MatchRules.column(field.pitch(note) - field.pitch(way.note()))];
      if (cost > budget) {
        continue;
      }
      double rate = (time - from) / step;
      if (!free) {
        cost += uneven(way.rate(), time - from, step);
        double bent = Math.max(LEAST_BEND * way.rate(), Math.min(MOST_BEND * way.rate(), rate));
        rate = (1 - BEND) * way.rate() + BEND * bent;
      }
      cost += MatchRules.part(field, way.note(), note);
      cost += length(i, note, rate);
      if (cost <= budget) {
        ways.add(new Way(i, note, rate, cost, way));
      }
    }
  }

  private static int uneven(double rate, double heard, double step) {
    double asked = rate * step;
    double off = Math.max(0, Math.abs(heard - asked) - JITTER);
    return (int) (UNEVEN * Math.min(1, UNEVEN_SLOPE * off / (asked + JITTER)));
  }

  private int length(int i, int note, double rate) {
    if (i == pattern.size() - 1) {
      return 0;
    }
    double asked = rate * pattern.length(i) / PlayedOccurrenceFinder.PATTERN_TICKS;
    double held = times.length(note) / asked;
    if (held > FAR_TOO_LONG) {
      return MatchRules.LENGTH_FAR_OFF;
    }
    return held > TOO_LONG || held < TOO_SHORT ? MatchRules.LENGTH_CHANGED : 0;
  }

  /** The cheapest ways, one to a note. */
  private static List<Way> cheapest(List<Way> ways) {
    ways.sort(Comparator.comparingInt(Way::cost).thenComparingInt(Way::note));
    List<Way> kept = new ArrayList<>();
    for (Way way : ways) {
      if (kept.size() == WAYS_KEPT) {
        break;
      }
      if (kept.stream().noneMatch(other -> other.note() == way.note())) {
        kept.add(way);
      }
    }
    return kept;
  }

  private void finish(List<Way> ways, int lost, List<PlayedChain> found) {
    for (Way way : ways) {
      if (way.cost() + lost <= budget && way.before() != null) {
        found.add(chain(way, way.cost() + lost));
      }
    }
  }

  private PlayedChain chain(Way end, int cost) {
    int[] notes = new int[pattern.size()];
    Arrays.fill(notes, Picks.NONE);
    Way first = end;
    for (Way way = end; way != null; way = way.before()) {
      notes[way.level()] = way.note();
      first = way;
    }
    double span = quarters[end.level()] - quarters[first.level()];
    double rate = (times.at(end.note()) - times.at(first.note())) / span;
    Picks picks = new Picks(notes);
    Pattern played = times.played(pattern, picks, rate);
    long start = field.onTick(notes[picks.firstPresent()]) - played.onset(picks.firstPresent());
    return new PlayedChain(new Chain(played, start, picks, cost), pattern, rate);
  }
}
