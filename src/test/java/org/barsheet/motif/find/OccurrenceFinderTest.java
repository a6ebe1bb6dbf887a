package org.barsheet.motif.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Form;
import org.barsheet.motif.Match;
import org.barsheet.motif.Motif;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Notes;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.ScoreSketch;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OccurrenceFinderTest {

  private static final String LAMP = "C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2 C5/2";
  private static final Set<Form> ALL_TRANSFORMS =
      Set.of(Form.INVERTED, Form.RETROGRADE, Form.AUGMENTED, Form.DIMINISHED);

  /** The motif is C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2 C5/2. Common practice, no source. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2 C5/2            | CERTAIN | as given",
        "C4/4 E4/8 D4/8 G4/4 A4/8 G4/8 E4/2 C4/2            | CERTAIN | as given, down an octave",
        "D5/4 F#5/8 E5/8 A5/4 B5/8 A5/8 F#5/2 D5/2          | CERTAIN | transposed, up a tone",
        "G5/4 B5/8 A5/8 D6/4 E6/8 D6/8 B5/2 G5/2            | CERTAIN | transposed, up a fifth",
        "C5/4 Eb5/8 D5/8 G5/4 Ab5/8 G5/8 Eb5/2 C5/2         | CERTAIN | tonal, at the same pitch",
        "D5/4 F5/8 E5/8 A5/4 B5/8 A5/8 F5/2 D5/2            | CERTAIN | tonal, up a tone",
        "C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2 C5/8            | CERTAIN | as given, last note shortened",
        "G5/4 B5/8 A5/8 C6/4 D6/8 C6/8 A5/2 F5/2            | CERTAIN | tonal, up a fourth, 3 notes changed",
        "C5/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2                 | CERTAIN | as given, last note missing",
        "A4/4 E5/8 D5/8 G5/4 A5/8 G5/8 E5/2 C5/2            | CERTAIN | tonal, at the same pitch, first note changed",
        "C5/4 E5/8 r/8 G5/4 A5/8 G5/8 E5/2 C5/2             | LIKELY  | as given, note 3 missing",
        "C5/4 Ab4/8 Bb4/8 F4/4 Eb4/8 F4/8 Ab4/2 C5/2        | CERTAIN | inverted, at the same pitch",
        "G5/4 E5/8 F5/8 C5/4 B4/8 C5/8 E5/2 G5/2            | CERTAIN | inverted, tonal, up a fifth",
        "C5/2 E5/2 G5/8 A5/8 G5/4 D5/8 E5/8 C5/4            | CERTAIN | retrograde, at the same pitch",
        "C5/2 E5/4 D5/4 G5/2 A5/4 G5/4 E5/1 C5/1            | CERTAIN | augmented to twice its length, at the same pitch",
        "F4/8 A4/16 G4/16 C5/8 D5/16 C5/16 A4/4 F4/4        | CERTAIN | diminished to half its length, down a fifth",
        "C5/4+8 E5/8+16 D5/8+16 G5/4+8 A5/8+16 G5/8+16 E5/2+4 C5/2+4 | CERTAIN | augmented to 3/2 of its length, at the same pitch",
        "C5/6 E5/12 D5/12 G5/6 A5/12 G5/12 E5/3 C5/3        | CERTAIN | diminished to 2/3 of its length, at the same pitch",
        "C5/12 E5/24 D5/24 G5/12 A5/24 G5/24 E5/6 C5/6      | CERTAIN | diminished to 1/3 of its length, at the same pitch",
        "C5/8 Ab4/16 Bb4/16 F4/8 Eb4/16 F4/16 Ab4/4 C5/4    | CERTAIN | inverted, diminished to half its length, at the same pitch"
      })
  void a_return_is_found_and_its_form_is_named(
      String heard, Certainty certainty, String description) {
    Score score = new ScoreSketch().part("Celesta").bar(2, heard).score();
    List<Occurrence> found = OccurrenceFinder.find(score, motif(Match.TONAL, ALL_TRANSFORMS, LAMP));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).variation().description()).isEqualTo(description);
    assertThat(found.get(0).certainty()).isEqualTo(certainty);
    assertThat(found.get(0).startTick()).isEqualTo(4 * ScoreSketch.TICKS_PER_QUARTER);
  }

  @ParameterizedTest
  @CsvSource({"EXACT, 2", "TRANSPOSED, 3", "TONAL, 4"})
  void each_kind_of_match_includes_those_before_it(Match match, int returns) {
    Score score =
        new ScoreSketch()
            .part("Celesta")
            .bar(1, LAMP)
            .bar(4, "C6/4 E6/8 D6/8 G6/4 A6/8 G6/8 E6/2 C6/2")
            .bar(7, "D5/4 F#5/8 E5/8 A5/4 B5/8 A5/8 F#5/2 D5/2")
            .bar(10, "C5/4 Eb5/8 D5/8 G5/4 Ab5/8 G5/8 Eb5/2 C5/2")
            .score();
    assertThat(OccurrenceFinder.find(score, motif(match, Set.of(), LAMP))).hasSize(returns);
  }

  @Test
  void forms_nobody_asked_for_are_not_looked_for() {
    Score score =
        new ScoreSketch().part("Celesta").bar(1, "C5/2 E5/4 D5/4 G5/2 A5/4 G5/4 E5/1 C5/1").score();
    assertThat(OccurrenceFinder.find(score, motif(Match.TONAL, Set.of(), LAMP))).isEmpty();
  }

  @Test
  void doublings_are_one_return_that_lists_its_parts() {
    Score score =
        new ScoreSketch()
            .part("Flute")
            .bar(1, LAMP.replace('5', '6'))
            .part("Violin 1")
            .bar(1, LAMP)
            .part("Violin 2")
            .bar(1, LAMP)
            .part("Bass")
            .bar(1, LAMP.replace('5', '3'))
            .score();
    List<Occurrence> found = OccurrenceFinder.find(score, motif(Match.TONAL, Set.of(), LAMP));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).parts()).containsExactly(0, 1, 2, 3);
    assertThat(found.get(0).variation().description())
        .isEqualTo(
            "as given, up an octave, in Flute with Violin 1 an octave lower and Violin 2 an octave"
                + " lower and Bass 3 octaves lower");
  }

  @Test
  void an_inner_voice_is_said_to_lie_under_the_part_above_it() {
    Score score =
        new ScoreSketch()
            .part("Flute")
            .bar(1, "C6/1 B5/1")
            .part("Viola")
            .bar(1, LAMP.replace('5', '4'))
            .part("Bass")
            .bar(1, "C3/1 G3/1")
            .score();
    List<Occurrence> found = OccurrenceFinder.find(score, motif(Match.TONAL, Set.of(), LAMP));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).variation().description())
        .isEqualTo("as given, down an octave, in Viola under Flute");
  }

  @Test
  void a_stretto_stays_apart() {
    Score score =
        new ScoreSketch()
            .part("Oboe")
            .bar(1, LAMP)
            .part("Horn")
            .at(1, Notes.parse("G4/4 B4/8 A4/8 D5/4 E5/8 D5/8 B4/2 G4/2"))
            .score();
    List<Occurrence> found = OccurrenceFinder.find(score, motif(Match.TONAL, Set.of(), LAMP));
    assertThat(found).extracting(Occurrence::number).containsExactly(1, 2);
    assertThat(found)
        .extracting(Occurrence::startTick)
        .containsExactly(0L, (long) ScoreSketch.TICKS_PER_QUARTER);
  }

  @Test
  void a_line_handed_from_part_to_part_is_still_one_return() {
    Score score =
        new ScoreSketch()
            .part("Oboe")
            .bar(1, "C5/4 E5/8 D5/8 G5/4")
            .part("Clarinet")
            .at(3, Notes.parse("A5/8 G5/8 E5/2 C5/2"))
            .score();
    List<Occurrence> found = OccurrenceFinder.find(score, motif(Match.TONAL, Set.of(), LAMP));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).parts()).containsExactly(0, 1);
  }

  @Test
  void drums_play_no_motif() {
    Score score = new ScoreSketch().drums("Kit").bar(1, LAMP).score();
    assertThat(OccurrenceFinder.find(score, motif(Match.TONAL, Set.of(), LAMP))).isEmpty();
  }

  @Test
  void the_accent_falls_on_the_note_it_names() {
    Score score = new ScoreSketch().part("Celesta").bar(1, LAMP).score();
    for (int note = 1; note <= 8; note++) {
      Motif motif =
          new Motif("lamp", List.of(Notes.parse(LAMP)), new Accent(note), Match.TONAL, Set.of());
      Occurrence found = OccurrenceFinder.find(score, motif).get(0);
      assertThat(found.notes().accentTick()).isEqualTo(found.notes().ticks().get(note - 1));
    }
  }

  /** A motif may have a further shape of fewer notes: its last note is the nearest to be had. */
  @Test
  void an_accent_past_the_end_of_a_shape_falls_on_its_last_note() {
    String head = "C5/4 E5/8 D5/8 G5/2";
    Score score = new ScoreSketch().part("Celesta").bar(1, LAMP).bar(5, head).score();
    List<List<MotifNote>> shapes = List.of(Notes.parse(LAMP), Notes.parse(head));
    Motif motif = new Motif("lamp", shapes, new Accent(6), Match.EXACT, Set.of());
    List<Occurrence> found = OccurrenceFinder.find(score, motif);
    assertThat(found).hasSize(2);
    assertThat(found.get(0).notes().accentTick()).isEqualTo(found.get(0).notes().ticks().get(5));
    assertThat(found.get(1).notes().ticks()).hasSize(4);
    assertThat(found.get(1).notes().accentTick()).isEqualTo(found.get(1).notes().ticks().get(3));
  }

  @Test
  void any_of_several_shapes_is_a_return() {
    String other = "E5/8 F5/8 G5/4 C6/4 B5/8 A5/8 G5/2";
    Score score = new ScoreSketch().part("Celesta").bar(1, LAMP).bar(4, other).score();
    assertThat(OccurrenceFinder.find(score, motif(Match.TONAL, Set.of(), LAMP, other))).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "C5/4 E5/8 D5/8 G5/4 | SHORTENED | shortened to its first 4 notes, as given",
        "C5/8 D5/8 F5/16 E5/16 D5/8 A5/8 G5/8 B5/16 A5/16 G5/8 F5/8 E5/4+8 C5/2 | ORNAMENTED | ornamented, as given",
        "D5/32 C5/8+16+32 F5/32 E5/16+32 E5/32 D5/16+32 A5/32 G5/8+16+32 Bb5/32 A5/16+32 G5/8 E5/2 C5/2 | ORNAMENTED | ornamented, as given"
      })
  void heads_and_ornamented_returns_are_possible_ones_and_only_if_asked(
      String heard, Form form, String description) {
    Score score = new ScoreSketch().part("Celesta").bar(2, heard).score();
    assertThat(OccurrenceFinder.find(score, motif(Match.TONAL, Set.of(), LAMP))).isEmpty();
    List<Occurrence> found = OccurrenceFinder.find(score, motif(Match.TONAL, Set.of(form), LAMP));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).certainty()).isEqualTo(Certainty.POSSIBLE);
    assertThat(found.get(0).number()).isZero();
    assertThat(found.get(0).variation().description()).isEqualTo(description);
  }

  @Test
  void a_dotted_variant_is_still_a_return() {
    Score score =
        new ScoreSketch()
            .part("Celesta")
            .bar(1, "C5/4 E5/8+16 D5/16 G5/4 A5/8 G5/8 E5/2 C5/2")
            .score();
    assertThat(OccurrenceFinder.find(score, motif(Match.TONAL, Set.of(), LAMP))).hasSize(1);
  }

  @Test
  void a_free_match_forgives_more() {
    Score score =
        new ScoreSketch()
            .part("Celesta")
            .bar(1, "C5/4 E5/8+16 D5/16 A5/4 B5/8 A5/8 E5/2 C5/2")
            .score();
    assertThat(OccurrenceFinder.find(score, motif(Match.TONAL, Set.of(), LAMP))).isEmpty();
    assertThat(OccurrenceFinder.find(score, motif(Match.FREE, Set.of(), LAMP))).hasSize(1);
  }

  private static Motif motif(Match match, Set<Form> forms, String... shapes) {
    List<List<MotifNote>> lines = List.of(shapes).stream().map(Notes::parse).toList();
    return new Motif("lamp", lines, Accent.FIRST, match, forms);
  }
}
