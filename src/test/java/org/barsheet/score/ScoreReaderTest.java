package org.barsheet.score;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.barsheet.score.MidiBytes.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Facts of the format are those of the Standard MIDI File 1.0 (RP-001), read through
 * somascape.org/midi/tech/mfile.html.
 */
class ScoreReaderTest {

  @TempDir Path folder;

  private Score read(MidiBytes file) {
    return ScoreReader.read(file.into(folder));
  }

  private static MidiBytes scale() {
    return MidiBytes.file().track(Track.scale(480));
  }

  private static Seconds lastOnset(Score score) {
    return score.tempo().secondsAt(score.notes().get(score.notes().size() - 1).onTick());
  }

  private static List<String> sentences(Score score) {
    return score.readingNotes().stream().map(ReadingNote::sentence).toList();
  }

  @Test
  void without_a_tempo_a_quarter_note_lasts_half_a_second_and_the_meter_is_four_four() {
    Score score = read(scale());
    assertThat(lastOnset(score)).isEqualTo(Seconds.of(7, 2));
    assertThat(score.bars().bars()).hasSize(2);
    assertThat(score.bars().first().meter()).isEqualTo(Meter.COMMON);
    assertThat(score.tempoEvents()).isZero();
    assertThat(score.readingNotes()).isEmpty();
  }

  /** MIDI 1.0 detailed specification, table of controllers: 64 is the damper pedal, 63 still up. */
  @Test
  void the_damper_pedal_is_down_from_64_on_and_pressed_anew_only_after_it_went_up() {
    Track track = new Track().event(0, 0xB0, 64, 127).event(10, 0xB0, 64, 64);
    track.event(20, 0xB0, 64, 63).event(30, 0xB0, 64, 64).event(40, 0xB1, 64, 90);
    track.event(50, 0xB0, 67, 127).event(60, 0xB0, 1, 127).note(70, 80, 0, 60);
    assertThat(read(MidiBytes.file().track(track)).pedalTicks()).containsExactly(0L, 30L, 40L);
  }

  /**
   * The first note lacks its end; the others keep theirs, and the first ends as the second begins.
   */
  @Test
  void a_note_that_never_ends_takes_nobody_elses_end() {
    Track track = new Track().event(0, 0x90, 60, 80);
    track.note(960, 1200, 0, 60).note(1920, 2160, 0, 60).note(2880, 3120, 0, 60);
    Score score = read(MidiBytes.file().track(track));
    assertThat(score.notes())
        .filteredOn(note -> note.part() == 0)
        .extracting(Note::onTick, Note::offTick)
        .containsExactly(
            tuple(0L, 960L), tuple(960L, 1200L), tuple(1920L, 2160L), tuple(2880L, 3120L));
    assertThat(sentences(score)).hasSize(1);
    assertThat(sentences(score).get(0)).startsWith("a note never ends; it is held until its key");
  }

  @ParameterizedTest
  @CsvSource({"1, 32", "480, 480", "120, 480", "960, 960", "32767, 1048544", "96, 96"})
  void ticks_become_fine_enough_for_every_meter(int perQuarter, int expected) {
    Score score = read(MidiBytes.file().division(perQuarter).track(Track.scale(perQuarter)));
    assertThat(score.ticksPerQuarter()).isEqualTo(expected);
    assertThat(lastOnset(score)).isEqualTo(Seconds.of(7, 2));
  }

  /**
   * The division E804 (-24/4) at 480 ticks is 5 s, E728 (-25/40) 0.48 s, E350 (-29/80) 0.2002 s,
   * E250 (-30/80) 0.2 s: the arithmetic of the standard's "negative SMPTE format".
   */
  @ParameterizedTest
  @CsvSource({"E804, 5", "E728, 12/25", "E350, 1001/5000", "E250, 1/5"})
  void a_division_of_real_time_ignores_tempo(String division, String seconds) {
    Track track = new Track().tempo(0, 1_000_000).note(480, 481, 0, 60);
    Score score = read(MidiBytes.file().division(Integer.parseInt(division, 16)).track(track));
    assertThat(lastOnset(score)).isEqualTo(Seconds.parse(seconds));
    assertThat(score.tempoEvents()).isEqualTo(1);
    assertThat(score.division()).isInstanceOf(Division.PerFrame.class);
    assertThat(score.ticksPerQuarter() % 32).isZero();
  }

  @Test
  void the_division_of_29_frames_means_29_97_drop_frame() {
    Score score = read(MidiBytes.file().division(0xE364).track(Track.scale(100)));
    assertThat(score.division()).isEqualTo(new Division.PerFrame(FrameRate.FPS_29_97_DF, 100));
  }

