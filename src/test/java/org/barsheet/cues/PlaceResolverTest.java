package org.barsheet.cues;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Form;
import org.barsheet.timing.Finding;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.barsheet.timing.TimingSheet;
import org.junit.jupiter.api.Test;

/** Places of a plan, found or refused with what would be right. */
class PlaceResolverTest {

  private static MusicBuilder music() {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(8).again(3, 6);
    return music
        .motif("glimmer", 1, 3)
        .motif("glimmer", 7, 1, Certainty.LIKELY, 0.82)
        .motif("glimmer", 8, 1, Certainty.POSSIBLE, 0.6)
        .mark("Chorus", 2)
        .mark("Coda", 7)
        .mark("Coda", 8);
  }

  private static long cut(String place) {
    TimingSheet sheet = new PlanBuilder(music()).panel("", "").panel(place, "").time();
    return sheet.shots().get(1).frames().start();
  }

  private static String refusal(String place) {
    PlanBuilder plan = new PlanBuilder(music()).panel("", "").panel(place, "");
    InputException refused = catchThrowableOfType(InputException.class, plan::time);
    return refused.problems().get(0).toString();
  }

  @Test
  void bars_and_beats() {
    assertThat(cut("bar 2")).isEqualTo(60);
    assertThat(cut("bar 2 beat 3")).isEqualTo(90);
    assertThat(cut("bar 2 beat 2.5")).isEqualTo(83); // 22½ frames into the bar, and the tie goes up
  }

  @Test
  void a_bar_played_twice_by_its_time() {
    assertThat(cut("bar 3 time 1")).isEqualTo(120);
    assertThat(cut("bar 3 time 2")).isEqualTo(480);
    assertThat(refusal("bar 3"))
        .isEqualTo(
            """
            quay.yaml, line 11: bar 3 is played twice
              write 'bar 3 time 1' (01:00:05:00) or 'bar 3 time 2' (01:00:20:00)\
            """);
  }

  @Test
  void a_bar_or_a_beat_that_is_not_there() {
    assertThat(refusal("bar 120")).contains("there is no bar 120", "bars 1 to 6");
    assertThat(refusal("bar 2 beat 5")).contains("bar 2 has 4 beats");
  }

  @Test
  void marks_by_name() {
    assertThat(cut("mark chorus")).isEqualTo(60);
    assertThat(refusal("mark Chrous")).contains("no mark 'Chrous'", "nearest marks: Chorus");
    assertThat(refusal("mark Chorus two")).contains("nearest marks: Chorus");
    assertThat(refusal("mark Coda")).contains("2 marks 'Coda': at bar 7, bar 8", "name the bar");
  }

  @Test
  void timecodes_within_the_film() {
    assertThat(cut("01:00:10:12")).isEqualTo(252);
    assertThat(refusal("00:59:00:00"))
        .contains("is outside the film", "01:00:00:00 to 01:00:29:23");
  }

  /** The film has 720 frames, 0 to 719. */
  @Test
  void the_films_first_and_last_frame_are_within_it_and_the_ones_beside_them_are_not() {
    assertThat(cut("01:00:29:23")).isEqualTo(719);
    assertThat(refusal("01:00:30:00")).contains("is outside the film");
    assertThat(refusal("00:59:59:23")).contains("is outside the film");
    assertThat(only("01:00:00:00")).isZero();
  }

  private static long only(String place) {
    return new PlanBuilder(music()).panel(place, "").time().shots().get(0).cue().frame();
  }

  @Test
  void the_last_beat_of_a_bar_has_room_up_to_the_next_bar_line() {
    assertThat(cut("bar 2 beat 4.9")).isEqualTo(119); // 58½ frames into the bar, the tie goes up
    assertThat(refusal("bar 2 beat 5")).contains("the next bar is bar 3");
  }

  /** Bar 4 lies two bars after glimmer 1 and two before glimmer 2. */
  @Test
  void of_two_returns_as_near_to_a_bar_the_earlier_is_meant() {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(8);
    music.motif("glimmer", 2, 1).motif("glimmer", 6, 1);
    TimingSheet sheet = new PlanBuilder(music).panel("", "").panel("glimmer near bar 4", "").time();
    assertThat(sheet.shots().get(1).cue().id()).isEqualTo("glimmer-1");
  }

