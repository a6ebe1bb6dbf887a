package org.barsheet.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.barsheet.changes.LaidFilm.LaidBar;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.changes.LaidFilm.LaidExposure;
import org.barsheet.changes.LaidFilm.LaidReveal;
import org.barsheet.changes.LaidFilm.LaidShot;
import org.barsheet.changes.PhotographChange.Use;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.revision.BarNote;
import org.barsheet.revision.HeldBar;
import org.barsheet.revision.HeldPart;
import org.barsheet.revision.HeldReturn;
import org.barsheet.revision.ScoreNotes;
import org.junit.jupiter.api.Test;

class ChangesTest {

  private static final FrameRate RATE = FrameRate.FPS_24;

  @Test
  void a_film_against_itself_has_moved_nowhere_and_all_photographs_serve() {
    LaidFilm film = film(bars(0, 48, 96), List.of(glimmer(1, 2, 48)), List.of(lampShot(0, 10)));
    Changes changes = Changes.between(film, film);
    assertThat(changes.isNone()).isTrue();
    assertThat(changes.sentences()).isEmpty();
    assertThat(changes.count(Use.STILL_SERVES)).isEqualTo(11);
  }

  @Test
  void bars_that_move_alike_are_told_together() {
    assertThat(BarShift.between(bars(0, 48, 96, 144), bars(0, 48, 108, 156), Optional.empty()))
        .containsExactly(new BarShift(1, 2, 0), new BarShift(3, 4, 12));
    assertThat(sentences(bars(0, 48, 96, 144), bars(0, 48, 108, 156)))
        .containsExactly("bars 3 to 4 now begin 12 frames later");
  }

  @Test
  void a_gradual_change_of_tempo_is_one_sentence() {
    assertThat(sentences(bars(0, 48, 96, 144), bars(0, 47, 93, 138)))
        .containsExactly("bars 2 to 4 now begin 1 to 6 frames earlier");
  }

  @Test
  void a_bar_played_twice_is_compared_with_the_same_time_round() {
    List<LaidBar> before = List.of(new LaidBar(1, 0), new LaidBar(1, 48), new LaidBar(2, 96));
    List<LaidBar> now = List.of(new LaidBar(1, 0), new LaidBar(1, 50), new LaidBar(2, 98));
    assertThat(BarShift.between(before, now, Optional.empty()))
        .containsExactly(new BarShift(1, 1, 0), new BarShift(1, 2, 2));
  }

  @Test
  void a_new_return_renumbers_those_after_it_and_says_so() {
    Changes changes =
        Changes.between(
            film(music(List.of(1, 3), 40, 41, 42), glimmer(1, 1, 0), glimmer(2, 3, 96)),
            film(
                music(List.of(1, 2, 3), 40, 41, 42),
                glimmer(1, 1, 0),
                glimmer(2, 2, 48),
                glimmer(3, 3, 96)));
    assertThat(changes.sentences())
        .containsExactly("glimmer 2, bar 2, is new", "glimmer 3, bar 3, was glimmer 2, bar 3");
    assertThat(changes.lines().get(1).remedy())
        .isEqualTo("'glimmer 2' in the plan is different music now: ask for glimmer 3");
  }

  @Test
  void a_return_that_goes_is_told_to_who_asks_for_it() {
    Changes changes =
        Changes.between(
            film(music(List.of(1, 3), 40, 41, 42), glimmer(1, 1, 0), glimmer(2, 3, 96)),
            film(music(List.of(3), 40, 41, 42), glimmer(1, 3, 96)));
    assertThat(changes.sentences())
        .containsExactly("glimmer 1, bar 1, is gone", "glimmer 1, bar 3, was glimmer 2, bar 3");
    assertThat(changes.lines().get(0).remedy())
        .isEqualTo("a panel that asks for glimmer 1 needs another place");
  }

  @Test
  void bars_put_in_before_a_return_do_not_make_it_another() {
    Changes changes =
        Changes.between(
            film(music(List.of(2), 40, 41, 42), glimmer(1, 2, 48)),
            film(music(List.of(3), 40, 50, 41, 42), glimmer(1, 3, 96)));
    assertThat(changes.sentences()).containsExactly("glimmer 1, bar 3, was glimmer 1, bar 2");
  }

  /** The new violins' return stands where the old one stood, on the same frame. */
  @Test
  void a_return_is_known_by_its_notes_even_where_another_has_its_number_and_its_bar() {
    Changes changes =
        Changes.between(
            film(music(List.of(2), 40, 41, 42), glimmer(1, 2, 48)),
            film(music(List.of(2, 4), 40, 50, 51, 41, 42), glimmer(1, 2, 48), glimmer(2, 4, 144)));
    assertThat(changes.sentences())
        .containsExactly("glimmer 1, bar 2, is new", "glimmer 2, bar 4, was glimmer 1, bar 2");
  }

