package org.barsheet.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.barsheet.input.InputException;
import org.barsheet.outside.OutsideProgram;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Recordings become one channel of samples whose times are the file's. */
final class SoundReaderTest {

  private static final double CLICK = 0.75;

  @TempDir Path folder;

  /** A second and a half of a soft tone with a click in it, in both channels. */
  private Path recording(int rate, int channels, AudioFileFormat.Type type) throws IOException {
    int length = rate * 3 / 2;
    boolean bigEndian = type.equals(AudioFileFormat.Type.AIFF);
    ByteBuffer bytes = ByteBuffer.allocate(length * channels * 2);
    bytes.order(bigEndian ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < length; i++) {
      double since = (double) i / rate - CLICK;
      double value = 0.1 * Math.sin(2 * Math.PI * 440 * i / rate);
      value += since < 0 ? 0 : 0.6 * Math.exp(-since / 0.002) * Math.cos(9000 * since);
      for (int channel = 0; channel < channels; channel++) {
        bytes.putShort((short) Math.round(32767 * value));
      }
    }
    AudioFormat format = new AudioFormat(rate, 16, channels, true, bigEndian);
    Path file = folder.resolve("take-" + rate + "-" + channels + "." + type.getExtension());
    try (AudioInputStream stream =
        new AudioInputStream(new ByteArrayInputStream(bytes.array()), format, length)) {
      AudioSystem.write(stream, type, file.toFile());
    }
    return file;
  }

  private static double clickIn(Sound sound) {
    int most = 0;
    for (int i = 0; i < sound.length(); i++) {
      most = Math.abs(sound.at(i)) > Math.abs(sound.at(most)) ? i : most;
    }
    return most / sound.rate();
  }

  @ParameterizedTest
  @CsvSource({"22050,22050", "32000,32000", "44100,22050", "48000,24000", "96000,24000"})
  void sampling_rates_are_divided_down_and_times_stay(int rate, double kept) throws IOException {
    Sound sound = SoundReader.read(recording(rate, 2, AudioFileFormat.Type.WAVE));

    assertThat(sound.rate()).isEqualTo(kept);
    assertThat(sound.seconds()).isCloseTo(1.5, within(1 / kept));
    assertThat(clickIn(sound)).isCloseTo(CLICK, within(0.0002));
  }

  @Test
  void wav_and_aiff_are_heard_alike() throws IOException {
    Sound wave = SoundReader.read(recording(48_000, 1, AudioFileFormat.Type.WAVE));
    Sound aiff = SoundReader.read(recording(48_000, 1, AudioFileFormat.Type.AIFF));

    assertThat(aiff.length()).isEqualTo(wave.length());
    for (int i = 0; i < wave.length(); i++) {
      assertThat(aiff.at(i)).isEqualTo(wave.at(i));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"8", "24", "32"})
  void samples_of_other_sizes_are_those_of_sox(String bits)
      throws IOException, InterruptedException {
    Path plain = recording(22_050, 1, AudioFileFormat.Type.WAVE);
    Path other = folder.resolve("other.wav");
    OutsideProgram.output("sox", plain.toString(), "-D", "-b", bits, other.toString());

    assertAlike(SoundReader.read(other), SoundReader.read(plain), bits.equals("8") ? 0.006 : 1e-4);
  }

  @Test
  void what_is_divided_down_is_what_sox_makes_of_it() throws IOException, InterruptedException {
    Path plain = recording(48_000, 1, AudioFileFormat.Type.WAVE);
    Path down = folder.resolve("down.wav");
    OutsideProgram.output(
        "sox", plain.toString(), "-D", "-b", "24", down.toString(), "rate", "-h", "24000");

    assertAlike(SoundReader.read(plain), SoundReader.read(down), 0.01);
  }

  @ParameterizedTest
  @ValueSource(strings = {"flac", "mp3", "m4a", "mov"})
  void other_formats_come_through_ffmpeg_at_their_times(String format)
      throws IOException, InterruptedException {
    Path plain = recording(48_000, 2, AudioFileFormat.Type.WAVE);
    Path other = folder.resolve("take." + format);
    OutsideProgram.output("ffmpeg", "-v", "error", "-i", plain.toString(), other.toString());

    assertThat(clickIn(SoundReader.read(other))).isCloseTo(CLICK, within(0.001));
  }

  @Test
  void without_ffmpeg_one_sentence_says_what_to_do() throws IOException {
    Path film = Files.write(folder.resolve("cello.mov"), new byte[64]);

    assertThatThrownBy(() -> SoundReader.read(film, Optional.empty()))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("only WAV and AIFF can be read without ffmpeg")
        .hasMessageContaining("cello.mov");
  }

  @Test
  void a_file_that_holds_no_sound_is_refused() throws IOException, InterruptedException {
    OutsideProgram.output("ffmpeg", "-version");
    Path text = Files.writeString(folder.resolve("mix.mp3"), "no sound in here");

    assertThatThrownBy(() -> SoundReader.read(text)).hasMessageContaining("can't be read");
  }

  private static void assertAlike(Sound one, Sound other, double most) {
    assertThat(one.length()).isCloseTo(other.length(), within(1));
    for (int i = 0; i < Math.min(one.length(), other.length()); i++) {
      assertThat((double) one.at(i)).isCloseTo(other.at(i), within(most));
    }
  }
}
