package org.barsheet.motif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.input.SyntaxException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NotesTest {

  private static final int[] VALUES = {1, 2, 3, 4, 6, 8, 12, 16, 20, 24, 28, 32, 48, 64};

  @Test
  void a_line_has_onsets_lengths_and_rests_between() {
    assertThat(Notes.parse("C5/4 E5/8 r/8 G5/4+16"))
        .containsExactly(note(0, 1, 1, 72), note(1, 1, 2, 76), note(2, 5, 4, 79));
  }

  /** MIDI 1.0 numbers keys 0 to 127 with middle C 60; that it is C4 is scientific pitch (ASA). */
  @ParameterizedTest
  @CsvSource({
    "C4, 60",
    "A4, 69",
    "C-1, 0",
    "G9, 127",
    "A0, 21",
    "C8, 108",
    "B#3, 60",
    "Cb4, 59",
    "F##4, 67",
    "Bbb4, 69",
    "Bb3, 58",
    "E#4, 65"
  })
  void pitches_follow_scientific_pitch_notation(String name, int key) {
    assertThat(Notes.parse(name + "/4").get(0).pitch()).isEqualTo(key);
  }

  @Test
  void any_whole_number_divides_the_whole_note_and_any_number_of_values_is_tied() {
    assertThat(Notes.parse("C4/12").get(0).length()).isEqualTo(BigFraction.of(1, 3));
    assertThat(Notes.parse("C4/7").get(0).length()).isEqualTo(BigFraction.of(4, 7));
    assertThat(Notes.parse("C4/1+2+4+4+12").get(0).length()).isEqualTo(BigFraction.of(25, 3));
  }

  @Test
  void a_motif_begins_with_its_first_note_not_with_a_rest() {
    assertThat(Notes.parse("r/4 r/8 C5/4 r/4")).isEqualTo(Notes.parse("C5/4"));
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '$',
      value = {
        "C5/4 H5/4, 5, no note begins with \"H\"",
        "C5/4 c5/4, 5, note letters are capitals",
        "C5/4 R/4, 5, a rest is a small r",
        "C5, 2, the length is missing",
        "C/4, 1, the octave is missing",
        "C-/4, 2, the octave is missing",
        "C10/4, 1, octaves go from -1 to 9",
        "C-2/4, 1, octaves go from -1 to 9",
        "C5/4+, 5, a length is a number",
        "C5/4+/8, 5, a length is a number",
        "C5/x, 3, a length is a number",
        "C5/0, 3, there is no 1/0 of a whole note",
        "C5/4., 4, \".\" does not belong after a length",
        "C5/4|D5/4, 4, \"|\" does not belong after a length",
        "C5/4 G#9/4, 5, G#9 is outside the MIDI range",
        "Cb-1/4, 0, Cb-1 is outside the MIDI range",
        "C#b5/4, 2, a letter takes one or two of the same accidental",
        "C###5/4, 3, a letter takes one or two of the same accidental",
        "C\u266f5/4, 1, \"\u266f\" isn't understood here",
        "C\u22121/4, 1, \"\u2212\" isn't understood here",
        "r, 1, the length is missing",
        "r/8, 3, no note here",
        "C5/9999999999, 3, a length this short cannot be played",
        "\uD834\uDD1E C4/4, 0, no note begins with \"\uD834\uDD1E\""
      })
  void an_error_stands_at_the_character_that_does_not_belong(
      String text, int offset, String sentence) {
    SyntaxException error = catchThrowableOfType(SyntaxException.class, () -> Notes.parse(text));
    assertThat(error.sentence()).isEqualTo(sentence);
    assertThat(error.offset()).isEqualTo(offset);
    assertThat(error.remedy()).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\t"})
  void an_empty_line_is_an_error(String text) {
    assertThatThrownBy(() -> Notes.parse(text)).isInstanceOf(SyntaxException.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"C5/4 E5/8 r/8 G5/4+16", "A3/12 B3/12 C4/12", "Eb2/1+1+2 r/6 F#2/20", "C4/2+4"})
  void what_is_printed_reads_as_it_was(String text) {
    assertThat(Notes.print(Notes.parse(text))).isEqualTo(text);
  }

  @Test
  void a_note_that_sounds_on_is_cut_where_the_next_begins() {
    assertThat(Notes.print(List.of(note(0, 2, 1, 60), note(1, 1, 1, 62)))).isEqualTo("C4/4 D4/4");
  }

  @Test
  void random_lines_read_back_as_they_were_printed() {
    SplittableRandom random = new SplittableRandom(4);
    for (int trial = 0; trial < 500; trial++) {
      StringBuilder line = new StringBuilder("C4/4");
      for (int i = random.nextInt(12); i > 0; i--) {
        line.append(' ').append(random.nextInt(4) == 0 ? "r" : Notes.name(random.nextInt(128)));
        line.append('/').append(VALUES[random.nextInt(VALUES.length)]);
        for (int ties = random.nextInt(3); ties > 0; ties--) {
          line.append('+').append(VALUES[random.nextInt(VALUES.length)]);
        }
      }
      List<MotifNote> notes = Notes.parse(line.toString());
      assertThat(Notes.parse(Notes.print(notes))).as(line.toString()).isEqualTo(notes);
    }
  }

  private static MotifNote note(int onset, int numerator, int denominator, int pitch) {
    return new MotifNote(BigFraction.of(onset), BigFraction.of(numerator, denominator), pitch);
  }
}
