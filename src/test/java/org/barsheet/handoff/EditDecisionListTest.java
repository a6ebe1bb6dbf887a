package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Timecode;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.EdlParser.EditList;
import org.barsheet.handoff.EdlParser.Event;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EditDecisionListTest {

  static List<FrameRate> rates() {
    return FrameRate.ALL;
  }

  private static EditList only(FilmSheet sheet) {
    List<byte[]> lists = EditDecisionList.lists(sheet);
    assertThat(lists).hasSize(1);
    return EdlParser.parse(lists.get(0), sheet.timing().clock().rate());
  }

  @Test
  void a_shot_is_a_cut_with_its_panel_and_cue_in_plain_words() {
    String list =
        new String(
            EditDecisionList.lists(SampleFilm.at(FrameRate.FPS_24).sheet()).get(0),
            StandardCharsets.US_ASCII);
    assertThat(list).startsWith("TITLE: The paper harbour\r\nFCM: NON-DROP FRAME\r\n* timecode");
    assertThat(list.replace("\r\n", "\n"))
        .contains(
            """
            002  P2       V     C        00:00:00:00 00:00:06:00 01:00:06:09 01:00:12:09
            * panel 2: The baker's lamp
            * cue glimmer 1, frame 153, 01:00:06:09
            * accent on frame 183, 01:00:07:15
            * lamp-1 lands on frame 183, 01:00:07:15
            * lamp-2 lands on frame 183, 01:00:07:15
            003  P3""");
  }

  @Test
  void a_shot_on_a_cue_that_is_one_moment_has_no_accent_of_its_own() {
    List<String> comments = only(SampleFilm.at(FrameRate.FPS_24).sheet()).comments();
    int cue = comments.indexOf("cue bar 1, frame 63, 01:00:02:15");
    assertThat(cue).isPositive();
    assertThat(comments.get(cue + 1)).startsWith("panel 2");
  }

  @Test
  void every_landing_of_the_demo_is_said_with_a_timecode_inside_its_shot() {
    FilmSheet sheet = DemoFilm.sheet();
    EditList list = only(sheet);
    String comments = String.join(" ", list.comments());
    assertThat(sheet.reveals()).isNotEmpty();
    for (PlannedReveal reveal : sheet.reveals()) {
      Event event = list.events().get(reveal.shot());
      Timecode lands = sheet.plan().film().timecode(reveal.landsFrame());
      assertThat(comments)
          .contains(
              reveal.opening().name() + " lands on frame " + reveal.landsFrame() + ", " + lands);
      assertThat(lands.frame()).isBetween(event.recordIn(), event.recordOut() - 1);
    }
  }

  @ParameterizedTest
  @MethodSource("rates")
  void every_cut_lands_on_its_film_frame_at_every_rate(FrameRate rate) {
    FilmSheet sheet = SampleFilm.at(rate).sheet();
    long first = sheet.plan().film().firstFrame().frame();
    List<Event> events = only(sheet).events();
    assertThat(events).hasSameSizeAs(sheet.timing().shots());
    for (int i = 0; i < events.size(); i++) {
      FrameSpan frames = sheet.timing().shots().get(i).frames();
      assertThat(events.get(i).recordIn()).isEqualTo(first + frames.start());
      assertThat(events.get(i).recordOut()).isEqualTo(first + frames.endExclusive());
      assertThat(events.get(i).sourceIn()).isZero();
    }
  }

  @Test
  void drop_frame_labels_are_never_ones_that_are_skipped() {
    for (String start : List.of("00:00:50;00", "00:09:55;10", "01:00:55;02")) {
      for (FrameRate rate : List.of(FrameRate.FPS_29_97_DF, FrameRate.FPS_59_94_DF)) {
        EditList list = only(SampleFilm.at(rate).from(start).sheet());
        assertThat(list.dropFrame()).isTrue();
        assertThat(list.comments().get(0)).contains("drop-frame");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_the_list_stays_legal(String text) {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_25).saying(text).sheet();
    EditList list = only(sheet);
    assertThat(list.events()).hasSameSizeAs(sheet.timing().shots());
    assertThat(reels(list.events())).hasSameSizeAs(list.events());
  }

  @Test
  void a_film_of_more_than_999_shots_takes_several_lists() {
    FilmSheet sheet = withShots(SampleFilm.at(FrameRate.FPS_24).sheet(), 2001);
    List<byte[]> lists = EditDecisionList.lists(sheet);
    assertThat(lists).hasSize(3);
    List<Event> events = new ArrayList<>();
    for (byte[] list : lists) {
      List<Event> some = EdlParser.parse(list, FrameRate.FPS_24).events();
      assertThat(some).hasSizeLessThanOrEqualTo(999);
      events.addAll(some);
    }
    assertThat(events).hasSize(2001);
    assertThat(reels(events)).hasSize(2001);
    for (int i = 1; i < events.size(); i++) {
      assertThat(events.get(i).recordIn()).isEqualTo(events.get(i - 1).recordOut());
    }
  }

  private static Set<String> reels(List<Event> events) {
    return events.stream().map(Event::reel).collect(Collectors.toSet());
  }

  /** The same film cut into many shots of the first panel, one frame each. */
  private static FilmSheet withShots(FilmSheet sheet, int count) {
    Shot model = sheet.timing().shots().get(0);
    List<Shot> shots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      shots.add(
          new Shot(
              i,
              model.panel(),
              model.cue(),
              new FrameSpan(i, i + 1),
              model.startsAt(),
              model.bars(),
              model.asked(),
              model.got(),
              model.reason(),
              model.alternative(),
              List.of()));
    }
    TimingSheet old = sheet.timing();
    TimingSheet timing =
        new TimingSheet(
            old.plan(),
            old.music(),
            old.clock(),
            old.bars(),
            old.tempo(),
            old.cues(),
            shots,
            count,
            old.tallies(),
            old.findings());
    return new FilmSheet(
        sheet.inputs(),
        timing,
        List.of(),
        List.of(),
        ShootingPlan.of(timing, List.of(), List.of(), List.of()),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty());
  }
}