  @Test
  void tempo_changes_count_from_whichever_track_they_stand_in() {
    Track tempos = new Track().tempo(0, 1_000_000).tempo(1920, 250_000);
    Score score = read(scale().track(tempos));
    assertThat(lastOnset(score)).isEqualTo(Seconds.of(19, 4));
    assertThat(score.tempoEvents()).isEqualTo(2);
  }

  @Test
  void of_two_tempos_at_one_tick_the_later_in_the_file_counts() {
    Track tempos = new Track().tempo(0, 1_000_000).tempo(0, 500_000);
    Score score = read(MidiBytes.file().track(tempos).track(Track.scale(480)));
    assertThat(lastOnset(score)).isEqualTo(Seconds.of(7, 2));
    assertThat(score.readingNotes()).isEmpty();
  }

  @Test
  void a_tempo_of_nothing_is_left_out_and_noted_with_its_byte() {
    Score score = read(MidiBytes.file().track(new Track().tempo(0, 0)).track(Track.scale(480)));
    assertThat(lastOnset(score)).isEqualTo(Seconds.of(7, 2));
    assertThat(score.readingNotes())
        .containsExactly(
            new ReadingNote(22, "a tempo of 0 microseconds for a quarter note; left out", false));
  }

  @Test
  void a_tempo_of_two_bytes_is_left_out_and_noted() {
    Score score = read(scale().track(new Track().meta(0, 0x51, (byte) 7, (byte) 1)));
    assertThat(sentences(score)).containsExactly("a tempo of 2 bytes instead of 3; left out");
  }

  @Test
  void a_tempo_change_after_36_minutes_is_exact() {
    long minute = 120L * 480;
    Track track =
        new Track()
            .tempo(36 * minute, 1_000_000)
            .tempo(80 * minute, 250_000)
            .note(81 * minute, 81 * minute + 1, 0, 60);
    assertThat(lastOnset(read(MidiBytes.file().track(track))))
        .isEqualTo(Seconds.of(36 * 60 + 44 * 120 + 30));
  }

  @Test
  void twenty_thousand_tempo_changes_lose_nothing() {
    Track track = new Track();
    long numerator = 0;
    for (int i = 0; i < 20_000; i++) {
      int tempo = 400_000 + 37 * (i % 5000);
      track.tempo(7L * i, tempo);
      numerator += 7L * tempo;
    }
    track.note(7L * 20_000, 7L * 20_000 + 10, 0, 60);
    Score score = read(MidiBytes.file().track(track));
    assertThat(lastOnset(score)).isEqualTo(Seconds.of(numerator, 480L * 1_000_000));
    assertThat(score.tempoEvents()).isEqualTo(20_000);
  }

  @Test
  void notes_may_lie_77_hours_apart() {
    Track track = new Track().note(0, 480, 0, 60).note(0xFFFFE20, 0xFFFFE30, 0, 62);
    assertThat(lastOnset(read(MidiBytes.file().track(track))))
        .isEqualTo(Seconds.of(0xFFFFE20L, 960));
  }

  @Test
  void of_overlapping_notes_of_one_pitch_the_first_begun_ends_first() {
    Track track =
        new Track()
            .event(0, 0x90, 60, 80)
            .event(480, 0x90, 60, 80)
            .event(960, 0x80, 60, 0)
            .event(1440, 0x80, 60, 0);
    assertThat(read(MidiBytes.file().track(track)).notes())
        .extracting(Note::onTick, Note::offTick)
        .containsExactly(tuple(0L, 960L), tuple(480L, 1440L));
  }

  @Test
  void at_one_tick_a_note_ends_before_the_next_begins_whatever_their_order_in_the_file() {
    Track track =
        new Track()
            .event(0, 0x90, 60, 80)
            .event(480, 0x90, 60, 80)
            .event(480, 0x80, 60, 0)
            .event(960, 0x80, 60, 0);
    assertThat(read(MidiBytes.file().track(track)).notes())
        .extracting(Note::offTick)
        .containsExactly(480L, 960L);
  }

  @Test
  void a_note_may_end_at_the_tick_it_begins() {
    Score score = read(MidiBytes.file().track(new Track().note(480, 480, 0, 60)));
    assertThat(score.notes()).extracting(Note::lengthTicks).containsExactly(0L);
    assertThat(score.readingNotes()).isEmpty();
  }

  @Test
  void velocity_0_ends_a_note_under_running_status() {
    Track track = new Track().event(0, 0x90, 60, 80).event(480, 60, 0).event(480, 62, 80);
    track.event(960, 62, 0);
    Score score = read(MidiBytes.file().track(track));
    assertThat(score.notes()).extracting(Note::lengthTicks).containsExactly(480L, 480L);
    assertThat(score.readingNotes()).isEmpty();
  }

  @Test
  void running_status_goes_on_after_a_meta_event() {
    Track track = new Track().event(0, 0x90, 60, 80).text(240, MetaType.MARKER, "A");
    track.event(480, 60, 0);
    assertThat(read(MidiBytes.file().track(track)).notes()).hasSize(1);
  }

