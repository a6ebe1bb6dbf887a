package org.barsheet.revision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.revision.Fate.Gone;
import org.barsheet.revision.Fate.Kept;
import org.barsheet.revision.Fate.Undecided;
import org.barsheet.score.BarBeat;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class RevisionTest {

  private static final BarBeat THIRD_OF_TWO = new BarBeat(2, 1, BigFraction.of(3));

  @Test
  void a_place_moves_with_its_bar() {
    assertThat(revision(bars(60, 61, 62), bars(60, 70, 61, 62)).of(THIRD_OF_TWO))
        .isEqualTo(new Kept<>(new BarBeat(3, 1, BigFraction.of(3)), false));
  }

  @Test
  void a_place_whose_bar_was_taken_out_is_gone() {
    assertThat(revision(bars(60, 61, 62), bars(60, 62)).of(THIRD_OF_TWO)).isEqualTo(new Gone<>());
  }

  @Test
  void a_place_in_a_bar_that_is_repeated_now_may_be_in_either() {
    assertThat(revision(bars(60, 61, 62), bars(60, 61, 61, 62)).of(THIRD_OF_TWO))
        .isEqualTo(
            new Undecided<>(List.of(THIRD_OF_TWO, new BarBeat(3, 1, BigFraction.of(3))), false));
  }

  @Test
  void a_bar_that_was_put_elsewhere_is_found_there() {
    assertThat(revision(bars(60, 61, 62, 63, 64), bars(60, 62, 63, 64, 61)).of(THIRD_OF_TWO))
        .isEqualTo(new Kept<>(new BarBeat(5, 1, BigFraction.of(3)), false));
  }

  @Test
  void a_bar_with_other_notes_between_bars_that_stayed_is_the_same_bar_changed() {
    assertThat(revision(bars(60, 61, 62), bars(60, 73, 62)).of(THIRD_OF_TWO))
        .isEqualTo(new Kept<>(THIRD_OF_TWO, true));
  }

  @Test
  void a_moment_is_counted_in_quarter_notes() {
    assertThat(revision(bars(60, 61), bars(70, 60, 61)).ofQuarters(BigFraction.of(9, 2)))
        .isEqualTo(new Kept<>(BigFraction.of(17, 2), false));
  }

  @Test
  void the_same_notes_in_other_bars_stay_where_they_are() {
    ScoreNotes threes = inBarsOf(3, 60, 61, 62);
    ScoreNotes fours = inBarsOf(4, 60, 61, 62);
    Revision revision = Revision.between(threes, fours);
    assertThat(revision.sameNotes()).isTrue();
    assertThat(revision.of(BarBeat.ofBar(2)))
        .isEqualTo(new Kept<>(new BarBeat(1, 1, BigFraction.of(4)), false));
  }

  /** Bars 2 and 3 of four quarters become four bars of two, behind a new bar. */
  @Test
  void a_passage_that_was_only_barred_otherwise_stays_with_its_notes() {
    ScoreNotes before = bars(60, 61, 62, 63);
    ScoreNotes inserted = bars(60, 70, 61, 62, 63);
    List<HeldBar> bars = new ArrayList<>(inserted.bars());
    List<List<BarNote>> notes = new ArrayList<>(inserted.parts().get(0).bars());
    long half = 2L * ScoreNotes.UNITS;
    for (int bar = 3; bar >= 2; bar--) {
      HeldBar whole = bars.remove(bar);
      List<BarNote> both = notes.remove(bar);
      long middle = whole.start() + half;
      long end = whole.end();
      bars.add(bar, new HeldBar(0, 1, List.of(middle, middle + half / 2), end));
      bars.add(bar, new HeldBar(0, 1, List.of(whole.start(), whole.start() + half / 2), middle));
      notes.add(bar, List.of(new BarNote(0, both.get(1).pitch())));
      notes.add(bar, List.of(both.get(0)));
    }
    for (int bar = 0; bar < bars.size(); bar++) {
      HeldBar any = bars.get(bar);
      bars.set(bar, new HeldBar(bar + 1, 1, any.beats(), any.end()));
    }
    ScoreNotes now = new ScoreNotes(bars, List.of(new HeldPart("Oboe", false, notes)));
    assertThat(revision(before, now).of(THIRD_OF_TWO))
        .isEqualTo(new Kept<>(BarBeat.ofBar(4), false));
    assertThat(revision(before, now).of(BarBeat.ofBar(4)))
        .isEqualTo(new Kept<>(BarBeat.ofBar(7), false));
  }

  @Test
  void a_return_in_another_part_and_key_is_the_same_return() {
    HeldReturn oboe = new HeldReturn("glimmer", 1, List.of("Oboe"), notes(192, 61, 63));
    HeldReturn horn = new HeldReturn("glimmer", 2, List.of("Horn"), notes(384, 68, 70));
    Revision revision = revision(bars(60, 61, 62), bars(60, 70, 61, 62));
    assertThat(revision.ofReturns(List.of(oboe), List.of(horn)))
        .containsExactly(new Kept<>(horn, true));
  }

  @Test
  void a_piece_of_ones_own_bars_is_written_and_read_back() {
    ScoreNotes piece = Piece.invented(new SplittableRandom(4)).notes();
    HeldPart part = piece.parts().get(0);
    assertThat(NotesText.bars(NotesText.ofBars(part.bars()))).isEqualTo(part.bars());
    assertThat(NotesText.beats(NotesText.ofBeats(piece.bars())))
        .isEqualTo(piece.bars().stream().map(HeldBar::beats).toList());
  }

  /** A file written anew: other order and names of tracks. */
  @RepeatedTest(20)
  void a_score_that_was_only_written_anew_gives_no_alarm(RepetitionInfo repetition) {
    Piece piece = Piece.invented(new SplittableRandom(repetition.getCurrentRepetition()));
    ScoreNotes before = piece.notes();
    List<HeldPart> parts = new ArrayList<>();
    before
        .parts()
        .forEach(part -> parts.add(new HeldPart("track " + parts.size(), false, part.bars())));
    Collections.reverse(parts);
    Revision revision = Revision.between(before, new ScoreNotes(before.bars(), parts));
    for (int i = 0; i < before.bars().size(); i++) {
      assertThat(revision.ofBar(i)).isEqualTo(new Kept<>(i, false));
    }
    List<HeldReturn> returns = piece.returns();
    assertThat(revision.ofReturns(returns, returns))
        .isEqualTo(returns.stream().map(held -> new Kept<>(held, false)).toList());
  }

  @Test
  void what_a_composer_does_to_a_piece_is_found_again() {
    check(RevisionTally.of(5_000, 60));
  }

  @Test
  @Tag("trial")
  void what_a_composer_does_to_a_thousand_pieces_is_found_again() {
    RevisionTally tally = RevisionTally.of(1, 1_000);
    System.out.println(tally);
    check(tally);
  }

  /** Bars that stand once, and bars of which nearly all stand many times. */
  @Test
  @Tag("trial")
  void two_hundred_thousand_notes_are_paired() {
    for (int kinds : new int[] {5_000, 50}) {
      Piece before = large(kinds);
      List<Piece.PieceBar> bars = new ArrayList<>(before.bars());
      bars.addAll(1_000, Piece.section(new SplittableRandom(8), before.parts(), 4, 900_000));
      ScoreNotes was = before.notes();
      ScoreNotes is = new Piece(bars, before.parts()).notes();
      long start = System.nanoTime();
      Revision revision = Revision.between(was, is);
      System.out.printf(
          "%d notes, %d kinds of bars: %d ms%n",
          was.parts().stream().flatMap(part -> part.bars().stream()).mapToInt(List::size).sum(),
          kinds,
          (System.nanoTime() - start) / 1_000_000);
      assertThat(revision.ofBar(10).possible()).contains(10);
      assertThat(revision.ofBar(4_000).possible()).contains(4_004);
    }
  }

  private static Piece large(int kinds) {
    SplittableRandom random = new SplittableRandom(9);
    List<Piece.PieceBar> some = Piece.section(random, 16, kinds, 1);
    List<Piece.PieceBar> bars = new ArrayList<>();
    for (int bar = 0; bar < 5_000; bar++) {
      Piece.PieceBar like = some.get(bar % kinds);
      bars.add(new Piece.PieceBar(bar + 1, like.id(), like.quarters(), like.notes(), 0));
    }
    return new Piece(bars, 16);
  }

  private static void check(RevisionTally tally) {
    assertThat((double) (tally.sure + tally.asked) / tally.kept)
        .as("%s", tally)
        .isGreaterThan(0.997);
    assertThat((double) (tally.deletionsTold + tally.deletionsAsked) / tally.deleted)
        .as("%s", tally)
        .isGreaterThan(0.95);
    assertThat(tally.renumberingsTold).as("%s", tally).isEqualTo(tally.renumbered);
  }

  private static Revision revision(ScoreNotes before, ScoreNotes now) {
    return Revision.between(before, now);
  }

  /** A bar a pitch: one whole note of it, and the tone above it. */
  private static ScoreNotes bars(int... pitches) {
    return inBarsOf(4, pitches);
  }

  /** A whole note and the tone above it for each pitch, in bars of so many quarters. */
  private static ScoreNotes inBarsOf(int quarters, int... pitches) {
    int bars = (4 * pitches.length + quarters - 1) / quarters;
    long length = (long) quarters * ScoreNotes.UNITS;
    List<HeldBar> held = new ArrayList<>();
    List<List<BarNote>> notes = new ArrayList<>();
    for (int bar = 0; bar < bars; bar++) {
      List<Long> beats = new ArrayList<>();
      for (int beat = 0; beat < quarters; beat++) {
        beats.add(bar * length + (long) beat * ScoreNotes.UNITS);
      }
      held.add(new HeldBar(bar + 1, 1, beats, (bar + 1) * length));
      notes.add(new ArrayList<>());
    }
    for (int i = 0; i < pitches.length; i++) {
      for (BarNote note : notes(4L * ScoreNotes.UNITS * i, pitches[i], pitches[i] + 2)) {
        int bar = (int) (note.at() / length);
        notes.get(bar).add(new BarNote(note.at() - bar * length, note.pitch()));
      }
    }
    return new ScoreNotes(held, List.of(new HeldPart("Oboe", false, notes)));
  }

  private static List<BarNote> notes(long at, int first, int second) {
    return List.of(new BarNote(at, first), new BarNote(at + 2L * ScoreNotes.UNITS, second));
  }
}
