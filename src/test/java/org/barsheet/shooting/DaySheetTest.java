package org.barsheet.shooting;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.barsheet.shooting.DayLine.Kind;
import org.junit.jupiter.api.Test;

/** The demo's days, one sheet each. */
class DaySheetTest {

  private static final FilmSheet FILM =
      Production.film(Path.of("scores", "lamplighters-quay.yaml"), Progress.SILENT);
  private static final ShootingPlan SHOOTING = FILM.shooting();

  private static List<DaySheet> sheets() {
    return SHOOTING.days().stream().map(day -> DaySheet.of(SHOOTING, day)).toList();
  }

  @Test
  void the_days_together_take_every_photograph_once_in_the_order_of_work() {
    List<String> wanted = new ArrayList<>();
    for (Setup setup : SHOOTING.setups()) {
      setup.steps().forEach(step -> wanted.addAll(step.take().taken()));
    }
    List<String> taken = new ArrayList<>();
    sheets().forEach(sheet -> sheet.lines().forEach(line -> taken.addAll(line.taken())));
    assertThat(taken).isEqualTo(wanted).hasSize(SHOOTING.photographs());
  }

  @Test
  void no_stretch_of_work_is_longer_than_two_hours_and_a_little() {
    for (DaySheet sheet : sheets()) {
      double rested = 0;
      for (DayLine line : sheet.lines()) {
        if (line.kind() == Kind.BREAK) {
          rested = line.begins().orElseThrow();
        } else {
          assertThat(line.ends().orElseThrow() - rested).as(line.words()).isLessThan(2.4);
        }
      }
    }
  }

  @Test
  void no_movement_of_the_demo_is_parted_by_a_night() {
    assertThat(SHOOTING.days()).hasSize(4);
    assertThat(SHOOTING.days().stream().flatMap(day -> day.stretches().stream()))
        .noneMatch(Stretch::goesOn);
    assertThat(sheets().get(1).title()).isEqualTo("day 2, Tuesday, March 3, 2026");
  }

  @Test
  void cautions_fit_the_day_and_end_with_local_codes() {
    assertThat(sheets().get(0).cautions()).anyMatch(one -> one.startsWith("Thread and wire"));
    assertThat(sheets().get(3).cautions()).noneMatch(one -> one.startsWith("Thread and wire"));
    assertThat(sheets())
        .allMatch(
            sheet -> sheet.cautions().get(sheet.cautions().size() - 1).contains("local codes"));
  }
}
