package org.barsheet.revision;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MusicChangesTest {

  private static final int BAR = 4 * 480;

  @TempDir Path folder;

  @Test
  void a_score_against_itself_is_the_same_from_end_to_end() {
    List<MusicChange> changes = between(bars(60, 61, 62, 63), bars(60, 61, 62, 63));
    assertThat(changes).hasSize(1);
    assertThat(changes.get(0).isChange()).isFalse();
  }

  @Test
  void bars_put_in_are_new_and_those_after_them_are_the_same_under_other_numbers() {
    assertThat(sentences(between(bars(60, 61, 62, 63), bars(60, 61, 70, 71, 62, 63))))
        .containsExactly("bars 3 to 4 are new", "bars 5 to 6 (was bars 3 to 4): the same notes");
  }

  @Test
  void bars_taken_out_are_gone() {
    assertThat(sentences(between(bars(60, 61, 62, 63), bars(60, 63))))
        .containsExactly("bars 2 to 3 are gone", "bar 2 (was bar 4): the same notes");
  }

  @Test
  void a_bar_played_otherwise_names_the_part() {
    assertThat(sentences(between(bars(60, 61, 62, 63), bars(60, 61, 72, 63))))
        .containsExactly("bar 3: different notes in Flute");
  }

  @Test
  void the_same_notes_in_another_tempo_last_longer() {
    List<MusicChange> changes =
        MusicChanges.between(music(500_000, 60, 61, 62), music(600_000, 60, 61, 62));
    assertThat(sentences(changes))
        .containsExactly("bars 1 to 3: the same notes, slower (100 bpm, was 120), 1.200 s longer");
  }

  @Test
  void a_change_of_tempo_too_small_to_name_is_told_by_its_length() {
    assertThat(
            sentences(MusicChanges.between(music(500_000, 60, 61, 62), music(499_999, 60, 61, 62))))
        .containsExactly("bars 1 to 3: the same notes, less than 0.001 s shorter");
  }

  @Test
  void a_passage_in_another_key_is_told_by_the_interval() {
    assertThat(sentences(between(bars(60, 61, 62, 63), bars(60, 66, 67, 63))))
        .containsExactly("bars 2 to 3: Flute a fourth higher");
    assertThat(sentences(between(bars(60, 64, 67, 72), bars(58, 62, 65, 70))))
        .containsExactly("bars 1 to 4: Flute a tone lower");
  }

  @Test
  void notes_that_are_only_held_otherwise_are_told_apart_from_other_notes() {
    MidiBytes.Track shorter = new MidiBytes.Track().text(0, 3, "Flute").tempo(0, 500_000);
    for (int beat = 0; beat < 4; beat++) {
      shorter.note(beat * 480L, beat * 480L + 240, 0, 60);
    }
    assertThat(sentences(between(bars(60), follow(MidiBytes.file().track(shorter)))))
        .containsExactly("bar 1: different note lengths in Flute");
  }

  @Test
  void drums_are_never_in_another_key() {
    assertThat(sentences(between(drums(42, 42, 42, 42), drums(42, 46, 46, 42))))
        .containsExactly("bars 2 to 3: different notes in Kit");
  }

  @Test
  void bars_in_which_a_part_rests_now_or_rested_before_say_so() {
    assertThat(sentences(between(duet(60, 61, 62), duet(60, 0, 62))))
        .containsExactly("bar 2: without Cello");
    assertThat(sentences(between(duet(0, 0, 62), duet(60, 61, 62))))
        .containsExactly("bars 1 to 2: with Cello");
  }

  @Test
  void a_part_under_another_name_is_the_same_part() {
    Music flute = music("Flute", 500_000, 60, 61, 62);
    Music flauto = music("Flauto", 500_000, 60, 61, 70);
    assertThat(MusicChanges.parts(flute, flauto)).containsExactly("Flute is now called Flauto");
    assertThat(sentences(between(flute, flauto)))
        .containsExactly("bar 3: different notes in Flauto");
  }

  @Test
  void parts_that_come_and_go_are_named() {
    Music flute = music("Flute", 500_000, 60);
    Music oboe = music("Oboe", 500_000, 72);
    assertThat(MusicChanges.parts(flute, flute)).isEmpty();
    assertThat(MusicChanges.parts(flute, oboe)).containsExactly("Oboe is new", "Flute is gone");
  }

  private static List<String> sentences(List<MusicChange> changes) {
    return changes.stream().filter(MusicChange::isChange).map(MusicChange::sentence).toList();
  }

  private static List<MusicChange> between(Music before, Music now) {
    return MusicChanges.between(before, now);
  }

  private Music bars(int... pitches) {
    return music(500_000, pitches);
  }

  private Music music(int microseconds, int... pitches) {
    return music("Flute", microseconds, pitches);
  }

  private Music music(String part, int microseconds, int... pitches) {
    return follow(MidiBytes.file().track(track(part, 0, microseconds, pitches)));
  }

  private Music drums(int... pitches) {
    return follow(MidiBytes.file().track(track("Kit", 9, 500_000, pitches)));
  }

  /** A flute that keeps on one note, and a cello of these pitches. */
  private Music duet(int... cello) {
    int[] flute = new int[cello.length];
    Arrays.fill(flute, 72);
    return follow(
        MidiBytes.file()
            .track(track("Flute", 0, 500_000, flute))
            .track(track("Cello", 1, 500_000, cello)));
  }

  /** A bar a pitch: four quarters of it, or a rest for 0. */
  private static MidiBytes.Track track(String part, int channel, int microseconds, int... pitches) {
    MidiBytes.Track track = new MidiBytes.Track().text(0, 3, part).tempo(0, microseconds);
    for (int bar = 0; bar < pitches.length; bar++) {
      for (int beat = 0; pitches[bar] > 0 && beat < 4; beat++) {
        long on = (long) bar * BAR + beat * 480L;
        track.note(on, on + 480, channel, pitches[bar]);
      }
    }
    return track;
  }

  private Music follow(MidiBytes file) {
    return MusicFinder.follow(ScoreReader.read(file.into(folder)), TempoRequest.DEFAULT);
  }
}
