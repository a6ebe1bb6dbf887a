package org.barsheet.score;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.barsheet.score.MidiBytes.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Files whose chunks are cut, miscounted or wrapped. Facts of the format are those of the Standard
 * MIDI File 1.0 (RP-001), read through somascape.org/midi/tech/mfile.html.
 */
class MendedFilesTest {

  @TempDir Path folder;

  private Score read(MidiBytes file) {
    return ScoreReader.read(file.into(folder));
  }

  private static MidiBytes scale() {
    return MidiBytes.file().track(Track.scale(480));
  }

  private static List<String> sentences(Score score) {
    return score.readingNotes().stream().map(ReadingNote::sentence).toList();
  }

  @Test
  void a_cut_file_is_read_as_far_as_it_goes_and_says_what_is_missing() {
    byte[] whole = scale().bytes();
    Score score = ScoreReader.read(MidiBytes.write(folder, Arrays.copyOf(whole, 59)));
    assertThat(score.notes()).hasSize(4);
    assertThat(sentences(score))
        .contains("track 1 should have 83 bytes, but the file ends after 37; what's there is used");
  }

  @Test
  void a_chunk_that_claims_two_gigabytes_is_read_as_far_as_the_file_goes() {
    byte[] events = Track.scale(480).endOfTrack().bytes();
    Score score = read(MidiBytes.file().announcing(1).chunk("MTrk", 0x7FFFFFFFL, events));
    assertThat(score.notes()).hasSize(8);
    assertThat(sentences(score)).hasSize(1);
  }

  @Test
  void a_track_whose_length_lies_does_not_hide_the_next_one() {
    byte[] events = Track.scale(480).endOfTrack().bytes();
    MidiBytes file = MidiBytes.file().announcing(2).chunk("MTrk", 0xFFFFFFFFL, events);
    assertThat(read(file.chunk("MTrk", events.length, events)).notes()).hasSize(16);
  }

  @Test
  void bytes_between_and_after_the_tracks_are_left_out_and_noted() {
    MidiBytes file = scale().raw(new byte[] {1, 2, 3}).track(Track.scale(480));
    Score score = read(file.raw("\r\n<html>".getBytes(US_ASCII)));
    assertThat(score.notes()).hasSize(16);
    assertThat(sentences(score))
        .containsExactly("3 stray bytes are left out", "8 stray bytes are left out");
  }

  @Test
  void an_unknown_chunk_is_passed_over() {
    MidiBytes file = MidiBytes.file().chunk("XFIH", 4, new byte[4]).track(Track.scale(480));
    assertThat(read(file).notes()).hasSize(8);
    assertThat(read(file).readingNotes()).isEmpty();
  }

  @Test
  void a_longer_header_is_read_past() {
    byte[] bytes = scale().bytes();
    ByteBuffer longer = ByteBuffer.allocate(bytes.length + 4).put(bytes, 0, 14).putInt(0);
    longer.put(bytes, 14, bytes.length - 14).put(7, (byte) 10);
    assertThat(ScoreReader.read(MidiBytes.write(folder, longer.array())).notes()).hasSize(8);
  }

  @Test
  void a_riff_wrapper_is_opened() {
    byte[] midi = scale().bytes();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes("RIFF".getBytes(US_ASCII));
    out.writeBytes(littleEndian(midi.length + 25));
    out.writeBytes("RMIDLIST".getBytes(US_ASCII));
    out.writeBytes(littleEndian(3));
    out.writeBytes(new byte[4]);
    out.writeBytes("data".getBytes(US_ASCII));
    out.writeBytes(littleEndian(midi.length));
    out.writeBytes(midi);
    Score score = ScoreReader.read(MidiBytes.write(folder, out.toByteArray()));
    assertThat(score.notes()).hasSize(8);
    assertThat(score.readingNotes()).isEmpty();
  }

  private static byte[] littleEndian(int value) {
    return ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN).putInt(value).array();
  }

  @ParameterizedTest
  @CsvSource({
    "1, 'the header says 1 track, but the file has 2; all are read'",
    "5, 'the header says 5 tracks, but the file has 2; all are read'"
  })
  void a_wrong_track_count_is_noted(int announced, String sentence) {
    Score score = read(scale().track(Track.scale(480)).announcing(announced));
    assertThat(score.notes()).hasSize(16);
    assertThat(sentences(score)).containsExactly(sentence);
  }

  @Test
  void a_missing_end_of_track_is_noted() {
    Score score = read(MidiBytes.file().rawTrack(Track.scale(480).bytes()));
    assertThat(score.notes()).hasSize(8);
    assertThat(sentences(score))
        .containsExactly("track 1 has no end-of-track event; it ends with its last event");
  }

  @Test
  void a_number_of_five_bytes_is_read_and_noted_one_of_six_ends_the_track() {
    int[] note = {0x90, 60, 80, 0x81, 0x40, 0x80, 60, 0};
    Track five = new Track().raw(0x80, 0x80, 0x80, 0x81, 0x40).raw(note);
    Score score = read(MidiBytes.file().track(five));
    assertThat(score.notes()).extracting(Note::onTick).containsExactly(192L);
    assertThat(sentences(score))
        .containsExactly("a number takes 5 bytes, the standard allows 4; it is read as 192");
    Track six = new Track().raw(0x80, 0x80, 0x80, 0x80, 0x80, 0x40).raw(note);
    assertThat(sentences(read(MidiBytes.file().track(six))))
        .singleElement()
        .asString()
        .contains("a number of more than 5 bytes");
  }
}
