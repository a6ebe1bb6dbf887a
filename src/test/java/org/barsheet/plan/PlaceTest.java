package org.barsheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Timecode;
import org.barsheet.input.SyntaxException;
import org.barsheet.motif.Form;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlaceTest {

  private static Place parse(String text) {
    return Place.parse(text, FrameRate.FPS_24);
  }

  @Test
  void a_motif_is_named_with_its_number_or_a_bar_or_alone() {
    assertThat(parse("glimmer 3"))
        .isEqualTo(new Place.OfMotif("glimmer", OptionalInt.of(3), OptionalInt.empty()));
    assertThat(parse("glimmer near bar 33"))
        .isEqualTo(new Place.OfMotif("glimmer", OptionalInt.empty(), OptionalInt.of(33)));
    assertThat(parse(" glimmer "))
        .isEqualTo(new Place.OfMotif("glimmer", OptionalInt.empty(), OptionalInt.empty()));
  }

  @Test
  void a_return_may_be_named_by_its_form_and_the_part_that_plays_it() {
    assertThat(parse("glimmer in Oboe near bar 33"))
        .isEqualTo(played("glimmer", List.of(), Optional.of("Oboe"), OptionalInt.of(33)));
    assertThat(parse("night tide INVERTED augmented near bar 40"))
        .isEqualTo(
            played(
                "night tide",
                List.of(Form.INVERTED, Form.AUGMENTED),
                Optional.empty(),
                OptionalInt.of(40)));
    assertThat(parse("glimmer as given in English Horn"))
        .isEqualTo(
            played(
                "glimmer",
                List.of(Form.AS_GIVEN),
                Optional.of("English Horn"),
                OptionalInt.empty()));
    assertThat(parse("glimmer in “Violin 2” near bar 3"))
        .isEqualTo(parse("glimmer in \"Violin 2\" near bar 3"))
        .hasToString("glimmer in \"Violin 2\" near bar 3");
  }

  private static Place played(
      String motif, List<Form> forms, Optional<String> part, OptionalInt near) {
    return new Place.OfMotif(motif, new Played(forms, part), OptionalInt.empty(), near);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"night tide 2", "lamp-lighter's call 12", "theme-2 1", "Größe 4", "barge 1"})
  void a_motif_may_have_any_name_of_words_and_hyphens(String text) {
    int space = text.lastIndexOf(' ');
    assertThat(parse(text))
        .isEqualTo(
            new Place.OfMotif(
                text.substring(0, space),
                OptionalInt.of(Integer.parseInt(text.substring(space + 1))),
                OptionalInt.empty()));
  }

  @Test
  void a_bar_has_a_beat_and_a_time_round() {
    assertThat(parse("bar 12"))
        .isEqualTo(new Place.AtBar(12, OptionalInt.empty(), BigFraction.ONE));
    assertThat(parse("bar 12 beat 3"))
        .isEqualTo(new Place.AtBar(12, OptionalInt.empty(), BigFraction.of(3)));
    assertThat(parse("bar 12 time 2 beat 2.5"))
        .isEqualTo(new Place.AtBar(12, OptionalInt.of(2), BigFraction.of(5, 2)));
    assertThat(parse("Bar 0")).isEqualTo(new Place.AtBar(0, OptionalInt.empty(), BigFraction.ONE));
  }

  @Test
  void a_mark_is_everything_up_to_the_end() {
    assertThat(parse("mark Chorus 2: all in, bar 12"))
        .isEqualTo(new Place.AtMark("Chorus 2: all in, bar 12"));
  }

  @Test
  void a_timecode_is_read_at_the_films_rate() {
    Timecode label = new Timecode(FrameRate.FPS_29_97_DF, 1, 0, 12, 29);
    assertThat(Place.parse("01:00:12;29", FrameRate.FPS_29_97_DF))
        .isEqualTo(new Place.AtTimecode(label));
  }

  @Test
  void a_panel_is_counted_into() {
    assertThat(parse("2 bars into panel 3"))
        .isEqualTo(new Place.IntoPanel("3", Length.of(Length.Unit.BARS, BigFraction.of(2))));
    assertThat(parse("36 f into panel 1.10"))
        .isEqualTo(new Place.IntoPanel("1.10", Length.of(Length.Unit.FRAMES, BigFraction.of(36))));
    assertThat(parse("1.5 s into panel 12A"))
        .isEqualTo(
            new Place.IntoPanel("12A", Length.of(Length.Unit.SECONDS, BigFraction.of(3, 2))));
  }

  @Test
  void nothing_is_anywhere_and_a_hard_space_is_a_space() {
    assertThat(parse("  ")).isEqualTo(new Place.Anywhere());
    assertThat(parse("bar\u00a012")).isEqualTo(parse("bar 12"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "glimmer #3|8|'#3' isn't understood here",
        "glimmer 3 beat 2|10|'beat 2' isn't understood here",
        "glimmer 0|8|the return's number counts from 1",
        "glimmer 2.5|9|the return's number is a whole number",
        "glimmer near 33|13|'bar' is expected here",
        "glimmer near bar|16|the bar's number is missing here",
        "glimmer in|10|the part's name is missing here",
        "glimmer in near bar 3|11|the part's name is missing here",
        "glimmer in Violin 2|11|'Violin 2' may be a part, or a part and a number",
        "glimmer in \"Violin 2|11|this quote is not closed",
        "glimmer inverted 3|17|a number counts all returns, in any form and part",
        "glim/mer 3|4|'/' does not belong in a motif's name",
        "bar|3|the bar's number is missing here",
        "bar twelve|4|the bar's number is missing here",
        "bar 12.5|6|the bar's number is a whole number",
        "bar 12 beat|11|the beat's number is missing here",
        "bar 12 beat 0.5|12|beats count from 1",
        "bar 12 beat 2,5|13|use a decimal point, not a comma",
        "bar 12 beat 2 time 2|14|'time 2' isn't understood here",
        "bar 12 time 0|12|the number of times round counts from 1",
        "bar 123456789|4|123456789 is too large a number",
        "mark|4|the mark's text is missing here",
        "2 bars|6|'into panel' is expected here",
        "2 bars after panel 3|7|'into panel' is expected here",
        "2 bars into panel|17|the panel's name is missing here",
        "2 bars into panel 3 beat 2|20|'beat 2' isn't understood here",
        "2..4 bars into panel 3|0|give one amount here, not a range",
        "2 lines into panel 3|2|no unit is called 'lines'",
        "1.5 f into panel 3|1|frames are whole numbers",
        "01:00:12:24|9|24 is too many",
        "01:00:12;00|8|';' means drop-frame, and 24 fps doesn't use it",
        "#3|0|no place begins with '#'",
      })
  void what_is_wrong_is_said_at_the_character(String text, int offset, String sentence) {
    SyntaxException wrong = catchThrowableOfType(SyntaxException.class, () -> parse(text));
    assertThat(wrong).isNotNull();
    assertThat(wrong.sentence()).isEqualTo(sentence);
    assertThat(wrong.offset()).isEqualTo(offset);
    assertThat(wrong.remedy()).isNotEmpty();
  }

  @Test
  void the_caret_stands_under_the_character() {
    SyntaxException wrong =
        catchThrowableOfType(SyntaxException.class, () -> parse("  glimmer #3"));
    assertThat(wrong.excerpt()).containsExactly("glimmer #3", "        ^");
  }

  @Test
  void a_printed_place_reads_the_same_in_5000_seeded_trials() {
    Random random = new Random(20_260_101L);
    for (int trial = 0; trial < 5000; trial++) {
      FrameRate rate = FrameRate.ALL.get(random.nextInt(FrameRate.ALL.size()));
      Place place = RandomPlaces.place(random, rate);
      assertThat(Place.parse(place.toString(), rate)).as(place.toString()).isEqualTo(place);
    }
  }

  @Test
  void any_text_is_a_place_or_a_syntax_error_inside_it() {
    Random random = new Random(7L);
    String letters = "glimer bar mtkn0123456789.:;#-/ pf into s";
    for (int trial = 0; trial < 20_000; trial++) {
      StringBuilder text = new StringBuilder();
      int length = random.nextInt(24);
      for (int i = 0; i < length; i++) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      assertReadsOrPoints(text.toString());
    }
  }

  private static void assertReadsOrPoints(String text) {
    try {
      Place place = parse(text);
      assertThat(parse(place.toString())).isEqualTo(place);
    } catch (SyntaxException wrong) {
      assertThat(wrong.offset()).isBetween(0, text.length());
      assertThat(wrong.sentence()).isNotEmpty();
    }
  }
}
