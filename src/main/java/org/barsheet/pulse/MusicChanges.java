package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.pulse.MusicChange.Kind;

/**
 * Two versions of a score laid against each other bar by bar: bars with the same notes are found
 * again (the longest common subsequence of bars), the bars between them are changed, new or gone.
 */
public final class MusicChanges {

  /** Largest table of bars against bars; beyond it the bars that differ count as changed. */
  private static final long MOST_CELLS = 25_000_000;

  private final ScoreVersion before;
  private final ScoreVersion now;
  private final List<MusicChange> changes = new ArrayList<>();

  private MusicChanges(ScoreVersion before, ScoreVersion now) {
    this.before = before;
    this.now = now;
  }

  /** Every bar of both versions in order, bars of the same fate together. */
  public static List<MusicChange> between(Music before, Music now) {
    PartNames names = PartNames.of(before, now);
    MusicChanges comparison =
        new MusicChanges(ScoreVersion.of(before, names::now), ScoreVersion.of(now, name -> name));
    comparison.compare();
    return List.copyOf(comparison.changes);
  }

  /** Parts that have another name, or that only one version has, in sentences. */
  public static List<String> parts(Music before, Music now) {
    return PartNames.of(before, now).sentences();
  }

  private void compare() {
    int[] was = new int[before.bars().size()];
    int[] is = new int[now.bars().size()];
    Map<List<Object>, Integer> contents = new HashMap<>();
    fill(was, before, contents);
    fill(is, now, contents);
    int start = 0;
    while (start < Math.min(was.length, is.length) && was[start] == is[start]) {
      start++;
    }
    int tail = 0;
    while (tail < Math.min(was.length, is.length) - start
        && was[was.length - 1 - tail] == is[is.length - 1 - tail]) {
      tail++;
    }
    for (int i = 0; i < start; i++) {
      same(i, i);
    }
    middle(was, is, start, was.length - tail, is.length - tail);
    for (int i = tail; i > 0; i--) {
      same(was.length - i, is.length - i);
    }
  }

  private static void fill(int[] codes, ScoreVersion version, Map<List<Object>, Integer> contents) {
    for (int bar = 0; bar < codes.length; bar++) {
      int next = contents.size();
      codes[bar] = contents.computeIfAbsent(version.content(bar), content -> next);
    }
  }

  private void middle(int[] was, int[] is, int start, int wasEnd, int isEnd) {
    if ((long) (wasEnd - start) * (isEnd - start) > MOST_CELLS) {
      gap(start, wasEnd, start, isEnd);
      return;
    }
    int[][] longest = new int[wasEnd - start + 1][isEnd - start + 1];
    for (int i = wasEnd - 1; i >= start; i--) {
      for (int j = isEnd - 1; j >= start; j--) {
        longest[i - start][j - start] =
            was[i] == is[j]
                ? longest[i - start + 1][j - start + 1] + 1
                : Math.max(longest[i - start + 1][j - start], longest[i - start][j - start + 1]);
      }
    }
    int i = start;
    int j = start;
    int gapI = start;
    int gapJ = start;
    while (i < wasEnd && j < isEnd) {
      if (was[i] == is[j]) {
        gap(gapI, i, gapJ, j);
        same(i++, j++);
        gapI = i;
        gapJ = j;
      } else if (longest[i - start + 1][j - start] >= longest[i - start][j - start + 1]) {
        i++;
      } else {
        j++;
      }
    }
    gap(gapI, wasEnd, gapJ, isEnd);
  }

  /** Bars between two that are the same: changed one by one, and what is left new or gone. */
  private void gap(int wasFrom, int wasTo, int isFrom, int isTo) {
    int both = Math.min(wasTo - wasFrom, isTo - isFrom);
    PartShifts shifts = new PartShifts();
    for (int k = 0; k < both; k++) {
      shifts.add(before.holds(wasFrom + k), now.holds(isFrom + k));
    }
    for (int k = 0; k < both; k++) {
      int i = wasFrom + k;
      int j = isFrom + k;
      add(change(Kind.CHANGED, i, j, BarDifference.words(before.holds(i), now.holds(j), shifts)));
    }
    for (int i = wasFrom + both; i < wasTo; i++) {
      int number = before.bars().get(i).number();
      add(new MusicChange(Kind.GONE, number, number, 0, 0, Pace.NONE, Pace.NONE, ""));
    }
    for (int j = isFrom + both; j < isTo; j++) {
      int number = now.bars().get(j).number();
      add(new MusicChange(Kind.NEW, 0, 0, number, number, Pace.NONE, Pace.NONE, ""));
    }
  }

  private void same(int i, int j) {
    add(change(Kind.SAME, i, j, ""));
  }

  private MusicChange change(Kind kind, int i, int j, String detail) {
    int was = before.bars().get(i).number();
    int is = now.bars().get(j).number();
    return new MusicChange(kind, was, was, is, is, before.pace(i), now.pace(j), detail);
  }

  /** Adds a bar, together with the bars before it where they share its fate. */
  private void add(MusicChange bar) {
    MusicChange last = changes.isEmpty() ? null : changes.get(changes.size() - 1);
    if (last != null && isLike(last, bar)) {
      changes.set(
          changes.size() - 1,
          new MusicChange(
              bar.kind(),
              last.firstBefore(),
              bar.lastBefore(),
              last.firstNow(),
              bar.lastNow(),
              last.paceBefore().plus(bar.paceBefore()),
              last.paceNow().plus(bar.paceNow()),
              bar.detail()));
    } else {
      changes.add(bar);
    }
  }

  private static boolean isLike(MusicChange last, MusicChange bar) {
    if (last.kind() != bar.kind()) {
      return false;
    }
    boolean oneVersion = bar.kind() == Kind.NEW || bar.kind() == Kind.GONE;
    return oneVersion
        || (last.detail().equals(bar.detail())
            && last.longer().signum() == bar.longer().signum()
            && last.lastNow() - last.lastBefore() == bar.lastNow() - bar.lastBefore());
  }
}