  @Test
  void a_return_in_bars_that_were_repeated_may_be_either_and_is_never_guessed() {
    Changes changes =
        Changes.between(
            film(music(List.of(2), 40, 41, 42), glimmer(1, 2, 48)),
            film(music(List.of(2, 3), 40, 41, 41, 42), glimmer(1, 2, 48), glimmer(2, 3, 96)));
    assertThat(changes.sentences())
        .containsExactly("glimmer 1, bar 2, may be glimmer 1, bar 2 or glimmer 2, bar 3 now");
  }

  @Test
  void without_the_notes_of_the_run_before_a_return_is_known_in_its_own_bar_only() {
    Changes changes =
        Changes.between(
            film(bars(0), List.of(glimmer(1, 9, 400), glimmer(2, 17, 800)), List.of()),
            film(
                bars(0),
                List.of(glimmer(1, 9, 400), glimmer(2, 13, 600), glimmer(3, 17, 800)),
                List.of()));
    assertThat(changes.sentences())
        .containsExactly("glimmer 2, bar 13, is new", "glimmer 3, bar 17, was glimmer 2, bar 17");
  }

  @Test
  void who_reads_only_the_first_of_many_changes_reads_of_panels() {
    Changes changes =
        Changes.between(
            film(bars(0, 48), List.of(glimmer(2, 9, 400)), List.of(lampShot(0, 10))),
            film(bars(0, 50), List.of(glimmer(1, 9, 400)), List.of(lampShot(12, 10))));
    List<String> inOrder = changes.sentences();
    assertThat(changes.panelsFirst()).containsExactlyInAnyOrderElementsOf(inOrder);
    assertThat(inOrder.get(0)).startsWith("bar 2 now begins 2 frames later");
    assertThat(changes.panelsFirst().get(0)).startsWith("panel ").contains("12 frames later");
  }

  @Test
  void a_panel_that_moves_with_its_photographs_needs_no_new_photograph() {
    Changes changes =
        Changes.between(
            film(bars(0), List.of(), List.of(lampShot(0, 10))),
            film(bars(0), List.of(), List.of(lampShot(12, 10))));
    assertThat(changes.panels()).hasSize(1);
    assertThat(changes.panels().get(0).beginsLater()).isEqualTo(12);
    assertThat(changes.count(Use.STILL_SERVES)).isEqualTo(11);
  }

  @Test
  void a_finer_movement_takes_what_it_can_from_the_photographs_there_are() {
    List<PhotographChange> photographs =
        PhotographChange.between(List.of(lampShot(0, 10)), List.of(lampShot(0, 20)));
    assertThat(photographs).hasSize(21);
    PhotographChange fourth = photographs.get(4);
    assertThat(fourth.photograph()).isEqualTo("lamp 004");
    assertThat(fourth.use()).isEqualTo(Use.RESAMPLE);
    assertThat(fourth.instead()).contains("lamp 002");
    assertThat(fourth.error()).isEqualByComparingTo("0");
    assertThat(photographs.get(5).use()).as("25 % lies between 20 % and 30 %").isEqualTo(Use.TAKE);
    assertThat(photographs.get(0).use()).isEqualTo(Use.STILL_SERVES);
  }

  /**
   * Of 16 photographs the 4th, 8th, 12th and 16th serve for a movement in 12 as 3rd, 6th, 9th,
   * 12th.
   */
  @Test
  void a_photograph_that_serves_under_another_name_is_not_told_to_be_unused() {
    Changes changes =
        Changes.between(
            film(bars(0), List.of(), List.of(lampShot(0, 16))),
            film(bars(0), List.of(), List.of(lampShot(0, 12))));
    assertThat(changes.lines())
        .extracting(ChangeLine::name, ChangeLine::remedy)
        .contains(
            tuple(
                "lamp 012",
                "set the old photographs aside, then rename lamp 016 to this one (0.0 % off)"),
            tuple("lamp 013 to 015", "no longer shown"),
            tuple("lamp 016", "now shown under another name: keep it"));
  }

  @Test
  void photographs_of_another_model_do_not_serve() {
    LaidShot other = shot(0, 10, "other-lamp");
    assertThat(PhotographChange.between(List.of(lampShot(0, 10)), List.of(other)))
        .filteredOn(photograph -> photograph.use() == Use.TAKE)
        .hasSize(11);
  }

