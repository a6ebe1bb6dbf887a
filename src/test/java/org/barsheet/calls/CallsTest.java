package org.barsheet.calls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.barsheet.clock.Seconds;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.DemoFilm;
import org.barsheet.plan.Performer;
import org.barsheet.score.Part;
import org.barsheet.timing.Finding;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a stranger reads on their call sheet. A bar of the small film lasts 2.5 s, a beat .625 s.
 */
class CallsTest {

  private static Performer changed(Performer p, Optional<Performer.Clap> clap, String behind) {
    return new Performer(
        p.name(),
        p.part(),
        p.clip(),
        p.clipRate(),
        clap,
        p.clipStart(),
        p.clipWidth(),
        p.clipHeight(),
        p.clothes(),
        behind,
        p.where());
  }

  private static FilmSheet film(Optional<Performer.Clap> clap, String behind) {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(12).motif("glimmer", 3, 1);
    PlanBuilder plan =
        new PlanBuilder(music)
            .opening("lamp-1", "small-lamp")
            .performer("cello", "Celesta")
            .performersWith(p -> changed(p, clap, behind))
            .panel("", "")
            .panel("glimmer 1", "")
            .appears("cello", "lamp-1");
    return FilmPlanner.complete(plan.time(), List.of());
  }

  private static FilmSheet clapping(String at) {
    Seconds seconds = Seconds.parse(at);
    return film(Optional.of(new Performer.Clap(seconds, 0)), "");
  }

  private static List<String> lines(FilmSheet film, String heading) {
    return film.calls().get(0).instructions().stream()
        .filter(section -> section.heading().equals(heading))
        .flatMap(section -> section.lines().stream())
        .toList();
  }

  private static List<String> claps(FilmSheet film) {
    return lines(film, "Play along").stream()
        .filter(line -> line.startsWith("Clap once,"))
        .toList();
  }

  private static List<String> findings(FilmSheet film) {
    return film.findings().stream()
        .filter(finding -> finding.sentence().contains("clap"))
        .map(Finding::remedy)
        .toList();
  }

  @Test
  void a_clap_on_a_click_is_made_with_that_click() {
    FilmSheet film = clapping("-4.375");
    assertThat(claps(film))
        .containsExactly(
            "Clap once, in frame, with click 2 of the count-in, at 0:03.6, 4.375 s before the music"
                + " starts.");
    assertThat(findings(film)).isEmpty();
  }

  /** Half a frame of 24 fps is 20.8 ms. */
  @Test
  void within_half_a_frame_it_still_is() {
    assertThat(claps(clapping("-4.395"))).first().asString().contains("with click 2 of");
    assertThat(claps(clapping("-4.397"))).first().asString().doesNotContain("with");
  }

  @Test
  void a_clap_with_the_pop_is_made_with_the_beep() {
    assertThat(claps(clapping("-2")).get(0)).contains("with the beep, at 0:06.0");
    assertThat(findings(clapping("-2"))).isEmpty();
  }

  @Test
  void a_clap_on_no_click_is_found_with_the_nearest_one() {
    assertThat(findings(clapping("-4.6")))
        .containsExactly("have them clap with click 2 of the count-in: clap: {at: -4.375 s, …}");
    assertThat(findings(film(Optional.empty(), ""))).isEmpty();
  }

  @Test
  void what_is_behind_them_follows_from_the_backing_unless_the_plan_says_it() {
    assertThat(lines(film(Optional.empty(), ""), "Behind you, and light").get(0))
        .startsWith("Behind you: a green wall or cloth that fills all of the box. It's replaced");
    List<String> brick =
        lines(film(Optional.empty(), "a bare brick wall"), "Behind you, and light");
    assertThat(brick.get(0)).isEqualTo("Behind you: a bare brick wall. It fills all of the box.");
    assertThat(brick).last().isEqualTo("Wear nothing shiny, no fine stripes or checks.");
    assertThat(lines(film(Optional.empty(), "blue"), "Behind you, and light"))
        .last()
        .asString()
        .startsWith("Wear nothing blue,");
  }

  @Test
  void the_demo_s_sheets_say_where_to_send_by_when_and_whom_to_ask() {
    for (Call call : DemoFilm.sheet().calls()) {
      List<String> send = call.instructions().get(call.instructions().size() - 1).lines();
      assertThat(send)
          .containsSubsequence(
              "Send it to: harbor@quay.example",
              "By: Friday, February 20, 2026",
              "Questions: the harbor office, harbor@quay.example");
      assertThat(call.toFillIn()).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "Celesta, IN_FRONT",
    "Violin, ON_THE_SHOULDER",
    "Cello, UPRIGHT",
    "Flute, TO_THE_SIDE",
    "Clarinet, DOWN",
    "French Horn, FORWARD",
    "Banjo, ACROSS",
    "Voice Oohs, NOTHING_HELD",
    "'', NOTHING_HELD",
  })
  void an_instrument_is_drawn_the_way_it_is_held(String instrument, Pose pose) {
    assertThat(Pose.of(new Part(0, "part 1", instrument, 0, 1, false))).isEqualTo(pose);
  }
}
