package org.barsheet.clips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which files count as sound. */
class SoundFileTest {

  @TempDir private Path folder;

  private Path file(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("mix"), bytes);
  }

  private static byte[] written(AudioFileFormat.Type type) throws IOException {
    AudioFormat format =
        new AudioFormat(8_000, 16, 1, true, AudioFileFormat.Type.AIFF.equals(type));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] silence = new byte[1_600];
    AudioSystem.write(
        new AudioInputStream(new ByteArrayInputStream(silence), format, 800), type, out);
    return out.toByteArray();
  }

  /** Files of the JDK's own writers. */
  @Test
  void wav_and_aiff_are_sound() throws Exception {
    SoundFile.check(file(written(AudioFileFormat.Type.WAVE)));
    SoundFile.check(file(written(AudioFileFormat.Type.AIFF)));
  }

  /**
   * First bytes: FLAC (RFC 9639, 6), Ogg (RFC 3533, 6), ID3 (ID3v2.4.0, 3.1), MPEG-1 layer III at
   * 128 kbit/s (ISO/IEC 11172-3, 2.4.1.3), AAC in ADTS (ISO/IEC 13818-7, 6.2).
   */
  @ParameterizedTest
  @CsvSource({
    "664C614300000022 10001000",
    "4F67675300020000 00000000",
    "4944330400000000 0A000000",
    "FFFB90000000 000000000000",
    "FFF15080 0000000000000000",
  })
  void other_kinds_are_told_by_their_first_bytes(String hex) throws Exception {
    SoundFile.check(file(HexFormat.of().parseHex(hex.replace(" ", ""))));
  }

  @ParameterizedTest
  @CsvSource({
    "'%PDF-1.7 and more than twelve', is not a sound file",
    "'a letter about the mix', is not a sound file",
    "'RIFF    AVI LIST', isn't a WAV",
    "short, is empty or cut short",
  })
  void what_does_not_sound_is_refused(String words, String reason) throws IOException {
    Path file = file(words.getBytes(StandardCharsets.ISO_8859_1));
    assertThatThrownBy(() -> SoundFile.check(file))
        .isInstanceOf(UnreadableClipException.class)
        .hasMessageContaining(reason);
  }

  /** A text that begins with the byte order mark of UTF-16 looks like MPEG audio at first. */
  @Test
  void a_text_of_another_encoding_is_no_sound() throws IOException {
    Path file = file("\uFEFFa letter about the mix".getBytes(StandardCharsets.UTF_16LE));
    assertThatThrownBy(() -> SoundFile.check(file)).hasMessage("is not a sound file");
  }

  @Test
  void a_film_without_sound_is_refused() throws Exception {
    Path file = file(new MovieBytes().clock(25).frames(50, 1).bytes());
    assertThat(ClipReader.read(file).video()).isPresent();
    assertThatThrownBy(() -> SoundFile.check(file)).hasMessage("has no sound in it");
  }
}
