package org.barsheet.ticks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.barsheet.timing.Reveals.reveal;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal.Lands;
import org.barsheet.plan.Shoot;
import org.barsheet.plan.Slow;
import org.barsheet.ticks.Tick.Source;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/** What is taken and what is left. The hatch of the artwork and a lamp, ten photographs each. */
class TakenTest {

  private static FilmSheet film(int photographs, String hatch) {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(40);
    for (int bar = 3; bar <= 35; bar += 4) {
      music.motif("glimmer", bar, 1);
    }
    PlanBuilder plan =
        new PlanBuilder(music)
            .shoot(new Shoot(20, 30, Optional.of(LocalDate.of(2026, 3, 2)), Optional.of(4.0)))
            .opening("lamp", "small-lamp")
            .openingAt(hatch, "quay", new Rect(5, 2, 1, 1))
            .panel("", "")
            .field(0, 0, 24)
            .panel(
                "glimmer 1",
                "",
                List.of(reveal("lamp", photographs, 2, Lands.FULLY_OPEN, Slow.NONE)))
            .panel("glimmer 4", "", List.of(reveal(hatch, 10, 2, Lands.FULLY_OPEN, Slow.NONE)))
            .field(0, 0, 24);
    return FilmPlanner.complete(plan.time(), List.of());
  }

  private static final FilmSheet FILM = film(10, "hatch");

  private static Tick tick(String photograph, Mark mark, Source source) {
    return new Tick(photograph, mark, source, Optional.empty(), Optional.empty());
  }

  private static Taken taken(FilmSheet film, List<Tick> ticks) {
    Ticked ticked = new Ticked(ticks, List.of(), List.of(), FILM.ticks().likenesses());
    return Taken.of(film.shooting(), film.plan(), ticked);
  }

  private static List<Tick> ticks(Mark mark, String movement, int from, int to) {
    return IntStream.rangeClosed(from, to)
        .mapToObj(n -> tick("%s %03d".formatted(movement, n), mark, Source.WORKBOOK))
        .toList();
  }

  /** Nobody disagrees: it was ticked before it was looked at. */
  @Test
  void a_photograph_that_looks_wrong_is_to_be_taken_again_though_it_is_ticked() {
    List<Tick> ticks = new ArrayList<>(ticks(Mark.TAKEN, "small-lamp", 0, 4));
    ticks.add(tick("small-lamp 003", Mark.AGAIN, Source.PHOTOGRAPH));
    Taken taken = taken(FILM, ticks);
    assertThat(taken.words()).isEqualTo("4 of 27 photographs taken, 1 to take again");
    assertThat(taken.disputed()).isEmpty();
    assertThat(taken.retakes()).hasSize(1);
  }

  /** 27 photographs in two setups, 5 taken: 22 at 20 an hour and two setups of half an hour. */
  @Test
  void hours_and_days_left_follow_from_the_pace_the_plan_tells() {
    Taken taken = taken(FILM, ticks(Mark.TAKEN, "small-lamp", 0, 4));
    assertThat(taken.photographs()).hasSize(27);
    assertThat(taken.words()).isEqualTo("5 of 27 photographs taken");
    assertThat(taken.left().hours().orElseThrow()).isCloseTo(22 / 20.0 + 1, offset(1e-9));
    assertThat(taken.left().days()).hasValue(1);
    assertThat(taken.left().ends()).contains(LocalDate.of(2026, 3, 2));
    assertThat(taken.left().measured()).isFalse();
    assertThat(LeftWords.of(taken))
        .isEqualTo(
            "5 of 27 photographs taken. Left: 22 photographs in 2 setups, 2.1 hours, 1 day, done on"
                + " 2026-03-02.");
    List<Tick> more = new ArrayList<>();
    FILM.ticks().likenesses().keySet().stream()
        .limit(17)
        .forEach(name -> more.add(tick(name, Mark.TAKEN, Source.WORKBOOK)));
    assertThat(LeftWords.of(taken(FILM, more))).contains("10 photographs in 1 setup, 1 hour, ");
  }

