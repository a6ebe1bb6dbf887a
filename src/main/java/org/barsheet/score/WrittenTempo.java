package org.barsheet.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;

/** The tempo map as the file writes it. */
final class WrittenTempo {

  /** What a file without a tempo means, 120 quarter notes a minute (Standard MIDI File 1.0). */
  private static final int DEFAULT_MICROSECONDS = 500_000;

  private WrittenTempo() {}

  /** A tempo event: microseconds for a quarter note, more than 0. */
  record TempoEvent(long tick, int microseconds) {}

  /** Reads the data of a tempo event; nothing where it says no tempo. */
  static Optional<TempoEvent> read(byte[] data, long tick, long offset, ReadingNotes notes) {
    if (data.length < 3) {
      notes.add(offset, "a tempo of " + data.length + " bytes instead of 3; left out");
      return Optional.empty();
    }
    int microseconds = ((data[0] & 0xFF) << 16) | ((data[1] & 0xFF) << 8) | (data[2] & 0xFF);
    if (microseconds == 0) {
      notes.add(offset, "a tempo of 0 microseconds for a quarter note; left out");
      return Optional.empty();
    }
    return Optional.of(new TempoEvent(tick, microseconds));
  }

  /**
   * The map. Tempos of all tracks count; of two at one tick the later in the file does.
   *
   * @param events in file order
   */
  static TempoMap map(Division division, int ticksPerQuarter, List<TempoEvent> events) {
    List<TempoMap.Change> changes = new ArrayList<>();
    if (division instanceof Division.PerFrame perFrame) {
      changes.add(new TempoMap.Change(0, nominalQuarter(perFrame)));
      return TempoMap.of(ticksPerQuarter, changes);
    }
    changes.add(new TempoMap.Change(0, seconds(DEFAULT_MICROSECONDS)));
    events.stream()
        .sorted(Comparator.comparingLong(TempoEvent::tick))
        .forEach(
            event -> changes.add(new TempoMap.Change(event.tick(), seconds(event.microseconds()))));
    return TempoMap.of(ticksPerQuarter, changes);
  }

  private static Seconds seconds(int microseconds) {
    return Seconds.of(microseconds, 1_000_000);
  }

  /** Half a second by the timecode's count: 15 frames at 29.97. */
  private static Seconds nominalQuarter(Division.PerFrame division) {
    return division
        .rate()
        .frameDuration()
        .times(division.rate().nominal())
        .times(BigFraction.of(1, 2));
  }

  /** Whole number that the file's ticks are multiplied with, see {@link Score}. */
  static int ticksFactor(Division division) {
    if (division instanceof Division.PerQuarter perQuarter) {
      return 32 / greatestCommonDivisor(perQuarter.ticks(), 32);
    }
    return 64 / greatestCommonDivisor(ticksPerSecond((Division.PerFrame) division), 64);
  }

  /** Ticks of the score to the quarter note: a multiple of 32. */
  static int ticksPerQuarter(Division division) {
    int factor = ticksFactor(division);
    if (division instanceof Division.PerQuarter perQuarter) {
      return perQuarter.ticks() * factor;
    }
    return ticksPerSecond((Division.PerFrame) division) * factor / 2;
  }

  private static int ticksPerSecond(Division.PerFrame division) {
    return division.rate().nominal() * division.ticks();
  }

  private static int greatestCommonDivisor(int a, int b) {
    return b == 0 ? a : greatestCommonDivisor(b, a % b);
  }
}
