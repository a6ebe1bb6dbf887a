package org.barsheet.score;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.barsheet.score.WrittenBars.MeterEvent;

/**
 * Joins bars that are written in two parts. Notation programs write a bar that a repeat sign splits
 * as two short ones, each with its own time signature; printed bar numbers count it once.
 */
final class SplitBars {

  private final List<Bar> bars;
  private final TreeMap<Long, MeterEvent> events = new TreeMap<>();
  private final int ticksPerQuarter;

  private SplitBars(List<Bar> bars, List<MeterEvent> events, int ticksPerQuarter) {
    this.bars = bars;
    this.ticksPerQuarter = ticksPerQuarter;
    events.forEach(event -> this.events.put(event.tick(), event));
  }

  /**
   * The bars with such pairs joined, and a reading note that says how many.
   *
   * @param bars as the time signatures write them
   * @param events time signatures in order of tick
   */
  static List<Bar> join(
      List<Bar> bars, List<MeterEvent> events, int ticksPerQuarter, ReadingNotes notes) {
    return new SplitBars(bars, events, ticksPerQuarter).join(notes);
  }

  private List<Bar> join(ReadingNotes notes) {
    List<Bar> joined = new ArrayList<>();
    long firstOffset = 0;
    for (int i = 0; i < bars.size(); i++) {
      Bar bar = bars.get(i);
      if (!joined.isEmpty() && isSplit(joined.get(joined.size() - 1), i)) {
        MeterEvent second = events.get(bar.endTick());
        firstOffset = firstOffset == 0 && second != null ? second.offset() : firstOffset;
        joined.add(whole(joined.size(), joined.get(joined.size() - 1).meter(), bar, i));
        i++;
      } else {
        joined.add(counted(joined.size(), bar.meter(), bar.startTick(), bar.endTick()));
      }
    }
    note(bars.size() - joined.size(), firstOffset, notes);
    return joined;
  }

  private static void note(int count, long offset, ReadingNotes notes) {
    if (count > 0) {
      notes.add(
          offset,
          count == 1
              ? "a bar is written in two parts, as at a repeat sign; it is counted as one"
              : count + " bars are written in two parts, as at repeat signs; each counts as one");
    }
  }

  /** Whether two short bars make up one like the whole bar before them and the one after. */
  private boolean isSplit(Bar before, int index) {
    if (index + 2 >= bars.size()) {
      return false;
    }
    Bar first = bars.get(index);
    Bar second = bars.get(index + 1);
    Bar after = bars.get(index + 2);
    long whole = before.meter().ticks(ticksPerQuarter);
    return before.lengthTicks() == whole
        && first.lengthTicks() + second.lengthTicks() == whole
        && after.meter().equals(before.meter())
        && (events.containsKey(second.startTick()) || first.meter().numerator() == 1);
  }

  private Bar whole(int index, Meter meter, Bar first, int place) {
    return counted(index, meter, first.startTick(), bars.get(place + 1).endTick());
  }

  private Bar counted(int index, Meter meter, long start, long end) {
    return Bar.counted(index, meter, start, end, meter.feltBeatTicks(ticksPerQuarter));
  }
}