  /** Two minutes each, and a break of an hour that doesn't count. */
  @Test
  void from_ten_times_on_the_pace_is_measured_and_dates_count_from_the_last() {
    List<Tick> ticks = new ArrayList<>();
    LocalDateTime at = LocalDateTime.of(2026, 3, 4, 9, 0);
    for (int n = 0; n <= 9; n++) {
      at = at.plusMinutes(n == 5 ? 60 : 2);
      String name = "small-lamp %03d".formatted(n);
      ticks.add(
          new Tick(
              name,
              Mark.TAKEN,
              Source.PHONE,
              FILM.ticks().photograph(name).map(TakenPhotograph::likeness),
              Optional.of(at)));
    }
    Taken taken = taken(FILM, ticks);
    assertThat(taken.left().perHour().orElseThrow()).isCloseTo(30, offset(1e-9));
    assertThat(taken.left().measured()).isTrue();
    assertThat(taken.left().ends()).contains(LocalDate.of(2026, 3, 5));
    assertThat(taken(FILM, ticks.subList(0, 9)).left().measured()).isFalse();
    assertThat(LeftWords.of(taken)).endsWith("(pace measured: 30 photographs an hour).");
  }

  @Test
  void where_workbook_and_phone_disagree_both_are_told_and_nothing_is_taken() {
    Taken taken =
        taken(
            FILM,
            List.of(
                tick("hatch 003", Mark.TAKEN, Source.WORKBOOK),
                tick("hatch 003", Mark.AGAIN, Source.PHONE)));
    assertThat(taken.disputed()).containsExactly("hatch 003");
    assertThat(taken.done()).isZero();
    assertThat(TakenFindings.of(taken).get(0).sentence())
        .isEqualTo("workbook and phone disagree on hatch 003: one says taken, the other again");
  }

  /** The flap stands at 8, so 3 to 5 want a fresh one, and the closed plate with it. */
  @Test
  void a_retake_of_what_the_flap_has_passed_wants_a_fresh_one() {
    List<Tick> ticks = new ArrayList<>(ticks(Mark.TAKEN, "small-lamp", 0, 8));
    ticks.addAll(ticks(Mark.AGAIN, "small-lamp", 3, 5));
    Retake retake = taken(FILM, ticks).retakes().get(0);
    assertThat(retake.which()).isEqualTo("small-lamp 003 to 005");
    assertThat(retake.fresh()).containsExactly("lamp");
    assertThat(retake.startsAt()).isEqualTo("small-lamp 002");
    assertThat(retake.plates()).containsExactly("small-lamp 000");
    assertThat(retake.returns()).isFalse();
  }

  /** Nobody takes again what lies between, nor the plates after it. */
  @Test
  void a_retake_names_no_photograph_that_may_stay() {
    List<Tick> ticks = new ArrayList<>(ticks(Mark.AGAIN, "small-lamp", 2, 3));
    ticks.addAll(ticks(Mark.AGAIN, "small-lamp", 7, 7));
    ticks.add(tick("small-lamp clean", Mark.AGAIN, Source.WORKBOOK));
    assertThat(taken(FILM, ticks).retakes().get(0).which())
        .isEqualTo("small-lamp 002 to 003, small-lamp 007, small-lamp clean");
  }

  @Test
  void a_retake_of_the_photograph_just_taken_wants_nothing_new() {
    List<Tick> ticks = new ArrayList<>(ticks(Mark.TAKEN, "small-lamp", 0, 8));
    ticks.add(tick("small-lamp 008", Mark.AGAIN, Source.WORKBOOK));
    Retake retake = taken(FILM, ticks).retakes().get(0);
    assertThat(retake.words())
        .isEqualTo(
            "the same flap will do: it has gone no further; set it as in small-lamp 007 and compare"
                + " on screen");
    assertThat(retake.plates()).isEmpty();
  }

