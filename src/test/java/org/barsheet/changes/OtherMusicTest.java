package org.barsheet.changes;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.changes.LaidAsk.Kind;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.clock.Seconds;
import org.barsheet.revision.BarNote;
import org.barsheet.revision.HeldBar;
import org.barsheet.revision.HeldPart;
import org.barsheet.revision.HeldReturn;
import org.barsheet.revision.ScoreNotes;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Severity;
import org.junit.jupiter.api.Test;

/** A horn in bars of one note each; a return of glimmer is any bar with a note from 70 upward. */
class OtherMusicTest {

  @Test
  void a_number_that_means_another_return_now_is_told_with_both() {
    assertThat(
            between(music(ask("glimmer 1"), 60, 70, 61), music(ask("glimmer 1"), 60, 71, 70, 61)))
        .extracting(Finding::inFull)
        .containsExactly(
            "panel 6 asks for glimmer 1: that was Horn in bar 2, which is glimmer 2 in bar 3 now;"
                + " glimmer 1 is a new return, Horn in bar 2");
  }

  @Test
  void a_number_that_means_the_same_return_in_another_bar_is_no_finding() {
    assertThat(
            between(music(ask("glimmer 1"), 60, 70, 61), music(ask("glimmer 1"), 60, 62, 70, 61)))
        .isEmpty();
  }

  @Test
  void an_unchanged_score_is_no_finding() {
    LaidMusic same = music(ask("glimmer 1"), 60, 70, 61, 60, 70);
    assertThat(between(same, same)).isEmpty();
  }

  @Test
  void a_bar_that_is_another_bar_now_is_told_with_both() {
    assertThat(between(music(ask("bar 2"), 60, 61, 62), music(ask("bar 2"), 60, 63, 61, 62)))
        .extracting(Finding::inFull)
        .containsExactly("panel 6 asks for bar 2: that is bar 3 now; bar 2 is new");
  }

  @Test
  void music_that_was_taken_out_is_told() {
    assertThat(between(music(ask("bar 2"), 60, 61, 62), music(ask("bar 2"), 60, 62)))
        .extracting(Finding::inFull)
        .containsExactly("panel 6 asks for bar 2: that is gone; bar 2 was bar 3");
    assertThat(between(music(ask("glimmer 1"), 60, 70, 62), music(ask("glimmer 1"), 60, 62)))
        .extracting(Finding::inFull)
        .containsExactly("panel 6 asks for glimmer 1: that was Horn in bar 2, which is gone");
  }

  @Test
  void bars_that_were_repeated_are_asked_about() {
    List<Finding> found =
        between(music(ask("bar 2"), 60, 61, 62), music(ask("bar 2"), 60, 61, 61, 62));
    assertThat(found)
        .extracting(Finding::inFull)
        .containsExactly("panel 6 asks for bar 2: that may be bar 2 or bar 3 now");
    assertThat(found.get(0).remedy()).startsWith("say which");
  }

  @Test
  void other_words_are_the_directors_own_choice() {
    assertThat(between(music(ask("bar 2"), 60, 61, 62), music(ask("bar 1"), 60, 63, 61, 62)))
        .isEmpty();
  }

  @Test
  void what_must_not_move_any_more_is_an_error() {
    LaidAsk locked = new LaidAsk(Kind.CUE, "6", "", "bar 2", true, "locked", Optional.empty(), "");
    List<Finding> found = between(music(locked, 60, 61, 62), music(locked, 60, 63, 61, 62));
    assertThat(found).extracting(Finding::severity).containsExactly(Severity.ERROR);
    assertThat(found.get(0).sentence()).endsWith("; the panel is locked");
  }

  @Test
  void where_a_performer_was_called_it_is_an_error() {
    LaidMusic plain = music(ask("bar 2"), 60, 61, 62);
    LaidMusic called =
        new LaidMusic(plain.notes(), plain.cues(), plain.asks(), Map.of("6", List.of("hornist")));
    List<Finding> found = between(called, music(ask("bar 2"), 60, 63, 61, 62));
    assertThat(found).extracting(Finding::severity).containsExactly(Severity.ERROR);
    assertThat(found.get(0).sentence()).endsWith("; hornist was called for it");
  }

  @Test
  void a_place_not_put_right_goes_back_to_the_music_it_meant_first() {
    LaidMusic first = music(ask("bar 2"), 60, 61, 62);
    LaidMusic second = music(ask("bar 2"), 60, 63, 61, 62);
    OtherMusic once = OtherMusic.between(List.of(first), second);
    assertThat(once.unresolved()).hasSize(1);
    LaidMusic third = music(ask("bar 2"), 60, 64, 63, 61, 62);
    assertThat(OtherMusic.between(once.unresolved(), third).findings())
        .extracting(Finding::inFull)
        .containsExactly("panel 6 asks for bar 2: that is bar 4 now; bar 2 is new");
    assertThat(OtherMusic.between(once.unresolved(), first).unresolved()).isEmpty();
  }

  private static List<Finding> between(LaidMusic before, LaidMusic now) {
    return OtherMusic.between(List.of(before), now).findings();
  }

  private static LaidAsk ask(String words) {
    return new LaidAsk(Kind.CUE, "6", "", words, true, "", Optional.empty(), "");
  }

  private static LaidMusic music(LaidAsk ask, int... pitches) {
    List<HeldBar> bars = new ArrayList<>();
    List<List<BarNote>> notes = new ArrayList<>();
    List<LaidCue> cues = new ArrayList<>();
    long length = 4L * ScoreNotes.UNITS;
    for (int pitch : pitches) {
      int bar = bars.size() + 1;
      long start = length * bars.size();
      bars.add(new HeldBar(bar, 1, List.of(start), start + length));
      notes.add(List.of(new BarNote(0, pitch)));
      if (pitch >= 70) {
        cues.add(glimmer(cues.size() + 1, bar, new BarNote(start, pitch)));
      }
    }
    ScoreNotes score = new ScoreNotes(bars, List.of(new HeldPart("Horn", false, notes)));
    return new LaidMusic(Optional.of(score), cues, List.of(placed(ask, cues)), Map.of());
  }

  private static LaidCue glimmer(int number, int bar, BarNote note) {
    HeldReturn held = new HeldReturn("glimmer", number, List.of("Horn"), List.of(note));
    return new LaidCue(
        "glimmer-" + number,
        "return",
        "glimmer",
        number,
        bar,
        BigDecimal.ONE,
        Seconds.of(bar),
        24L * bar,
        "as given",
        Optional.of(held));
  }

  /** {@code bar 2} or {@code glimmer 1}, with the moment it means. */
  private static LaidAsk placed(LaidAsk ask, List<LaidCue> cues) {
    int number = Integer.parseInt(ask.words().substring(ask.words().indexOf(' ') + 1));
    boolean bar = ask.words().startsWith("bar ");
    if (!bar && number > cues.size()) {
      return ask;
    }
    BigFraction quarters =
        bar
            ? BigFraction.of(4L * (number - 1))
            : BigFraction.of(4L * (cues.get(number - 1).bar() - 1));
    String cue = bar ? "" : "glimmer-" + number;
    return new LaidAsk(
        ask.kind(),
        ask.panel(),
        ask.of(),
        ask.words(),
        ask.firm(),
        ask.held(),
        Optional.of(quarters),
        cue);
  }
}
