package org.barsheet.changes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.Map;
import java.util.Optional;
import org.barsheet.changes.LaidFilm.LaidBar;
import org.barsheet.revision.Revision;
import org.barsheet.timing.PanelChange;

/**
 * Bars in a row that begin later by the same number of frames than they did.
 *
 * @param firstBar printed number of the first of them
 * @param lastBar printed number of the last of them
 * @param frames how much later they begin; negative if earlier, 0 if they lie where they did
 */
public record BarShift(int firstBar, int lastBar, long frames) {

  /**
   * The bars of now against the bars they were, as the notes tell; without notes against the bars
   * of the same number, a number played again against the same time round. Bars that are new, gone
   * or cannot be told apart are left out.
   */
  static List<BarShift> between(
      List<LaidBar> before, List<LaidBar> now, Optional<Revision> revision) {
    return revision.isPresent() ? byNotes(before, now, revision.get()) : byNumber(before, now);
  }

  private static List<BarShift> byNotes(
      List<LaidBar> before, List<LaidBar> now, Revision revision) {
    Map<Integer, LaidBar> was = new HashMap<>();
    for (int i = 0; i < before.size(); i++) {
      LaidBar bar = before.get(i);
      revision.ofBar(i).sure().ifPresent(is -> was.put(is, bar));
    }
    List<BarShift> shifts = new ArrayList<>();
    for (int j = 0; j < now.size(); j++) {
      LaidBar same = was.get(j);
      if (same != null) {
        add(shifts, now.get(j).number(), now.get(j).startFrame() - same.startFrame());
      }
    }
    return List.copyOf(shifts);
  }

  private static List<BarShift> byNumber(List<LaidBar> before, List<LaidBar> now) {
    Map<String, LaidBar> was = new HashMap<>();
    Map<Integer, Integer> timesBefore = new HashMap<>();
    before.forEach(bar -> was.put(key(bar, timesBefore), bar));
    Map<Integer, Integer> timesNow = new HashMap<>();
    List<BarShift> shifts = new ArrayList<>();
    for (LaidBar bar : now) {
      LaidBar same = was.get(key(bar, timesNow));
      if (same != null) {
        add(shifts, bar.number(), bar.startFrame() - same.startFrame());
      }
    }
    return List.copyOf(shifts);
  }

  private static String key(LaidBar bar, Map<Integer, Integer> times) {
    return bar.number() + " " + times.merge(bar.number(), 1, Integer::sum);
  }

  private static void add(List<BarShift> shifts, int bar, long frames) {
    BarShift last = shifts.isEmpty() ? null : shifts.get(shifts.size() - 1);
    if (last != null && last.frames == frames) {
      shifts.set(shifts.size() - 1, new BarShift(last.firstBar, bar, frames));
    } else {
      shifts.add(new BarShift(bar, bar, frames));
    }
  }

  /** Runs that all move later, or all earlier, told together: one sentence a run. */
  static List<String> sentences(List<BarShift> shifts) {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < shifts.size(); ) {
      int end = i + 1;
      while (end < shifts.size()
          && Long.signum(shifts.get(end).frames) == Long.signum(shifts.get(i).frames)) {
        end++;
      }
      if (shifts.get(i).frames != 0) {
        sentences.add(sentence(shifts.subList(i, end)));
      }
      i = end;
    }
    return sentences;
  }

  private static String sentence(List<BarShift> alike) {
    int first = alike.get(0).firstBar;
    int last = alike.get(alike.size() - 1).lastBar;
    LongSummaryStatistics frames =
        alike.stream().mapToLong(shift -> Math.abs(shift.frames)).summaryStatistics();
    String bars =
        first == last
            ? "bar " + first + " now begins "
            : "bars " + first + " to " + last + " now begin ";
    long sign = Long.signum(alike.get(0).frames);
    return bars
        + (frames.getMin() == frames.getMax() ? "" : frames.getMin() + " to ")
        + PanelChange.later(sign * frames.getMax());
  }
}