  @Test
  void returns_by_number_and_by_bar() {
    assertThat(cut("glimmer 1")).isEqualTo(30);
    assertThat(cut("glimmer 2")).isEqualTo(360);
    assertThat(cut("glimmer near bar 8")).isEqualTo(360);
    assertThat(refusal("glimmer 19"))
        .contains(
            "you asked for glimmer 19; the score has only 2", "the last one is glimmer 2 in bar 7");
    assertThat(refusal("tide")).contains("no return of tide was found");
  }

  private static MusicBuilder twoPlayers() {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(8);
    music.motif("glimmer", 2, 1).motif("glimmer", 4, 1).played(Form.INVERTED, 1);
    return music.motif("glimmer", 6, 1).played(Form.AS_GIVEN, 1, 0);
  }

  private static String cueOf(String place) {
    TimingSheet sheet = new PlanBuilder(twoPlayers()).panel("", "").panel(place, "").time();
    return sheet.shots().get(1).cue().id();
  }

  @Test
  void a_return_is_known_by_its_form_and_by_any_part_that_plays_it() {
    assertThat(cueOf("glimmer inverted near bar 1")).isEqualTo("glimmer-2");
    assertThat(cueOf("glimmer in cello near bar 2")).isEqualTo("glimmer-2");
    assertThat(cueOf("glimmer in Celesta near bar 8")).isEqualTo("glimmer-3");
    assertThat(cueOf("glimmer as given in Cello")).isEqualTo("glimmer-3");
  }

  @Test
  void a_form_or_part_that_is_not_there_is_told() {
    PlanBuilder plan =
        new PlanBuilder(twoPlayers())
            .panel("glimmer in Oboe near bar 3", "")
            .panel("glimmer inverted in Celesta", "");
    InputException refused = catchThrowableOfType(InputException.class, plan::time);
    assertThat(refused.problems())
        .extracting(Problem::sentence)
        .containsExactly(
            "the score has no part 'Oboe'", "no return of glimmer is heard inverted in Celesta");
    assertThat(refused.problems().get(0).remedy())
        .isEqualTo("parts that look like it: Cello, Celesta");
  }

  @Test
  void a_likely_return_chosen_is_a_finding() {
    TimingSheet sheet = new PlanBuilder(music()).panel("", "").panel("glimmer 2", "").time();
    assertThat(sheet.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Finding.Severity.WARNING);
              assertThat(finding.sentence()).isEqualTo("glimmer 2 is only likely (as given)");
            });
  }

  @Test
  void two_panels_on_one_cue_are_refused() {
    PlanBuilder plan = new PlanBuilder(music()).panel("", "").panel("bar 7", "").panel("bar 7", "");
    InputException refused = catchThrowableOfType(InputException.class, plan::time);
    assertThat(refused.problems()).hasSize(1);
    assertThat(refused.problems().get(0).sentence()).isEqualTo("panels 2 and 3 both ask for bar 7");
  }

  @Test
  void the_music_starts_on_a_whole_frame_and_is_measured_from_it() {
    // 2 s at 24000/1001 is frame 47.95: the music starts on frame 48, at 2.002 s.
    TimingSheet sheet =
        new PlanBuilder(music())
            .rate(FrameRate.FPS_23_976)
            .musicStarts(Seconds.of(2))
            .panel("", "")
            .panel("bar 2", "")
            .time();
    assertThat(sheet.clock().musicStartFrame()).isEqualTo(48);
    assertThat(sheet.clock().filmTime(Seconds.ZERO)).isEqualTo(Seconds.of(2002, 1000));
    assertThat(sheet.shots().get(1).frames().start()).isEqualTo(48 + 60);
  }

  @Test
  void music_measured_from_its_first_note() {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(8).note(0, 72, 2, 1, 1);
    TimingSheet sheet =
        new PlanBuilder(music)
            .fromFirstNote()
            .musicStarts(Seconds.of(1))
            .panel("", "")
            .panel("bar 3", "")
            .time();
    assertThat(sheet.shots().get(1).frames().start()).isEqualTo(24 + 60);
  }

  @Test
  void a_bar_before_the_films_first_frame_cannot_be_shown() {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(8).note(0, 72, 2, 1, 1);
    PlanBuilder plan = new PlanBuilder(music).fromFirstNote().panel("", "").panel("bar 1", "");
    InputException refused = catchThrowableOfType(InputException.class, plan::time);
    assertThat(refused.problems().get(0).toString())
        .contains("bar 1 is before the film begins", "start the music later");
  }

  @Test
  void a_possible_return_is_never_asked_by_a_number() {
    assertThat(refusal("glimmer 3")).contains("you asked for glimmer 3; the score has only 2");
  }
}
