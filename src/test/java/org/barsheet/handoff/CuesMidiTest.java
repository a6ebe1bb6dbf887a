package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.Track;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.barsheet.score.Note;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CuesMidiTest {

  @TempDir Path folder = Path.of("set by the test runner");

  private record Text(int type, long tick, String words) {}

  private static Sequence written(FilmSheet sheet) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      CuesMidi.write(sheet, bytes);
      return MidiSystem.getSequence(new ByteArrayInputStream(bytes.toByteArray()));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } catch (InvalidMidiDataException broken) {
      throw new AssertionError(broken);
    }
  }

  private static List<Text> texts(Track track) {
    List<Text> texts = new ArrayList<>();
    for (int i = 0; i < track.size(); i++) {
      MidiEvent event = track.get(i);
      if (event.getMessage() instanceof MetaMessage meta
          && (meta.getType() == CuesMidi.MARKER || meta.getType() == CuesMidi.CUE_POINT)) {
        String words = new String(meta.getData(), StandardCharsets.UTF_8);
        texts.add(new Text(meta.getType(), event.getTick(), words));
      }
    }
    return texts;
  }

  @Test
  void the_film_s_rate_and_counting_stand_at_the_beginning() {
    Track first = written(SampleFilm.at(FrameRate.FPS_29_97_DF).sheet()).getTracks()[0];
    List<String> said = new ArrayList<>();
    for (int i = 0; i < first.size(); i++) {
      if (first.get(i).getMessage() instanceof MetaMessage meta
          && meta.getType() == CuesMidi.TEXT
          && first.get(i).getTick() == 0) {
        said.add(new String(meta.getData(), StandardCharsets.UTF_8));
      }
    }
    assertThat(said)
        .contains(
            "music starts on film frame 60; timecode at 29.97 fps, drop-frame; film"
                + " frame 0 is 01:00:00;00");
  }

  private static long noteOns(Sequence sequence) {
    long count = 0;
    for (Track track : sequence.getTracks()) {
      for (int i = 0; i < track.size(); i++) {
        byte[] message = track.get(i).getMessage().getMessage();
        count += (message[0] & 0xF0) == 0x90 && message[2] != 0 ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void returns_are_markers_and_shots_are_cue_points_on_their_ticks() {
    Sequence sequence = written(SampleFilm.at(FrameRate.FPS_24).sheet());
    assertThat(texts(sequence.getTracks()[0]))
        .contains(
            new Text(CuesMidi.MARKER, SampleMusic.tickOfBar(3), "glimmer 1"),
            new Text(CuesMidi.MARKER, SampleMusic.tickOfBar(6), "glimmer 2"),
            new Text(CuesMidi.MARKER, SampleMusic.tickOfBar(3) + 2 * 480, "glimmer 1 accent"),
            new Text(CuesMidi.MARKER, SampleMusic.tickOfBar(6) + 2 * 480, "glimmer 2 accent"),
            new Text(CuesMidi.MARKER, SampleMusic.tickOfBar(5), "A"),
            new Text(CuesMidi.CUE_POINT, 0, "panel 1: Fog over the quay"),
            new Text(CuesMidi.CUE_POINT, SampleMusic.tickOfBar(3), "panel 2: The baker's lamp"),
            new Text(CuesMidi.CUE_POINT, SampleMusic.tickOfBar(6), "panel 3: Gulls"));
  }

  @Test
  void a_score_built_anew_keeps_its_notes_tempo_and_length() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).sheet();
    Sequence sequence = written(sheet);
    assertThat(sequence.getResolution()).isEqualTo(480);
    assertThat(noteOns(sequence)).isEqualTo(sheet.timing().music().score().notes().size());
    // One beat of pickup and four bars at 625 ms a beat, four bars at 750 ms.
    assertThat(sequence.getMicrosecondLength()).isEqualTo(13L * 625_000 + 12L * 750_000);
  }

  @Test
  void the_demo_s_own_file_keeps_every_event() {
    FilmSheet sheet = DemoFilm.sheet();
    Sequence before;
    try {
      before = MidiSystem.getSequence(sheet.plan().music().score().toFile());
    } catch (IOException | InvalidMidiDataException broken) {
      throw new AssertionError(broken);
    }
    Sequence after = written(sheet);
    assertThat(after.getTracks()).hasSameSizeAs(before.getTracks());
    assertThat(after.getTickLength()).isEqualTo(before.getTickLength());
    assertThat(noteOns(after)).isEqualTo(noteOns(before));
    int added = 1 + sheet.timing().shots().size() + returns(sheet);
    assertThat(after.getTracks()[0].size()).isEqualTo(before.getTracks()[0].size() + added);
    for (int i = 1; i < before.getTracks().length; i++) {
      assertThat(after.getTracks()[i].size()).isEqualTo(before.getTracks()[i].size());
    }
  }

  @Test
  void a_score_wrapped_in_a_riff_file_is_built_anew_with_all_its_notes() throws IOException {
    byte[] midi = Files.readAllBytes(Path.of("scores", "lamplighters-quay.mid"));
    ByteBuffer wrapped = ByteBuffer.allocate(20 + midi.length).order(ByteOrder.LITTLE_ENDIAN);
    wrapped.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(12 + midi.length);
    wrapped.put("RMIDdata".getBytes(StandardCharsets.US_ASCII)).putInt(midi.length).put(midi);
    Files.write(folder.resolve("wrapped.mid"), wrapped.array());
    Path plan =
        Files.writeString(
            folder.resolve("wrapped.yaml"),
            """
            title: Wrapped
            score: wrapped.mid
            film: {frame-rate: 24}
            panels:
              - {panel: 1, action: The quay}
            """);
    FilmSheet sheet = DemoFilm.sheet(plan);
    assertThat(noteOns(written(sheet))).isEqualTo(sheet.timing().music().score().notes().size());
  }

  /** A marker for each return, and another where its accent is not its first note. */
  private static int returns(FilmSheet sheet) {
    return sheet.timing().cues().stream()
        .filter(cue -> cue.occurrence().isPresent())
        .mapToInt(cue -> cue.accentAt().equals(cue.at()) ? 1 : 2)
        .sum();
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_the_jdk_reads_it_back(String text) {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).saying(text).sheet();
    Sequence sequence = written(sheet);
    List<Note> notes = sheet.timing().music().score().notes();
    assertThat(noteOns(sequence)).isEqualTo(notes.size());
    assertThat(texts(sequence.getTracks()[0])).hasSize(8);
  }
}
