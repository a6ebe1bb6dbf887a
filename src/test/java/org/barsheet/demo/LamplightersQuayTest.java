package org.barsheet.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.barsheet.demo.Music.Note;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class LamplightersQuayTest {

  private static final Music MUSIC = LamplightersQuay.compose();

  static List<PlantedReturn> returns() {
    return LamplightersQuay.planted();
  }

  private static List<PlantedReturn> returnsOf(Motif motif) {
    return returns().stream().filter(planted -> planted.motif() == motif).toList();
  }

  @Test
  void the_committed_score_is_what_the_program_writes() throws Exception {
    assertThat(ScoreFile.bytes(MUSIC))
        .isEqualTo(Files.readAllBytes(Path.of("scores", WriteDemo.SCORE)));
  }

  @Test
  void glimmer_returns_at_least_fourteen_times_in_every_form() {
    assertThat(returnsOf(Motif.GLIMMER)).hasSizeGreaterThanOrEqualTo(14);
    assertThat(returnsOf(Motif.GLIMMER))
        .extracting(PlantedReturn::form)
        .containsAll(EnumSet.allOf(Form.class));
  }

  @Test
  void tide_returns_six_times() {
    assertThat(returnsOf(Motif.TIDE)).hasSize(6);
  }

  @Test
  void glimmer_stands_once_in_stretto_of_three() {
    List<Integer> starts =
        returnsOf(Motif.GLIMMER).stream()
            .filter(planted -> planted.bar() == 33 || planted.bar() == 34)
            .map(planted -> 4 * planted.bar() + planted.beat().intValueExact())
            .toList();
    assertThat(starts).containsExactly(133, 135, 137);
  }

  @Test
  void glimmer_sounds_in_octaves_in_a_tutti() {
    assertThat(returnsOf(Motif.GLIMMER))
        .anySatisfy(planted -> assertThat(planted.parts()).hasSizeGreaterThan(3));
  }

  @ParameterizedTest
  @EnumSource(Motif.class)
  void a_motif_first_sounds_as_given_and_alone_in_its_part(Motif motif) {
    PlantedReturn first = returnsOf(motif).get(0);
    assertThat(first.form()).isEqualTo(Form.AS_GIVEN);
    Player player = Player.valueOf(first.parts().get(0).toUpperCase(Locale.ROOT));
    long start = MUSIC.bars().startOf(first.bar());
    List<Integer> heard =
        MUSIC.notes(player).stream()
            .filter(note -> note.start() >= start && note.start() < start + motif.phrase().length())
            .map(Note::key)
            .toList();
    assertThat(heard).isEqualTo(keys(motif.phrase()));
  }

  @ParameterizedTest
  @MethodSource("returns")
  void a_planted_return_has_the_form_the_ledger_says(PlantedReturn planted) {
    Phrase given = planted.motif().phrase();
    List<Integer> steps = steps(keys(given));
    List<Integer> heard = steps(keys(planted.phrase()));
    switch (planted.form()) {
      case AS_GIVEN -> assertThat(keys(planted.phrase())).isEqualTo(keys(given));
      case TRANSPOSED -> {
        assertThat(heard).isEqualTo(steps);
        assertThat(keys(planted.phrase())).isNotEqualTo(keys(given));
      }
      case INVERTED -> assertThat(heard).isEqualTo(steps.stream().map(step -> -step).toList());
      case TONAL -> {
        assertThat(heard).hasSameSizeAs(steps).isNotEqualTo(steps);
        for (int i = 0; i < steps.size(); i++) {
          assertThat(Math.abs(heard.get(i) - steps.get(i))).isLessThanOrEqualTo(1);
        }
      }
      case AUGMENTED -> {
        assertThat(heard).isEqualTo(steps);
        assertThat(values(planted.phrase()))
            .isEqualTo(values(given).stream().map(value -> 2 * value).toList());
      }
      case ORNAMENTED ->
          assertThat(onsets(planted.phrase()))
              .hasSizeGreaterThan(steps.size() + 1)
              .containsAll(onsets(given));
    }
    if (planted.form() != Form.AUGMENTED && planted.form() != Form.ORNAMENTED) {
      assertThat(values(planted.phrase())).isEqualTo(values(given));
    }
  }

  @Test
  void nine_pitched_parts_and_drums_stay_within_their_ranges() {
    for (Player player : Player.values()) {
      assertThat(MUSIC.notes(player))
          .isNotEmpty()
          .allSatisfy(
              note -> {
                assertThat(note.key()).isBetween(player.lowestKey, player.highestKey);
                assertThat(note.velocity()).isBetween(20, 120);
                assertThat(note.end()).isGreaterThan(note.start());
              });
    }
  }

  @Test
  void nobody_plays_past_the_last_bar() {
    long end = MUSIC.bars().startOf(MUSIC.bars().lastBar() + 1);
    for (Player player : Player.values()) {
      assertThat(MUSIC.notes(player))
          .allSatisfy(note -> assertThat(note.end()).isLessThanOrEqualTo(end));
    }
  }

  @Test
  void it_has_a_pickup_a_waltz_a_short_bar_two_ritardandi_and_an_a_tempo() {
    assertThat(MUSIC.meters()).extracting(Music.Meter::beats).containsExactly(1, 4, 3, 4, 2, 4);
    assertThat(MUSIC.tempos()).hasSizeGreaterThan(20);
    assertThat(MUSIC.texts())
        .extracting(Music.Text::text)
        .contains("A", "B", "C", "D", "E", "F", "G", "rit.", "a tempo", "Ferry horn");
  }

  /** Under one another for a beat or more, two notes a minor ninth apart would be a slip. */
  @Test
  void no_two_long_notes_rub_at_a_minor_ninth() {
    List<Note> notes = new ArrayList<>();
    for (Player player : Player.values()) {
      if (player != Player.PERCUSSION) {
        notes.addAll(MUSIC.notes(player));
      }
    }
    Set<String> rubs = new HashSet<>();
    for (Note low : notes) {
      for (Note high : notes) {
        long together = Math.min(low.end(), high.end()) - Math.max(low.start(), high.start());
        if (together >= ScoreFile.TICKS_PER_QUARTER
            && high.key() > low.key()
            && (high.key() - low.key()) % 12 == 1) {
          rubs.add(MUSIC.bars().placeOf(high.start()) + ": " + low.key() + " " + high.key());
        }
      }
    }
    assertThat(rubs).isEmpty();
  }

  private static List<Integer> keys(Phrase phrase) {
    return phrase.sounds().stream().map(Phrase.Sound::key).toList();
  }

  private static List<Long> values(Phrase phrase) {
    return phrase.sounds().stream().map(Phrase.Sound::ticks).toList();
  }

  private static List<List<Long>> onsets(Phrase phrase) {
    return phrase.sounds().stream()
        .map(sound -> List.of(sound.start(), (long) sound.key()))
        .toList();
  }

  private static List<Integer> steps(List<Integer> keys) {
    return IntStream.range(1, keys.size()).mapToObj(i -> keys.get(i) - keys.get(i - 1)).toList();
  }
}
