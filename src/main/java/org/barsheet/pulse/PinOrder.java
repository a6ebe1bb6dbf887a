package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.pulse.TempoRequest.Pin;

/** Pins in order, checked against each other. */
final class PinOrder {

  /** Shortest and longest bar that two pins may ask of playing, in seconds. */
  private static final double SHORTEST_BAR = 0.4;

  private static final double LONGEST_BAR = 16;

  /** A pin between even neighbors is at odds if it makes written music so many times slower. */
  static final double ODD_IN_WRITTEN = 1.08;

  /** And so many times, playing. */
  static final double ODD_IN_PLAYING = 1.35;

  private PinOrder() {}

  /** Pins in order of their bars. */
  static List<Pin> of(List<Pin> pins) {
    return pins.stream().sorted(Comparator.comparingInt(Pin::bar).thenComparing(Pin::at)).toList();
  }

  /**
   * What is wrong with pins whatever the music: each time that is negative and each two that clash.
   *
   * @param ordered in order of their bars
   */
  static List<Problem> problems(List<Pin> ordered) {
    List<Problem> problems = new ArrayList<>();
    for (Pin pin : ordered) {
      if (pin.at().signum() < 0) {
        problems.add(
            problem(
                text(pin) + " is before the recording begins",
                "count seconds from the recording's first sample"));
      }
    }
    for (int i = 1; i < ordered.size(); i++) {
      addClash(ordered.get(i - 1), ordered.get(i), problems);
    }
    return problems;
  }

  private static void addClash(Pin first, Pin second, List<Problem> problems) {
    String both = text(first) + " and " + text(second);
    if (first.bar() == second.bar()) {
      problems.add(problem(both + " pin the same bar twice", "keep one of them"));
    } else if (first.at().compareTo(second.at()) >= 0) {
      problems.add(problem(both + " run backwards", "correct one of the two times"));
    }
  }

  /**
   * Checks pins against playing that has no bars yet.
   *
   * @param pins in order
   * @param endSeconds when the last note begins
   * @throws InputException naming each pin after the end and each two that leave bars no playable
   *     length
   */
  static void checkPlayable(List<Pin> pins, double endSeconds) {
    List<Problem> problems = new ArrayList<>(problems(pins));
    refuse(problems);
    for (Pin pin : pins) {
      if (pin.at().toDouble() > endSeconds) {
        problems.add(
            problem(
                text(pin) + " is after the last note",
                "pin bars that begin while the music plays"));
      }
    }
    for (int i = 1; i < pins.size(); i++) {
      Pin first = pins.get(i - 1);
      Pin second = pins.get(i);
      double bar = barSeconds(first, second);
      if (bar < SHORTEST_BAR || bar > LONGEST_BAR) {
        problems.add(
            problem(
                String.format(
                    Locale.ROOT,
                    "between %s and %s a bar would last %.2f s",
                    text(first),
                    text(second),
                    bar),
                "correct one of the two times, or the bar numbers"));
      }
    }
    refuse(problems);
  }

  /**
   * Pins that contradict their neighbors: without one the music would run evenly there, with it far
   * slower on one side and faster on the other.
   *
   * @param pins in order
   * @param positions of the pins in the music, in bars or written seconds
   * @param odd how many times slower is far slower
   */
  static List<Pin> atOdds(List<Pin> pins, double[] positions, double odd) {
    List<Pin> found = new ArrayList<>();
    for (int i = 1; i + 1 < pins.size(); i++) {
      double without = length(pins, positions, i - 1, i + 1);
      double before = length(pins, positions, i - 1, i) / without;
      double after = length(pins, positions, i, i + 1) / without;
      boolean uneven = Math.max(before, after) > odd && Math.min(before, after) < 1 / odd;
      if (uneven
          && isEven(pins, positions, i - 2, i - 1, without * odd, without / odd)
          && isEven(pins, positions, i + 1, i + 2, without * odd, without / odd)) {
        found.add(pins.get(i));
      }
    }
    return found;
  }

  /** How long a bar lasts on average from one pin to a later one. */
  static double barSeconds(Pin first, Pin last) {
    return last.at().minus(first.at()).toDouble() / (last.bar() - first.bar());
  }

  private static boolean isEven(
      List<Pin> pins, double[] positions, int from, int to, double most, double least) {
    if (from < 0 || to >= pins.size()) {
      return true;
    }
    double length = length(pins, positions, from, to);
    return length < most && length > least;
  }

  /** Seconds to one step of the music between two pins. */
  private static double length(List<Pin> pins, double[] positions, int from, int to) {
    double seconds = pins.get(to).at().minus(pins.get(from).at()).toDouble();
    return seconds / (positions[to] - positions[from]);
  }

  static Problem problem(String sentence, String remedy) {
    return Problem.at("", "pins", sentence, remedy);
  }

  static void refuse(List<Problem> problems) {
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  static String text(Pin pin) {
    return "bar " + pin.bar() + " at " + pin.at().toDecimal(3).toPlainString() + " s";
  }
}
