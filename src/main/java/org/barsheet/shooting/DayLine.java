package org.barsheet.shooting;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A line of a day sheet.
 *
 * @param kind what it is
 * @param setup number of the setup; of a break that of what goes on after it
 * @param label its card ({@code 6b}); of a setup its number; of a break ""
 * @param words what to do
 * @param before what is done to the paper first; "" where nothing is
 * @param taken names of its photographs, in order
 * @param begins hours of work since the morning, where the plan gives rates of work
 * @param ends the same when it is done
 */
public record DayLine(
    Kind kind,
    int setup,
    String label,
    String words,
    String before,
    List<String> taken,
    OptionalDouble begins,
    OptionalDouble ends) {

  public DayLine {
    taken = List.copyOf(taken);
  }

  /** What a line is. */
  public enum Kind {
    SETUP,
    TAKE,
    BREAK,
    NIGHT
  }

  /** {@code 0:00 to 0:45}, in hours and minutes of work; "" where no hours are known. */
  public String hours() {
    return begins.isEmpty() || ends.isEmpty() || kind == Kind.BREAK || kind == Kind.NIGHT
        ? ""
        : clock(begins.getAsDouble()) + " to " + clock(ends.getAsDouble());
  }

  private static String clock(double hours) {
    long minutes = Math.round(hours * 60);
    return minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
  }

  /** First photograph of it, or "". */
  public String first() {
    return taken.isEmpty() ? "" : taken.get(0);
  }

  /** Last photograph of it, or "". */
  public String last() {
    return taken.isEmpty() ? "" : taken.get(taken.size() - 1);
  }
}
