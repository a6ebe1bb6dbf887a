package org.barsheet.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** The bars as the file's time signatures write them. */
final class WrittenBars {

  /** Most felt beats of one piece: at 120 a minute more than five days. */
  static final int MOST_BEATS = 1_000_000;

  private static final int SMALLEST_USUAL_NOTE = 32;

  private final ScoreFile file;
  private final int ticksPerQuarter;
  private final List<Bar> bars = new ArrayList<>();
  private final TreeMap<Long, MeterEvent> cutBars = new TreeMap<>();
  private int beats;

  /** A time signature. */
  record MeterEvent(long tick, Meter meter, long offset) {}

  private WrittenBars(ScoreFile file, int ticksPerQuarter) {
    this.file = file;
    this.ticksPerQuarter = ticksPerQuarter;
  }

  /** Reads the data of a time signature; nothing where it says no meter. */
  static Optional<MeterEvent> read(byte[] data, long tick, long offset, ReadingNotes notes) {
    if (data.length < 2) {
      notes.add(offset, "a time signature of " + data.length + " bytes instead of 4; left out");
      return Optional.empty();
    }
    int numerator = data[0] & 0xFF;
    int power = data[1] & 0xFF;
    if (numerator == 0 || power > 7) {
      String written = power > 7 ? numerator + "/2^" + power : numerator + "/" + (1 << power);
      notes.add(offset, "a time signature of " + written + " isn't possible; left out");
      return Optional.empty();
    }
    Meter meter = new Meter(numerator, 1 << power);
    if (data.length < 4) {
      notes.add(
          offset,
          "a time signature of " + data.length + " bytes instead of 4; it is read as " + meter);
    } else if (meter.denominator() > SMALLEST_USUAL_NOTE) {
      notes.add(offset, "a meter of " + meter + " is unusual; bars are counted as it says");
    }
    return Optional.of(new MeterEvent(tick, meter, offset));
  }

  /**
   * The bars of a piece, through the one in which its last note ends.
   *
   * @param events in file order; of two at one tick the later counts
   * @param lastTick the last tick that has to lie in a bar
   */
  static BarGrid grid(
      ScoreFile file,
      List<MeterEvent> events,
      int ticksPerQuarter,
      long lastTick,
      ReadingNotes notes) {
    WrittenBars written = new WrittenBars(file, ticksPerQuarter);
    List<MeterEvent> ordered = inOrder(events);
    written.addAll(ordered, lastTick);
    boolean pickup = written.beginsWithPickup();
    List<Bar> joined = SplitBars.join(written.bars, ordered, ticksPerQuarter, notes);
    BarGrid grid = new BarGrid(joined).numberedFrom(pickup ? 0 : 1);
    written.cutBars.forEach((tick, event) -> noteCut(grid.barAt(tick), event, notes));
    return grid;
  }

  private static List<MeterEvent> inOrder(List<MeterEvent> events) {
    List<MeterEvent> sorted = new ArrayList<>();
    sorted.add(new MeterEvent(0, Meter.COMMON, 0));
    events.stream()
        .sorted(Comparator.comparingLong(MeterEvent::tick))
        .forEach(
            event -> {
              if (sorted.get(sorted.size() - 1).tick() == event.tick()) {
                sorted.remove(sorted.size() - 1);
              }
              sorted.add(event);
            });
    return sorted;
  }

  private void addAll(List<MeterEvent> events, long lastTick) {
    for (int i = 0; i < events.size(); i++) {
      boolean last = i + 1 == events.size();
      long until = last ? Long.MAX_VALUE : events.get(i + 1).tick();
      addBars(events.get(i), until, lastTick);
      if (!last && bars.get(bars.size() - 1).endTick() == until && isCut(bars.size() - 1)) {
        cutBars.put(bars.get(bars.size() - 1).startTick(), events.get(i + 1));
      }
    }
  }

  private void addBars(MeterEvent event, long until, long lastTick) {
    Meter meter = event.meter();
    long start = event.tick();
    while (start < until && start <= lastTick) {
      long end = Math.min(start + meter.ticks(ticksPerQuarter), until);
      Bar bar = Bar.counted(bars.size(), meter, start, end, meter.feltBeatTicks(ticksPerQuarter));
      beats += bar.beatTicks().size();
      if (beats > MOST_BEATS) {
        throw file.refused(
            event.offset(),
            "the music would have more than " + MOST_BEATS + " beats",
            "check the times in the file: one late note can cause this");
      }
      bars.add(bar);
      start = bar.endTick();
    }
  }

  private static void noteCut(Bar bar, MeterEvent next, ReadingNotes notes) {
    if (bar.endTick() > next.tick()) {
      return;
    }
    notes.add(
        next.offset(),
        "the meter changes to "
            + next.meter()
            + " inside bar "
            + bar.number()
            + " of "
            + bar.meter()
            + "; that bar is short");
  }

  private boolean isCut(int index) {
    Bar bar = bars.get(index);
    return bar.lengthTicks() < bar.meter().ticks(ticksPerQuarter);
  }

  /**
   * Whether the first bar is cut short, or is the only one of a meter smaller than the next, which
   * then stays for more than a bar.
   */
  private boolean beginsWithPickup() {
    if (bars.size() < 2) {
      return false;
    }
    Bar first = bars.get(0);
    Bar second = bars.get(1);
    boolean shorter = first.lengthTicks() < second.lengthTicks();
    boolean nextStays = bars.size() == 2 || bars.get(2).meter().equals(second.meter());
    return isCut(0) || (shorter && nextStays);
  }
}
