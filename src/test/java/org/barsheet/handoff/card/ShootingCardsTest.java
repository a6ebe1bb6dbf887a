package org.barsheet.handoff.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.assertj.core.data.Offset;
import org.barsheet.clock.FrameRate;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.DemoFilm;
import org.barsheet.handoff.SampleFilm;
import org.barsheet.input.InputException;
import org.barsheet.plan.Film;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Shoot;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.Step;
import org.barsheet.timing.PlanBuilder;
import org.barsheet.timing.RandomPlans;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** Cards read back by a strict XML parser, held against the film they are printed from. */
class ShootingCardsTest {

  private static final FilmSheet DEMO = DemoFilm.sheet();
  private static final PrintedPage CARDS = page(DEMO);

  private static PrintedPage page(FilmSheet film) {
    return PrintedPage.of(ShootingCards.page(film).replace("<!DOCTYPE html>\n", ""));
  }

  /** The rows of photographs, by the permanent names they bear. */
  private static List<Element> rows(PrintedPage page) {
    return page.all("tr").stream().filter(row -> row.hasAttribute("id")).toList();
  }

  private static List<String> cells(Element row) {
    return PrintedPage.all(row, "td").stream().map(Element::getTextContent).toList();
  }

  /** Plates of the artwork at rest stand among the movements, when they must be taken. */
  @Test
  void every_photograph_has_one_row_in_the_order_of_work() {
    List<String> wanted = new ArrayList<>();
    for (Setup setup : DEMO.shooting().setups()) {
      for (Step step : setup.steps()) {
        if (step.take() instanceof Setup.Run run) {
          run.movement()
              .photographs()
              .forEach(photograph -> wanted.add(photograph.photograph().name()));
        } else {
          wanted.add(step.take().name());
        }
      }
    }
    assertThat(rows(CARDS)).extracting(row -> row.getAttribute("id")).isEqualTo(wanted);
    assertThat(wanted).doesNotHaveDuplicates().hasSizeGreaterThan(200);
  }

  /** Setup 6 takes two movements and plates; its hours are theirs and the setting up. */
  @Test
  void the_cards_of_one_setup_are_told_apart_and_share_its_hours() {
    Setup setup =
        DEMO.shooting().setups().stream().filter(one -> one.runs().size() == 2).findFirst().get();
    Shoot pace = DEMO.plan().workshop().shoot().orElseThrow();
    double taking = setup.runs().stream().mapToDouble(run -> run.hours().orElseThrow()).sum();
    double plates = setup.atRest().size() / pace.photographsPerHour();
    assertThat(taking + plates + pace.minutesPerSetup() / 60)
        .isCloseTo(setup.time().orElseThrow().hours(), Offset.offset(1e-9));
    assertThat(CARDS.all("h1"))
        .extracting(Element::getTextContent)
        .contains("Card 6a · artwork at rest", "Card 6b · hatch", "Card 6c · quay-gate")
        .noneMatch(heading -> heading.startsWith("Card 6 "));
    assertThat(CARDS.all("p"))
        .extracting(Element::getTextContent)
        .anyMatch(line -> line.contains("· 0.8 h of the setup's 2.9 h, "));
  }

  @Test
  void a_fresh_flap_is_asked_for_by_the_opening_it_closes() {
    assertThat(CARDS.all("p"))
        .extracting(Element::getTextContent)
        .contains("! Put in a fresh flap: office-shutter.");
  }

  @Test
  void rows_and_plates_together_are_all_the_photographs_of_the_shooting_plan() {
    long plates =
        CARDS.all("tr").stream().filter(r -> r.getAttribute("class").equals("plate")).count();
    long again =
        rows(CARDS).stream()
            .filter(row -> cells(row).get(cells(row).size() - 2).equals("="))
            .count();
    assertThat(again).isPositive();
    assertThat(rows(CARDS).size() + plates - again).isEqualTo(DEMO.shooting().photographs());
  }

  @Test
  void a_row_says_what_the_film_sheet_says() {
    Movement lamp = DEMO.movement("bakers-lamp");
    for (Element row : rows(CARDS)) {
      for (MovedPhotograph photograph : lamp.photographs()) {
        if (photograph.photograph().name().equals(row.getAttribute("id"))) {
          List<String> cells = cells(row);
          assertThat(new BigDecimal(cells.get(2)))
              .isEqualByComparingTo(photograph.measures().set());
          assertThat(cells.get(4))
              .isEqualTo(photograph.measures().height().orElseThrow().toString());
          assertThat(cells.get(5)).isEqualTo(photograph.measures().pull().orElseThrow().toString());
        }
      }
    }
  }