  @Test
  void at_another_frame_rate_no_frames_are_compared() {
    LaidFilm before = film(bars(0, 48), List.of(), List.of(lampShot(0, 10)));
    LaidFilm now =
        new LaidFilm(
            before.title(),
            FrameRate.FPS_25,
            Timecode.parse(FrameRate.FPS_25, "01:00:00:00"),
            before.lengthFrames(),
            before.inputs(),
            before.music(),
            bars(0, 50),
            before.cues(),
            before.shots(),
            List.of(),
            List.of(),
            List.of(),
            0,
            LaidIssues.NONE,
            Map.of());
    Changes changes = Changes.between(before, now);
    assertThat(changes.sentences())
        .containsExactly("the film now runs at 25 fps, not 24: every frame number is new");
    assertThat(changes.panels()).isEmpty();
    assertThat(changes.count(Use.STILL_SERVES)).isEqualTo(11);
  }

  private static List<String> sentences(List<LaidBar> before, List<LaidBar> now) {
    return Changes.between(film(before, List.of(), List.of()), film(now, List.of(), List.of()))
        .sentences();
  }

  private static List<LaidBar> bars(long... starts) {
    List<LaidBar> bars = new ArrayList<>();
    for (long start : starts) {
      bars.add(new LaidBar(bars.size() + 1, start));
    }
    return bars;
  }

  private static LaidCue glimmer(int number, int bar, long frame) {
    return new LaidCue(
        "glimmer-" + number,
        "return",
        "glimmer",
        number,
        bar,
        BigDecimal.ONE,
        Seconds.of(frame, 24),
        frame,
        "as given",
        Optional.of(new HeldReturn("glimmer", number, List.of("Celesta"), melody(bar))));
  }

  /** Four quarter notes of bar after bar. */
  private static List<BarNote> melody(int bar) {
    long start = 4L * ScoreNotes.UNITS * (bar - 1);
    return IntStream.range(0, 4)
        .mapToObj(i -> new BarNote(start + (long) i * ScoreNotes.UNITS, 72 + i))
        .toList();
  }

  /**
   * A celesta that plays the melody in some bars, over a cello on a note of its own in every bar.
   */
  private static Optional<ScoreNotes> music(List<Integer> melodies, int... cello) {
    List<HeldBar> bars = new ArrayList<>();
    List<List<BarNote>> tune = new ArrayList<>();
    List<List<BarNote>> bass = new ArrayList<>();
    for (int bar = 1; bar <= cello.length; bar++) {
      long start = 4L * ScoreNotes.UNITS * (bar - 1);
      List<Long> beats =
          IntStream.range(0, 4).mapToObj(i -> start + (long) i * ScoreNotes.UNITS).toList();
      bars.add(new HeldBar(bar, 1, beats, start + 4L * ScoreNotes.UNITS));
      tune.add(melodies.contains(bar) ? melody(1) : List.of());
      bass.add(List.of(new BarNote(0, cello[bar - 1])));
    }
    return Optional.of(
        new ScoreNotes(
            bars,
            List.of(new HeldPart("Celesta", false, tune), new HeldPart("Cello", false, bass))));
  }

  private static LaidFilm film(Optional<ScoreNotes> music, LaidCue... cues) {
    LaidFilm silent = film(bars(0), List.of(cues), List.of());
    return new LaidFilm(
        silent.title(),
        silent.rate(),
        silent.firstFrame(),
        silent.lengthFrames(),
        silent.inputs(),
        music,
        silent.bars(),
        silent.cues(),
        silent.shots(),
        List.of(),
        List.of(),
        List.of(),
        0,
        LaidIssues.NONE,
        Map.of());
  }

  private static LaidShot lampShot(long start, int photographs) {
    return shot(start, photographs, "lamp");
  }

  /** Photographs 0 to N on twos, evenly. */
  private static LaidShot shot(long start, int photographs, String model) {
    List<LaidExposure> exposures = new ArrayList<>();
    for (int k = 0; k <= photographs; k++) {
      long from = start + 2L * k;
      BigDecimal progress = BigDecimal.valueOf((double) k / photographs);
      exposures.add(
          new LaidExposure(new FrameSpan(from, from + 2), "lamp %03d".formatted(k), progress));
    }
    long end = start + 2L * (photographs + 1);
    LaidReveal reveal = new LaidReveal("flap", model, 1, end - 2, end - 2, start + 2, exposures);
    return new LaidShot("1", "glimmer-1", new FrameSpan(start, end), List.of(reveal));
  }

  private static LaidFilm film(List<LaidBar> bars, List<LaidCue> cues, List<LaidShot> shots) {
    return new LaidFilm(
        "Quay",
        RATE,
        Timecode.parse(RATE, "01:00:00:00"),
        1000,
        List.of(),
        Optional.empty(),
        bars,
        cues,
        shots,
        List.of(),
        List.of(),
        List.of(),
        0,
        LaidIssues.NONE,
        Map.of());
  }
}
