package org.barsheet.ticks;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalDouble;

/** How fast photographs are really taken, from the times of ticks. */
final class Pace {

  /** Fewer times than this tell nothing. */
  static final int LEAST_TIMES = 10;

  /** What takes longer than this between two photographs is a setup, a break or a night. */
  private static final Duration BREAK = Duration.ofMinutes(20);

  private static final double SECONDS_AN_HOUR = 3600;

  private Pace() {}

  /** Photographs an hour, breaks left out; empty from fewer than ten times. */
  static OptionalDouble of(List<LocalDateTime> times) {
    List<LocalDateTime> sorted = times.stream().distinct().sorted().toList();
    if (sorted.size() < LEAST_TIMES) {
      return OptionalDouble.empty();
    }
    long seconds = 0;
    int count = 0;
    for (int next = 1; next < sorted.size(); next++) {
      Duration gap = Duration.between(sorted.get(next - 1), sorted.get(next));
      if (gap.compareTo(BREAK) <= 0) {
        seconds += gap.toSeconds();
        count++;
      }
    }
    return seconds == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(count * SECONDS_AN_HOUR / (double) seconds);
  }
}