  @Test
  void a_retake_after_a_later_setup_returns_to_a_position_and_wants_its_plates_again() {
    List<Tick> ticks = new ArrayList<>(ticks(Mark.TAKEN, "small-lamp", 0, 10));
    ticks.add(tick("small-lamp clean", Mark.TAKEN, Source.WORKBOOK));
    ticks.add(tick("small-lamp 010", Mark.AGAIN, Source.WORKBOOK));
    ticks.add(tick("hatch 000", Mark.TAKEN, Source.WORKBOOK));
    Retake retake = taken(FILM, ticks).retakes().get(0);
    assertThat(retake.returns()).isTrue();
    assertThat(retake.plates()).containsExactly("small-lamp 000", "small-lamp clean");
  }

  @Test
  void a_plate_at_rest_that_is_taken_again_tells_the_flaps_it_wants_closed() {
    List<Tick> ticks = new ArrayList<>(ticks(Mark.TAKEN, "hatch", 0, 10));
    ticks.add(tick("artwork as in panel 1", Mark.AGAIN, Source.WORKBOOK));
    assertThat(taken(FILM, ticks).retakes().get(0).fresh()).containsExactly("lamp", "hatch");
    List<Tick> atOnce = List.of(tick("artwork as in panel 1", Mark.AGAIN, Source.WORKBOOK));
    assertThat(taken(FILM, atOnce).retakes().get(0).words())
        .isEqualTo("nothing has to be cut afresh");
  }

  /** Twenty photographs of the lamp show those of ten again, under even numbers. */
  @Test
  void a_change_of_the_plan_says_which_ticks_hold_under_new_names() {
    FilmSheet longer = film(20, "trapdoor");
    List<Tick> ticks = new ArrayList<>(ticks(Mark.TAKEN, "small-lamp", 0, 10));
    ticks.addAll(ticks(Mark.TAKEN, "hatch", 0, 10));
    Taken taken = taken(longer, ticks);
    assertThat(taken.renamed())
        .containsEntry("small-lamp 003", "small-lamp 006")
        .containsEntry("hatch 007", "trapdoor 007");
    assertThat(taken.lost()).isEmpty();
    assertThat(taken.done()).isEqualTo(22);
    Taken other = taken(film(7, "hatch"), ticks);
    assertThat(other.lost()).contains("small-lamp 001").doesNotContain("small-lamp 000");
  }

  /** Ticking, striking and replanning, again and again: every tick is held or told as lost. */
  @Test
  void whatever_happens_no_tick_is_lost_silently() {
    for (long seed = 1; seed <= 30; seed++) {
      Random random = new Random(seed);
      FilmSheet before = film(5 + random.nextInt(16), "hatch");
      Map<String, Mark> said = new HashMap<>();
      for (String name : before.ticks().likenesses().keySet()) {
        if (random.nextBoolean()) {
          said.put(name, random.nextInt(4) == 0 ? Mark.AGAIN : Mark.TAKEN);
        }
      }
      List<Tick> ticks = new ArrayList<>();
      said.forEach((name, mark) -> ticks.add(tick(name, mark, Source.WORKBOOK)));
      FilmSheet now = film(5 + random.nextInt(16), random.nextBoolean() ? "hatch" : "trapdoor");
      Taken taken =
          Taken.of(
              now.shooting(),
              now.plan(),
              new Ticked(ticks, List.of(), List.of(), before.ticks().likenesses()));
      assertThat(taken.done() + taken.again() + taken.lost().size())
          .as("seed %d", seed)
          .isEqualTo(said.size());
      Map<String, String> likenesses = before.ticks().likenesses();
      for (Map.Entry<String, Mark> tick : said.entrySet()) {
        String name = taken.renamed().getOrDefault(tick.getKey(), tick.getKey());
        boolean holds = !taken.lost().contains(tick.getKey());
        if (holds) {
          assertThat(taken.photograph(name).map(TakenPhotograph::likeness))
              .contains(likenesses.get(tick.getKey()));
          assertThat(taken.inWorkbook(List.of(name))).containsValue(tick.getValue());
        } else {
          assertThat(now.ticks().likenesses()).doesNotContainValue(likenesses.get(tick.getKey()));
        }
      }
    }
  }
}
