package org.barsheet.shooting;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A day of work on one page: setups and photographs in order, with hours and breaks.
 *
 * @param title {@code day 2, Tuesday, March 3, 2026}
 * @param lines in the order of work
 * @param cautions that fit this day, in sentences
 */
public record DaySheet(String title, List<DayLine> lines, List<String> cautions) {

  /** So many hours of work without a break are enough; common practice, no source. */
  private static final double HOURS_TO_A_BREAK = 2;

  /** What is nearly done is finished first. */
  private static final double A_LITTLE = 0.35;

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEEE, MMMM d, uuuu", Locale.US);

  private static final String BREAK =
      "Break, 15 minutes: eyes, back, a drink. Lamps off or watched; nothing on the set is touched.";
  private static final String MEAL =
      "Meal and a walk, 45 minutes. Lamps off or watched; nothing on the set is touched.";

  public DaySheet {
    lines = List.copyOf(lines);
    cautions = List.copyOf(cautions);
  }

  /** The sheet of a day. */
  public static DaySheet of(ShootingPlan shooting, WorkDay day) {
    return new DaySheet(title(day), new Lines(shooting).of(day), cautions(shooting, day));
  }

  /** {@code day 2, Tuesday, March 3, 2026}. */
  private static String title(WorkDay day) {
    return day.name() + day.date().map(date -> ", " + DATE.format(date)).orElse("");
  }

  /** Photographs taken on it. */
  public int photographs() {
    return lines.stream().mapToInt(line -> line.taken().size()).sum();
  }

  /** Those of the day's setups, and what a long day wants. */
  private static List<String> cautions(ShootingPlan shooting, WorkDay day) {
    Set<String> cautions = new LinkedHashSet<>();
    day.stretches()
        .forEach(stretch -> cautions.addAll(setup(shooting, stretch.setup()).cautions()));
    if (day.taken().size() > SetupCautions.LONG_RUN) {
      cautions.add(SetupCautions.LONG);
    }
    cautions.remove(SetupCautions.CABLES);
    cautions.add(SetupCautions.CABLES);
    return List.copyOf(cautions);
  }

  private static Setup setup(ShootingPlan shooting, int number) {
    return shooting.setups().get(number - 1);
  }

  /** Writes the lines of a day, with a break where two hours are over. */
  private static final class Lines {
    private final ShootingPlan shooting;
    private final List<DayLine> lines = new ArrayList<>();
    private double rested;
    private int breaks;

    Lines(ShootingPlan shooting) {
      this.shooting = shooting;
    }

    List<DayLine> of(WorkDay day) {
      for (Stretch stretch : day.stretches()) {
        if (stretch.step().isEmpty()) {
          setUp(stretch);
        } else {
          take(stretch, stretch.step().get());
        }
      }
      return lines;
    }

    private void setUp(Stretch stretch) {
      pauseBefore(stretch);
      Setup setup = setup(shooting, stretch.setup());
      lines.add(
          new DayLine(
              DayLine.Kind.SETUP,
              stretch.setup(),
              Integer.toString(stretch.setup()),
              "set up " + (setup.runs().isEmpty() ? "the whole artwork" : setup.model().name()),
              "",
              List.of(),
              stretch.begins(),
              stretch.ends()));
    }

    private void take(Stretch stretch, Step step) {
      pauseBefore(stretch);
      Setup setup = setup(shooting, stretch.setup());
      int from = 0;
      List<String> names = stretch.taken();
      while (from < names.size()) {
        int to = pauseWithin(stretch, from);
        String goesOn = from > 0 || stretch.wentOn() ? ", going on" : "";
        lines.add(
            new DayLine(
                DayLine.Kind.TAKE,
                stretch.setup(),
                setup.label(step.take()),
                (step.take() instanceof Setup.Run ? step.take().name() : "artwork at rest")
                    + goesOn,
                goesOn.isEmpty() ? String.join("\n", StepWords.all(step)) : "",
                names.subList(from, to),
                at(stretch, from),
                at(stretch, to)));
        if (to < names.size()) {
          pause(stretch.setup(), at(stretch, to).orElseThrow());
        }
        from = to;
      }
      if (stretch.goesOn()) {
        lines.add(
            new DayLine(
                DayLine.Kind.NIGHT,
                stretch.setup(),
                "",
                StepWords.night(stretch),
                "",
                List.of(),
                stretch.ends(),
                stretch.ends()));
      }
    }

    private void pauseBefore(Stretch stretch) {
      boolean due =
          stretch.begins().isPresent()
              && stretch.begins().getAsDouble() - rested >= HOURS_TO_A_BREAK * 0.75
              && stretch.ends().getAsDouble() - rested > HOURS_TO_A_BREAK;
      if (due) {
        pause(stretch.setup(), stretch.begins().getAsDouble());
      }
    }

    /** How many of its photographs are taken before the next break. */
    private int pauseWithin(Stretch stretch, int from) {
      int all = stretch.taken().size();
      if (stretch.begins().isEmpty()
          || at(stretch, all).orElseThrow() - rested <= HOURS_TO_A_BREAK + A_LITTLE) {
        return all;
      }
      int to = from + 1;
      while (to < all && at(stretch, to + 1).orElseThrow() - rested <= HOURS_TO_A_BREAK) {
        to++;
      }
      return to;
    }

    private void pause(int setup, double at) {
      rested = at;
      breaks++;
      lines.add(
          new DayLine(
              DayLine.Kind.BREAK,
              setup,
              "",
              breaks % 2 == 0 ? MEAL : BREAK,
              "",
              List.of(),
              OptionalDouble.of(at),
              OptionalDouble.of(at)));
    }

    /** When so many photographs of a stretch are taken. */
    private static OptionalDouble at(Stretch stretch, int photographs) {
      if (stretch.begins().isEmpty()) {
        return stretch.begins();
      }
      double begins = stretch.begins().getAsDouble();
      double whole = stretch.ends().getAsDouble() - begins;
      return OptionalDouble.of(begins + whole * photographs / stretch.taken().size());
    }
  }
}
