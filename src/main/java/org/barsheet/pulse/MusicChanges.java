package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.MusicChange.Kind;
import org.barsheet.score.Bar;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/**
 * Two versions of a score laid against each other bar by bar: bars with the same notes are found
 * again (the longest common subsequence of bars), the bars between them are changed, new or gone.
 */
public final class MusicChanges {

  /** Largest table of bars against bars; beyond it the bars that differ count as changed. */
  private static final long MOST_CELLS = 25_000_000;

  private final Version before;
  private final Version now;
  private final List<MusicChange> changes = new ArrayList<>();

  private MusicChanges(Version before, Version now) {
    this.before = before;
    this.now = now;
  }

  /** Every bar of both versions in order, bars of the same fate together. */
  public static List<MusicChange> between(Music before, Music now) {
    MusicChanges comparison = new MusicChanges(new Version(before), new Version(now));
    comparison.compare();
    return List.copyOf(comparison.changes);
  }

  /** Parts that only one version has, in sentences. */
  public static List<String> parts(Music before, Music now) {
    Set<String> was = names(before.score());
    Set<String> is = names(now.score());
    List<String> sentences = new ArrayList<>();
    is.stream().filter(name -> !was.contains(name)).forEach(n -> sentences.add(n + " is new"));
    was.stream().filter(name -> !is.contains(name)).forEach(n -> sentences.add(n + " is gone"));
    return sentences;
  }

  private static Set<String> names(Score score) {
    Set<String> names = new LinkedHashSet<>();
    score.parts().forEach(part -> names.add(part.name()));
    return names;
  }

  /** One version: what each bar holds, part by part. */
  private static final class Version {
    final List<Bar> bars;
    final List<Map<String, List<String>>> holds = new ArrayList<>();
    private final Music music;

    Version(Music music) {
      this.music = music;
      this.bars = music.bars().bars();
      Score score = music.score();
      bars.forEach(bar -> holds.add(new LinkedHashMap<>()));
      for (Note note : score.notes()) {
        Bar bar = music.bars().barAt(note.onTick());
        holds
            .get(bar.index())
            .computeIfAbsent(score.parts().get(note.part()).name(), part -> new ArrayList<>())
            .add(text(note, bar));
      }
      holds.forEach(bar -> bar.values().forEach(Collections::sort));
    }

    private String text(Note note, Bar bar) {
      return quarters(note.onTick() - bar.startTick())
          + " "
          + note.pitch()
          + " "
          + quarters(note.lengthTicks());
    }

    private BigFraction quarters(long ticks) {
      return BigFraction.of(ticks, music.score().ticksPerQuarter());
    }

    /** A bar's notes and its written length. */
    List<Object> content(int bar) {
      return List.of(quarters(bars.get(bar).lengthTicks()), holds.get(bar));
    }

    Seconds length(int bar) {
      return music
          .tempo()
          .secondsAt(bars.get(bar).endTick())
          .minus(music.tempo().secondsAt(bars.get(bar).startTick()));
    }
  }

  private void compare() {
    int[] was = new int[before.bars.size()];
    int[] is = new int[now.bars.size()];
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

  private static void fill(int[] codes, Version version, Map<List<Object>, Integer> contents) {
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
    for (int k = 0; k < both; k++) {
      int i = wasFrom + k;
      int j = isFrom + k;
      add(change(Kind.CHANGED, i, j, who(before.holds.get(i), now.holds.get(j))));
    }
    for (int i = wasFrom + both; i < wasTo; i++) {
      int number = before.bars.get(i).number();
      add(new MusicChange(Kind.GONE, number, number, 0, 0, Seconds.ZERO, ""));
    }
    for (int j = isFrom + both; j < isTo; j++) {
      int number = now.bars.get(j).number();
      add(new MusicChange(Kind.NEW, 0, 0, number, number, Seconds.ZERO, ""));
    }
  }

  private static String who(Map<String, List<String>> was, Map<String, List<String>> is) {
    Set<String> parts = new TreeSet<>(was.keySet());
    parts.addAll(is.keySet());
    parts.removeIf(part -> was.getOrDefault(part, List.of()).equals(is.get(part)));
    return parts.isEmpty() ? " or another length" : " in " + String.join(", ", parts);
  }

  private void same(int i, int j) {
    add(change(Kind.SAME, i, j, ""));
  }

  private MusicChange change(Kind kind, int i, int j, String detail) {
    int was = before.bars.get(i).number();
    int is = now.bars.get(j).number();
    return new MusicChange(kind, was, was, is, is, now.length(j).minus(before.length(i)), detail);
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
              last.longer().plus(bar.longer()),
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
