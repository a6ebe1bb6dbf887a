package org.barsheet.clips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Random;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.barsheet.clips.ClipFacts.Video;
import org.barsheet.clock.Seconds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClipReaderTest {

  @TempDir private Path folder;

  private ClipFacts read(byte[] bytes) throws IOException, UnreadableClipException {
    Path file = folder.resolve("clip");
    Files.write(file, bytes);
    return ClipReader.read(file);
  }

  private static Video video(ClipFacts facts) {
    return facts.video().orElseThrow();
  }

  @Test
  void a_film_s_index_says_its_rate_length_and_size() throws IOException, UnreadableClipException {
    Video video = video(read(new MovieBytes().frames(300, 1001).bytes()));
    assertThat(video.frames()).isEqualTo(300);
    assertThat(video.length()).isEqualTo(Seconds.of(300 * 1001, 30_000));
    assertThat(video.frameDuration()).isEqualTo(Seconds.of(1001, 30_000));
    assertThat(video.steady()).isTrue();
    assertThat(video.width()).isEqualTo(1920);
    assertThat(video.height()).isEqualTo(1080);
  }

  @Test
  void an_index_before_the_videos_is_read_too() throws IOException, UnreadableClipException {
    byte[] first = new MovieBytes().frames(300, 1001).indexFirst().bytes();
    assertThat(video(read(first)).frames()).isEqualTo(300);
  }

  @Test
  void a_telephone_held_upright_films_upright() throws IOException, UnreadableClipException {
    Video video = video(read(new MovieBytes().frames(10, 1001).turned().bytes()));
    assertThat(video.width()).isEqualTo(1080);
    assertThat(video.height()).isEqualTo(1920);
  }

  /** A clock of 600 cannot write 29.97 but as 20, 20, … 21 ticks: a tick off is steady. */
  @Test
  void a_wandering_rate_is_told_from_one_a_tick_off() throws IOException, UnreadableClipException {
    byte[] tick = new MovieBytes().clock(600).frames(49, 20).frames(1, 21).frames(49, 20).bytes();
    assertThat(video(read(tick)).steady()).isTrue();
    byte[] wanders = new MovieBytes().clock(600).frames(49, 20).frames(3, 40).frames(9, 20).bytes();
    assertThat(video(read(wanders)).steady()).isFalse();
    byte[] last = new MovieBytes().clock(600).frames(49, 20).frames(1, 500).bytes();
    assertThat(video(read(last)).steady()).isTrue();
  }

  /** 30 a second, the last frame shown twice as long: 59 frames in 60 would be 29.5. */
  @Test
  void a_last_frame_that_stands_longer_does_not_change_the_rate()
      throws IOException, UnreadableClipException {
    byte[] film = new MovieBytes().clock(30).frames(58, 1).frames(1, 2).bytes();
    assertThat(video(read(film)).frameDuration()).isEqualTo(Seconds.of(1, 30));
    assertThat(video(read(film)).steady()).isTrue();
  }

  @Test
  void frames_of_one_and_two_ticks_in_turn_are_not_steady()
      throws IOException, UnreadableClipException {
    MovieBytes film = new MovieBytes().clock(30);
    for (int i = 0; i < 20; i++) {
      film.frames(1, 1).frames(1, 2);
    }
    assertThat(video(read(film.bytes())).steady()).isFalse();
  }

  @Test
  void a_file_of_thousands_of_empty_parts_is_refused() {
    byte[] film = new MovieBytes().frames(10, 1001).bytes();
    ByteBuffer file = ByteBuffer.allocate(2_001 * 8 + film.length);
    for (int i = 0; i < 2_001; i++) {
      file.putInt(8).put(ascii("free"));
    }
    assertRefused(file.put(film).array(), "has too many parts");
  }

  @Test
  void a_sound_file_says_its_length() throws IOException, UnreadableClipException {
    Path file = folder.resolve("clip.wav");
    AudioFormat format = new AudioFormat(44_100, 16, 2, true, false);
    byte[] silence = new byte[44_100 * 4 * 3];
    AudioInputStream sound =
        new AudioInputStream(new ByteArrayInputStream(silence), format, 44_100L * 3);
    AudioSystem.write(sound, AudioFileFormat.Type.WAVE, file.toFile());
    ClipFacts facts = ClipReader.read(file);
    assertThat(facts.length()).isEqualTo(Seconds.of(3));
    assertThat(facts.video()).isEmpty();
  }

  /** 172800000 samples since midnight at 48 kHz are one hour (EBU Tech 3285, plain arithmetic). */
  @Test
  void a_broadcast_wave_says_when_it_began() throws IOException, UnreadableClipException {
    assertThat(read(wave(PCM, 172_800_000L)).sinceMidnight()).contains(Seconds.of(3600));
  }

  /** Programs that know no timecode write the chunk all the same, with 0 in it. */
  @Test
  void a_time_reference_of_0_says_nothing() throws IOException, UnreadableClipException {
    assertThat(read(wave(PCM, 0)).sinceMidnight()).isEmpty();
  }

  /** Tags 1, 3 and, in an extensible header, the first two bytes of its sub-format (RFC 2361). */
  @Test
  void plain_and_floating_samples_are_measured() throws IOException, UnreadableClipException {
    for (int[] tags : new int[][] {{1, 0}, {3, 0}, {0xFFFE, 1}, {0xFFFE, 3}}) {
      ClipFacts facts = read(wave(tags, 0));
      assertThat(facts.length()).isEqualTo(Seconds.of(1, 1000));
      assertThat(facts.sound().orElseThrow().samplesPerSecond()).isEqualTo(48_000);
    }
  }

  @Test
  void packed_sound_is_told_by_its_name_because_its_bytes_say_no_length() {
    assertRefused(wave(new int[] {2, 0}, 0), "holds compressed sound (ADPCM): its length can't");
    assertRefused(wave(new int[] {0xFFFE, 0x55}, 0), "holds compressed sound (MPEG layer 3)");
    assertRefused(wave(new int[] {0x161, 0}, 0), "holds compressed sound (format 353)");
  }

  private static final int[] PCM = {1, 0};

  /** 48 samples of 16 bits, one channel, 48 kHz. */
  private static byte[] wave(int[] tags, long timeReference) {
    ByteBuffer file =
        ByteBuffer.allocate(12 + 8 + 602 + 8 + 40 + 8 + 96).order(ByteOrder.LITTLE_ENDIAN);
    file.put(ascii("RIFF")).putInt(file.capacity() - 8).put(ascii("WAVE"));
    int bext = file.put(ascii("bext")).putInt(602).position();
    file.putLong(bext + 338, timeReference).position(bext + 602);
    int format = file.put(ascii("fmt ")).putInt(40).position();
    file.putShort((short) tags[0]).putShort((short) 1).putInt(48_000);
    file.putInt(96_000).putShort((short) 2).putShort((short) 16);
    file.putShort(format + 24, (short) tags[1]).position(format + 40);
    file.put(ascii("data")).putInt(96);
    return file.array();
  }

  private static byte[] ascii(String letters) {
    return letters.getBytes(StandardCharsets.US_ASCII);
  }

  @Test
  void what_is_no_recording_is_told() {
    assertRefused(new byte[0], "is empty or cut short");
    assertRefused(
        "a letter to the editor".getBytes(StandardCharsets.UTF_8), "isn't a WAV, MP4 or MOV file");
    byte[] whole = new MovieBytes().frames(300, 1001).bytes();
    assertRefused(Arrays.copyOf(whole, 600), "is cut short or damaged");
    assertRefused(Arrays.copyOf(whole, 8 + 12 + 4 + 1000 + 8 - 12), "is cut short");
  }

  private void assertRefused(byte[] bytes, String reason) {
    assertThatThrownBy(() -> read(bytes))
        .isInstanceOf(UnreadableClipException.class)
        .hasMessageStartingWith(reason);
  }

  /** Lengths that lie, tables without end, boxes in boxes: told in words, soon, in little room. */
  @Test
  void damaged_files_are_read_or_told_and_never_worse() throws IOException {
    byte[] whole = new MovieBytes().frames(300, 1001).frames(2, 900).bytes();
    Random random = new Random(7);
    int told = 0;
    for (int trial = 0; trial < 3_000; trial++) {
      byte[] damaged = whole.clone();
      for (int i = 0; i <= random.nextInt(4); i++) {
        int at =
            random.nextBoolean() ? random.nextInt(24) : 1024 + random.nextInt(whole.length - 1024);
        damaged[at] = (byte) (random.nextBoolean() ? 0xFF : random.nextInt(256));
      }
      try {
        read(damaged);
      } catch (UnreadableClipException inWords) {
        told++;
        assertThat(inWords.reason()).isNotBlank();
      }
    }
    assertThat(told).isBetween(100, 2_999);
  }

  /** First bytes of RFC 8794, RFC 9639, RFC 3533, AIFF 1.3, ISO/IEC 11172-3, SMPTE ST 377-1. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1A45DFA3 A3428288 6D617472 6F736B61 | MKV | -c copy "take 2.mov"
          1A45DFA3 9F428681 01428284 7765626D | WebM | -c:v libx264 -crf 12 -c:a pcm_s24le "take 2.mov"
          52494646 00000000 41564920 4C495354 | AVI | -c:v libx264 -crf 12 -c:a pcm_s24le "take 2.mov"
          060E2B34 02050101 0D010201 01020400 | MXF | -c copy "take 2.mov"
          664C6143 00000022 10001000 00000000 | FLAC | -ar 48000 -c:a pcm_s24le "take 2.wav"
          4F676753 00020000 00000000 00000000 | Ogg | -ar 48000 -c:a pcm_s24le "take 2.wav"
          464F524D 00000000 41494643 00000000 | AIFF | -ar 48000 -c:a pcm_s24le "take 2.wav"
          49443304 00000000 00000000 00000000 | MP3 or AAC | -ar 48000 -c:a pcm_s24le "take 2.wav"
          FFFB9064 00000000 00000000 00000000 | MP3 or AAC | -ar 48000 -c:a pcm_s24le "take 2.wav"
          """)
  void a_format_that_only_wants_converting_is_told_with_the_command(
      String hex, String format, String options) throws IOException {
    Path file = folder.resolve("take 2.xyz");
    Files.write(file, HexFormat.of().parseHex(hex.replace(" ", "")));
    assertThatThrownBy(() -> ClipReader.read(file))
        .isInstanceOfSatisfying(
            UnreadableClipException.class,
            told -> {
              assertThat(told.reason()).isEqualTo("is in another format: " + format);
              assertThat(told.remedy())
                  .isEqualTo("convert it: ffmpeg -i \"take 2.xyz\" " + options);
            });
  }
}