  /** What the exposure sheet shows stands on a card, with the same percent. */
  @Test
  void every_photograph_that_is_shown_has_been_photographed() {
    for (PlannedReveal reveal : DEMO.reveals()) {
      Movement movement = DEMO.movement(reveal.movement());
      for (Exposure exposure : reveal.exposures()) {
        MovedPhotograph photographed = movement.photographs().get(exposure.photograph().number());
        assertThat(photographed.photograph()).isEqualTo(exposure.photograph());
        assertThat(photographed.progress()).isEqualTo(exposure.progress());
      }
    }
  }

  /** Card, gauge and exposure sheet agree on films nobody laid out by hand. */
  @Test
  void cards_and_gauges_hold_every_photograph_that_random_films_show() {
    int films = 0;
    for (long seed = 1; seed <= 12; seed++) {
      Optional<FilmSheet> film = random(seed);
      if (film.isPresent() && !film.get().reveals().isEmpty()) {
        checkShown(seed, film.get());
        films++;
      }
    }
    assertThat(films).isGreaterThan(3);
  }

  private static Optional<FilmSheet> random(long seed) {
    try {
      PlanBuilder plan = new RandomPlans(seed, 8, 5, true).next();
      return Optional.of(FilmPlanner.complete(plan.time(), List.of()));
    } catch (InputException refused) {
      return Optional.empty();
    }
  }

  private static void checkShown(long seed, FilmSheet film) {
    Map<String, String> percents = new TreeMap<>();
    rows(page(film)).forEach(row -> percents.put(row.getAttribute("id"), cells(row).get(1)));
    for (PlannedReveal reveal : film.reveals()) {
      for (Exposure exposure : reveal.exposures()) {
        String percent = String.format(Locale.ROOT, "%.1f", 100 * exposure.progress());
        assertThat(percents.get(exposure.photograph().name()))
            .as("seed %d, %s", seed, exposure.photograph().name())
            .isEqualTo(percent);
      }
    }
    for (Movement movement : film.movements()) {
      Opening opening = film.plan().workshop().opening(movement.openings().get(0)).orElseThrow();
      String gauge = String.join("", Gauge.pages(movement, opening, "Quay", Film.Paper.LETTER));
      for (MovedPhotograph photograph : movement.moved()) {
        String set = photograph.measures().set().toPlainString();
        assertThat(gauge).as("seed %d", seed).contains("data-degrees=\"" + set + "\"");
      }
    }
  }

  @Test
  void the_support_changes_under_a_heavy_line() {
    Element third =
        rows(CARDS).stream()
            .filter(row -> row.getAttribute("id").equals("bakers-lamp 003"))
            .findFirst()
            .orElseThrow();
    assertThat(third.getAttribute("class")).isEqualTo("change");
    assertThat(cells(third)).contains("thread");
  }

  @Test
  void a_photograph_that_looks_like_the_one_before_says_so() {
    Element last =
        rows(CARDS).stream()
            .filter(row -> row.getAttribute("id").equals("bakers-lamp 030"))
            .findFirst()
            .orElseThrow();
    assertThat(cells(last)).contains("as 029");
  }

  /** The loft's right shutter closes in panel 20: the same photographs, shown backwards. */
  @Test
  void a_card_says_which_panels_show_it_backwards() {
    assertThat(CARDS.all("p").stream().map(Element::getTextContent))
        .contains("for loft-shutter-left, loft-shutter-right · panels 10, 20 backwards, 23");
  }

  /** 2 · 114.3 · sin 3° = 11.96 mm: the first of the baker's steps, slow at the end. */
  @Test
  void a_card_names_the_largest_step_and_where_half_is_done() {
    assertThat(CARDS.all("p").stream().map(Element::getTextContent))
        .contains("Held by putty, from 003 thread. Largest step 12.0 mm, to 001.")
        .contains("Half the photographs are done at 015 of 030, half the movement at 009.");
  }

  @Test
  void a_card_reminds_of_what_fits_its_setup_and_defers_to_local_codes() {
    assertThat(CARDS.all("p").stream().map(Element::getTextContent))
        .anyMatch(text -> text.contains("Thread and wire under tension"))
        .anyMatch(text -> text.contains("local codes"));
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_stays_text(String text) {
    FilmSheet film = SampleFilm.at(FrameRate.FPS_24).saying(text).sheet();
    PrintedPage page = page(film);
    assertThat(page.all("script")).isEmpty();
    assertThat(rows(page)).hasSize(11 + film.shooting().atRest().size());
  }
}
