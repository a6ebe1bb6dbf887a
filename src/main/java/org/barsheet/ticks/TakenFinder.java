package org.barsheet.ticks;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Shoot;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.shooting.Step;
import org.barsheet.ticks.Tick.Source;
import org.jspecify.annotations.Nullable;

/** Works out what is taken and what is left from what people ticked. */
final class TakenFinder {

  private static final double MINUTES_AN_HOUR = 60;

  private final ShootingPlan shooting;
  private final Optional<Shoot> shoot;
  private final Ticked ticked;
  private final Map<String, String> now;
  private final Matching matching;
  private final Map<String, EnumMap<Source, Mark>> said = new LinkedHashMap<>();
  private final Map<String, List<String>> notes = new LinkedHashMap<>();

  TakenFinder(ShootingPlan shooting, Plan plan, Ticked ticked) {
    this.shooting = shooting;
    this.shoot = plan.workshop().shoot();
    this.ticked = ticked;
    this.now = Likeness.of(shooting, plan);
    this.matching = new Matching(now, ticked.earlier());
  }

  Taken find() {
    ticked.ticks().stream()
        .sorted(Comparator.comparing(tick -> tick.at().orElse(LocalDateTime.MIN)))
        .forEach(this::add);
    for (Ticked.Note note : ticked.notes()) {
      matching
          .of(note.photograph(), Optional.empty())
          .ifPresent(
              name -> notes.computeIfAbsent(name, one -> new ArrayList<>()).add(note.text()));
    }
    List<TakenPhotograph> photographs = photographs();
    List<String> disputed =
        now.keySet().stream().filter(name -> isDisputed(said.get(name))).toList();
    List<String> lost =
        ticked.ticks().stream()
            .map(Tick::photograph)
            .filter(matching.lost()::contains)
            .distinct()
            .toList();
    return new Taken(
        photographs,
        matching.renamed(),
        lost,
        disputed,
        ticked.unread(),
        left(photographs),
        Retakes.of(shooting, photographs));
  }

  private void add(Tick tick) {
    matching
        .of(tick.photograph(), tick.likeness())
        .ifPresent(
            name ->
                said.computeIfAbsent(name, one -> new EnumMap<>(Source.class))
                    .put(tick.source(), tick.mark()));
  }

  private static boolean isDisputed(@Nullable Map<Source, Mark> marks) {
    return marks != null
        && marks.containsKey(Source.WORKBOOK)
        && marks.containsKey(Source.PHONE)
        && marks.get(Source.WORKBOOK) != marks.get(Source.PHONE);
  }

  private List<TakenPhotograph> photographs() {
    List<TakenPhotograph> photographs = new ArrayList<>();
    for (Setup setup : shooting.setups()) {
      for (Step step : setup.steps()) {
        for (String name : step.take().taken()) {
          photographs.add(
              new TakenPhotograph(
                  name,
                  setup.number(),
                  step.take().name(),
                  now.getOrDefault(name, ""),
                  mark(name),
                  Optional.ofNullable(said(name).get(Source.WORKBOOK)),
                  notes.getOrDefault(name, List.of())));
        }
      }
    }
    return photographs;
  }

  /** What one source strikes has to be taken again, whatever the other says. */
  private Optional<Mark> mark(String name) {
    Map<Source, Mark> marks = said(name);
    return marks.containsValue(Mark.AGAIN)
        ? Optional.of(Mark.AGAIN)
        : marks.values().stream().findFirst();
  }

  private Map<Source, Mark> said(String name) {
    return said.getOrDefault(name, new EnumMap<>(Source.class));
  }

  private Left left(List<TakenPhotograph> photographs) {
    List<TakenPhotograph> open = photographs.stream().filter(one -> !one.isTaken()).toList();
    int setups = (int) open.stream().map(TakenPhotograph::setup).distinct().count();
    List<LocalDateTime> times =
        ticked.ticks().stream().flatMap(tick -> tick.at().stream()).toList();
    OptionalDouble measured = Pace.of(times);
    OptionalDouble perHour =
        measured.isPresent()
            ? measured
            : shoot
                .map(pace -> OptionalDouble.of(pace.photographsPerHour()))
                .orElse(OptionalDouble.empty());
    OptionalDouble hours = hours(open.size(), setups, perHour);
    OptionalInt days = days(hours);
    return new Left(
        open.size(), setups, hours, days, ends(days, times), perHour, measured.isPresent());
  }

  private OptionalDouble hours(int photographs, int setups, OptionalDouble perHour) {
    double settingUp = shoot.map(Shoot::minutesPerSetup).orElse(0.0) / MINUTES_AN_HOUR;
    return perHour.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(photographs / perHour.getAsDouble() + setups * settingUp);
  }

  private OptionalInt days(OptionalDouble hours) {
    Optional<Double> day = shoot.flatMap(Shoot::hoursPerDay);
    return hours.isEmpty() || day.isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of((int) Math.ceil(hours.getAsDouble() / day.get() - 1e-9));
  }

  private Optional<LocalDate> ends(OptionalInt days, List<LocalDateTime> times) {
    Optional<LocalDate> from =
        times.stream()
            .max(Comparator.naturalOrder())
            .map(LocalDateTime::toLocalDate)
            .or(() -> shoot.flatMap(Shoot::starts).map(first -> first.minusDays(1)));
    return days.isEmpty() ? Optional.empty() : from.map(day -> day.plusDays(days.getAsInt()));
  }
}
