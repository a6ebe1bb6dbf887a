package org.barsheet.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.barsheet.pulse.Music;
import org.barsheet.revision.MusicChange.Kind;

/**
 * Two versions of a score laid against each other bar by bar, as {@link Revision} pairs them: bars
 * are the same, changed, new, gone, or the same in another place.
 */
public final class MusicChanges {

  private final ScoreVersion before;
  private final ScoreVersion now;
  private final Revision revision;

  /** The bar before of each bar of now that has one. */
  private final Map<Integer, Integer> was = new TreeMap<>();

  private PartShifts shifts = new PartShifts();
  private final List<MusicChange> changes = new ArrayList<>();

  private MusicChanges(ScoreVersion before, ScoreVersion now, Revision revision) {
    this.before = before;
    this.now = now;
    this.revision = revision;
  }

  /** Every bar of both versions in order, bars of the same fate together. */
  public static List<MusicChange> between(Music before, Music now) {
    Revision revision = Revision.between(ScoreNotes.of(before), ScoreNotes.of(now));
    PartNames names = PartNames.of(revision.before(), revision.now());
    MusicChanges comparison =
        new MusicChanges(
            ScoreVersion.of(before, names::now), ScoreVersion.of(now, name -> name), revision);
    comparison.compare();
    return List.copyOf(comparison.changes);
  }

  /** Parts that have another name, or that only one version has, in sentences. */
  public static List<String> parts(Music before, Music now) {
    return PartNames.of(ScoreNotes.of(before), ScoreNotes.of(now)).sentences();
  }

  private void compare() {
    for (int i = 0; i < before.bars().size(); i++) {
      Optional<Integer> is = revision.mostProbably(i);
      if (is.isPresent()) {
        was.put(is.get(), i);
      }
    }
    int next = 0;
    for (int j = 0; j < now.bars().size(); j++) {
      Integer i = was.get(j);
      if (i == null) {
        int number = now.bars().get(j).number();
        add(new MusicChange(Kind.NEW, 0, 0, number, number, Pace.NONE, Pace.NONE, ""));
      } else {
        goneFrom(next, i);
        next = Math.max(next, i + 1);
        shifts = isSame(i, j) ? new PartShifts() : shiftsFrom(j);
        pair(i, j);
      }
    }
    goneFrom(next, before.bars().size());
  }

  private void goneFrom(int from, int to) {
    for (int i = from; i < to; i++) {
      if (revision.mostProbably(i).isEmpty()) {
        int number = before.bars().get(i).number();
        add(new MusicChange(Kind.GONE, number, number, 0, 0, Pace.NONE, Pace.NONE, ""));
      }
    }
  }

  /** Which parts move up or down in the passage of changed bars around a bar. */
  private PartShifts shiftsFrom(int bar) {
    if (bar > 0 && isChanged(bar - 1)) {
      return shifts;
    }
    PartShifts passage = new PartShifts();
    for (int j = bar; isChanged(j); j++) {
      passage.add(before.holds(Objects.requireNonNull(was.get(j))), now.holds(j));
    }
    return passage;
  }

  private boolean isChanged(int bar) {
    Integer i = was.get(bar);
    return i != null && !isSame(i, bar);
  }

  private boolean isSame(int i, int j) {
    return before.content(i).equals(now.content(j));
  }

  private void pair(int i, int j) {
    if (isSame(i, j)) {
      add(change(Kind.SAME, i, j, ""));
    } else {
      String words = BarDifference.words(before.holds(i), now.holds(j), shifts);
      add(change(Kind.CHANGED, i, j, words));
    }
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