  @Test
  void notes_that_never_end_are_held_to_the_end_of_the_track_and_noted() {
    Track track = new Track().event(0, 0x90, 60, 80).event(480, 0x90, 64, 80).text(960, 1, "end");
    Score score = read(MidiBytes.file().track(track));
    assertThat(score.notes()).extracting(Note::offTick).containsExactly(960L, 960L);
    assertThat(sentences(score))
        .containsExactly(
            "2 notes never end; they are held until their key is struck again or their track ends");
  }

  @Test
  void parts_are_named_after_their_track_else_their_instrument_each_once() {
    Track celesta = new Track().text(0, 3, "Celesta \u2013 M\u00f6we").note(0, 1, 0, 60);
    Track latin = new Track().meta(0, 3, "Fl\u00f6te".getBytes(ISO_8859_1)).note(0, 1, 1, 60);
    Track formula = new Track().text(0, 3, "=1+1\u0007\t\u202e \"x\"").note(0, 1, 2, 60);
    Track mixed = new Track().text(0, 3, "all").event(0, 0xC3, 8).note(0, 1, 3, 60);
    mixed.note(1, 2, 9, 36).note(2, 3, 4, 60);
    Track again = new Track().text(0, 3, "Celesta : ").note(0, 1, 5, 60);
    MidiBytes file = MidiBytes.file().track(celesta).track(latin).track(formula).track(mixed);
    assertThat(read(file.track(again)).parts())
        .extracting(Part::name)
        .containsExactly(
            "Celesta \u2013 M\u00f6we",
            "Fl\u00f6te",
            "=1+1 \"x\"",
            "Celesta",
            "part 5",
            "Drums",
            "Celesta 2");
  }

  @Test
  void marks_are_the_markers_and_cue_points_of_the_file() {
    Track marks = new Track().text(0, 6, "A").text(960, 7, "cue: door opens");
    assertThat(read(MidiBytes.file().track(marks).track(Track.scale(480))).marks())
        .containsExactly(
            new Mark(Mark.Kind.MARKER, 0, "A"),
            new Mark(Mark.Kind.CUE_POINT, 960, "cue: door opens"));
  }

  /** Numbers and names as the General MIDI 1 sound set lists them, counted from 0 in the file. */
  @ParameterizedTest
  @CsvSource({
    "0, Acoustic Grand Piano",
    "8, Celesta",
    "42, Cello",
    "73, Flute",
    "104, Sitar",
    "127, Gunshot"
  })
  void programs_have_their_general_midi_names(int program, String name) {
    Track track = new Track().event(0, 0xC0, program).note(0, 1, 0, 60);
    assertThat(read(MidiBytes.file().track(track)).parts())
        .extracting(Part::instrument, Part::name)
        .containsExactly(tuple(name, name));
  }

  @Test
  void a_file_without_notes_has_one_bar() {
    Score score = read(MidiBytes.file().track(new Track().tempo(0, 500_000)));
    assertThat(score.notes()).isEmpty();
    assertThat(score.parts()).isEmpty();
    assertThat(score.bars().bars()).hasSize(1);
  }

  @Test
  void independent_patterns_are_refused_with_the_way_out() {
    assertThatThrownBy(() -> read(scale().track(Track.scale(480)).format(2)))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("case.mid, byte 8: format 2 holds 2 separate patterns")
        .hasMessageContaining("format 1");
  }

  @Test
  void a_division_of_nothing_is_refused() {
    for (int division : new int[] {0, 0xE800, 0xE104}) {
      assertThatThrownBy(() -> read(scale().division(division)))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("case.mid, byte 12");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "'', the file is empty",
    "M, this is not a MIDI file",
    "This is not MIDI, not a MIDI file"
  })
  void what_is_no_midi_file_is_refused(String content, String sentence) {
    Path file = MidiBytes.write(folder, content.getBytes(US_ASCII));
    assertThatThrownBy(() -> ScoreReader.read(file))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("case.mid")
        .hasMessageContaining(sentence);
  }

  @Test
  void a_missing_file_a_folder_and_a_file_without_tracks_are_refused() {
    assertThatThrownBy(() -> ScoreReader.read(folder.resolve("none.mid")))
        .hasMessageContaining("none.mid: there is no such file");
    assertThatThrownBy(() -> ScoreReader.read(folder)).hasMessageContaining("this is a folder");
    assertThatThrownBy(() -> read(MidiBytes.file())).hasMessageContaining("has no tracks");
  }

  @Test
  void a_single_late_note_that_would_make_millions_of_bars_is_refused() {
    Track track = new Track().meter(0, 1, 7).note(0x7FFFFFF, 0x7FFFFFF, 0, 60);
    assertThatThrownBy(() -> read(MidiBytes.file().division(1).track(track)))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("more than 1000000 beats");
  }
}
