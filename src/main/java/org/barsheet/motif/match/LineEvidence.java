package org.barsheet.motif.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.barsheet.notation.WrittenNote;

/**
 * How much it tells that one part plays a motif's rhythm, with no note between: the rarer the
 * rhythm is among the lines of the score, and the rarer its intervals, the less is chance to be
 * blamed for what has one note wrong.
 */
public final class LineEvidence {

  /** An interval that never comes otherwise may still come by chance so often. */
  private static final double LEAST_SHARE = 0.02;

  private static final int WIDEST = 127;

  private final NoteField field;

  /** For each part its onsets in order. */
  private final List<long[]> onsets = new ArrayList<>();

  /** How often each interval is the next step of a part's top line. */
  private final int[] intervals = new int[2 * WIDEST + 1];

  private int intervalsInAll;
  private final Map<Rhythm, Integer> counted = new ConcurrentHashMap<>();

  private record Rhythm(List<Long> onsets, long tolerance) {}

  public LineEvidence(NoteField field) {
    this.field = field;
    List<TreeSet<Long>> byPart = new ArrayList<>();
    List<Integer> top = new ArrayList<>();
    List<Long> last = new ArrayList<>();
    for (int note = 0; note < field.size(); note++) {
      for (WrittenNote source : field.sources(note)) {
        int part = source.played().part();
        while (byPart.size() <= part) {
          byPart.add(new TreeSet<>());
          top.add(Picks.NONE);
          last.add(Long.MIN_VALUE);
        }
        step(part, note, top, last);
        byPart.get(part).add(field.onTick(note));
      }
    }
    byPart.forEach(own -> onsets.add(own.stream().mapToLong(on -> on).toArray()));
  }

  private void step(int part, int note, List<Integer> top, List<Long> last) {
    boolean isNew = field.onTick(note) != last.get(part);
    if (isNew && top.get(part) != Picks.NONE) {
      intervals[field.pitch(note) - top.get(part) + WIDEST]++;
      intervalsInAll++;
    }
    top.set(part, field.pitch(note));
    last.set(part, field.onTick(note));
  }

  /** A part that plays a chain, its rhythm exactly and no note between; −1 if none does. */
  public int linePart(Chain chain, long tolerance) {
    for (int part = 0; part < onsets.size(); part++) {
      if (plays(part, chain) && keepsRhythm(part, chain, tolerance)) {
        return part;
      }
    }
    return -1;
  }

  /** Whether one part plays all of a chain, or parts take it over from each other. */
  public boolean isWithoutBreak(Chain chain) {
    int before = Picks.NONE;
    for (int i = 0; i < chain.notes().size(); i++) {
      if (chain.notes().has(i)) {
        int note = chain.notes().get(i);
        boolean breaks = before != Picks.NONE && !field.sharePart(before, note);
        if (breaks && !field.takesOver(before, note)) {
          return false;
        }
        before = note;
      }
    }
    return true;
  }

  private boolean plays(int part, Chain chain) {
    for (int i = 0; i < chain.notes().size(); i++) {
      if (chain.notes().has(i)) {
        boolean own = false;
        for (WrittenNote source : field.sources(chain.notes().get(i))) {
          own |= source.played().part() == part;
        }
        if (!own) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean keepsRhythm(int part, Chain chain, long tolerance) {
    Pattern pattern = chain.pattern();
    for (int i = 0; i < pattern.size() - 1; i++) {
      if (chain.notes().has(i)
          && MatchRules.length(pattern.length(i), field.length(chain.notes().get(i))) > 0
          && chain.notes().has(i + 1)) {
        return false;
      }
    }
    int last = lastPresent(chain);
    long from = chain.start() + pattern.onset(chain.notes().firstPresent()) - tolerance;
    long to = chain.start() + pattern.onset(last) + tolerance;
    long[] own = onsets.get(part);
    int at = Arrays.binarySearch(own, from);
    at = at < 0 ? -at - 1 : at;
    int i = 0;
    for (; at < own.length && own[at] <= to; at++) {
      while (i < pattern.size() && chain.start() + pattern.onset(i) < own[at] - tolerance) {
        i++;
      }
      if (i == pattern.size() || chain.start() + pattern.onset(i) > own[at] + tolerance) {
        return false;
      }
    }
    return true;
  }

  private static int lastPresent(Chain chain) {
    int last = chain.notes().size() - 1;
    while (!chain.notes().has(last)) {
      last--;
    }
    return last;
  }

  /**
   * How many chains as damaged as this one are to be expected by chance: the places where a part
   * plays its rhythm, times how rarely its intervals come together.
   *
   * @param part that plays it
   */
  public double chance(Chain chain, int part, long tolerance) {
    Pattern pattern = chain.pattern();
    double chance = 1;
    int damaged = pattern.size() - chain.notes().present();
    List<Long> rhythm = new ArrayList<>();
    int before = Picks.NONE;
    for (int i = 0; i < pattern.size(); i++) {
      if (begins(part, chain.start() + pattern.onset(i), tolerance)) {
        rhythm.add(pattern.onset(i));
      }
      if (!chain.notes().has(i)) {
        continue;
      }
      if (before != Picks.NONE) {
        int asked = pattern.interval(before, i);
        int heard = field.pitch(chain.notes().get(i)) - field.pitch(chain.notes().get(before));
        int apart = Intervals.stepsApart(asked, heard);
        chance *= share(asked, apart);
        damaged += apart > 0 ? 1 : 0;
      }
      before = i;
    }
    return chance * Math.pow(pattern.size(), damaged) * places(new Rhythm(rhythm, tolerance));
  }

  private boolean begins(int part, long tick, long tolerance) {
    int at = Arrays.binarySearch(onsets.get(part), tick - tolerance);
    at = at < 0 ? -at - 1 : at;
    return at < onsets.get(part).length && onsets.get(part)[at] <= tick + tolerance;
  }

  /** The share of steps in the score that come as near to an interval. */
  private double share(int asked, int apart) {
    int near = 0;
    for (int heard = -WIDEST; heard <= WIDEST; heard++) {
      if (intervals[heard + WIDEST] > 0 && Intervals.stepsApart(asked, heard) <= apart) {
        near += intervals[heard + WIDEST];
      }
    }
    return Math.max(LEAST_SHARE, near / (double) Math.max(1, intervalsInAll));
  }

  private int places(Rhythm rhythm) {
    return counted.computeIfAbsent(rhythm, this::count);
  }

  private int count(Rhythm rhythm) {
    List<Long> places = rhythm.onsets();
    int count = 0;
    for (long[] own : onsets) {
      for (int at = 0; at + places.size() <= own.length; at++) {
        int i = 1;
        while (i < places.size()
            && Math.abs(own[at + i] - own[at] - places.get(i) + places.get(0))
                <= rhythm.tolerance()) {
          i++;
        }
        count += i == places.size() ? 1 : 0;
      }
    }
    return count;
  }
}
