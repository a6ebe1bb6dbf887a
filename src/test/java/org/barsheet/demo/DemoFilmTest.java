package org.barsheet.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.barsheet.align.places.Kept;
import org.barsheet.cues.MotifSearch;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Plan;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.score.BarBeat;
import org.barsheet.score.ScoreReader;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingPlanner;
import org.barsheet.timing.TimingSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo shows what it was made to show. */
class DemoFilmTest {

  private static final Plan PLAN = PlanReader.read(Path.of("scores", "lamplighters-quay.yaml"));
  private static final Music MUSIC =
      MusicFinder.follow(ScoreReader.read(PLAN.music().score()), PLAN.music().tempo());
  private static final List<Occurrence> FOUND = MotifSearch.of(PLAN, MUSIC).occurrences();
  private static final TimingSheet TIMING = TimingPlanner.plan(PLAN, MUSIC, FOUND, Kept.NOTHING);
  private static final FilmSheet FILM = FilmPlanner.complete(TIMING, List.of());

  static List<PlantedReturn> returns() {
    return LamplightersQuay.planted();
  }

  @Test
  void as_many_returns_are_found_as_were_planted() {
    assertThat(FOUND).hasSameSizeAs(returns());
  }

  @ParameterizedTest
  @MethodSource("returns")
  void a_planted_return_is_found_where_it_was_put(PlantedReturn planted) {
    assertThat(FOUND)
        .anySatisfy(
            found -> {
              assertThat(found.motif()).isEqualTo(planted.motif().name().toLowerCase(Locale.ROOT));
              BarBeat place = MUSIC.bars().locate(found.startTick());
              assertThat(place.bar()).isEqualTo(planted.bar());
              assertThat(BigDecimal.valueOf(place.beat().doubleValue()))
                  .isEqualByComparingTo(planted.beat());
              assertThat(partsOf(found)).contains(planted.parts().get(0));
              assertThat(found.variation().forms())
                  .anySatisfy(form -> assertSame(form, planted.form()));
            });
  }

  private static List<String> partsOf(Occurrence found) {
    return found.parts().stream().map(part -> MUSIC.score().parts().get(part).name()).toList();
  }

  /** An octave is no transposition to the finder, and ornaments between the notes do not matter. */
  private static void assertSame(org.barsheet.motif.Form found, Form planted) {
    switch (planted) {
      case TRANSPOSED, ORNAMENTED ->
          assertThat(found.name()).isIn("AS_GIVEN", "TRANSPOSED", "ORNAMENTED");
      case AS_GIVEN, TONAL, INVERTED, AUGMENTED ->
          assertThat(found.name()).isEqualTo(planted.name());
    }
  }

  @Test
  void the_film_lasts_as_long_as_the_score() {
    assertThat(TIMING.shots()).hasSize(26);
    assertThat(TIMING.lengthFrames()).isBetween(210L * 24, 225L * 24);
  }

  @Test
  void there_is_a_finding_of_every_severity() {
    assertThat(FILM.findings()).extracting(Finding::severity).contains(Finding.Severity.values());
  }

  @Test
  void a_reveal_is_squeezed() {
    assertThat(FILM.reveals()).anyMatch(reveal -> reveal.squeeze().isPresent());
  }

  @Test
  void a_cut_says_who_chose_it() {
    assertThat(reason("13")).endsWith("; cut at bar 32 beat 4, as asked");
    assertThat(reason("4")).endsWith("; cut at bar 8 beat 4, early enough for its reveals");
  }

  private static String reason(String panel) {
    return TIMING.shots().stream()
        .filter(shot -> shot.panel().name().equals(panel))
        .map(Shot::reason)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void two_reveals_overlap_on_two_layers() {
    assertThat(FILM.reveals()).extracting(PlannedReveal::layer).contains(1, 2);
  }

  @Test
  void a_photograph_is_held_for_over_two_hundred_frames() {
    assertThat(FILM.reveals())
        .flatExtracting(PlannedReveal::exposures)
        .anySatisfy(exposure -> assertThat(exposure.frames().length()).isGreaterThan(200));
  }

  @Test
  void the_aligner_chooses_two_places_itself() {
    assertThat(PLAN.panels())
        .filteredOn(panel -> panel.cue().toString().equals("glimmer"))
        .hasSize(2);
  }

  @Test
  void an_opening_is_too_small_and_a_performer_wears_the_color_that_is_keyed() {
    assertThat(FILM.findings())
        .extracting(Finding::sentence)
        .anyMatch(sentence -> sentence.startsWith("hatch is 25.4 by 17.8 mm on quay"))
        .anyMatch(sentence -> sentence.startsWith("violins' green clothes"));
  }

  @Test
  void the_shooting_plan_shares_photographs_has_a_setup_for_several_and_days() {
    ShootingPlan shooting = FILM.shooting();
    assertThat(shooting.moved()).isLessThan(shooting.movedApart());
    assertThat(shooting.setups()).anyMatch(setup -> setup.runs().size() > 1);
    assertThat(shooting.setups()).anyMatch(Setup::closedAgain);
    assertThat(shooting.time().orElseThrow().ends()).isPresent();
  }
}
