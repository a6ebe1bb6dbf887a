package org.barsheet.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.assertj.core.data.Offset;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.SampleFilm;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.SoundLayout.Click;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SoundFilesTest {

  private static byte[] click(FilmSheet sheet) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      SoundFiles.writeClick(sheet, bytes);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return bytes.toByteArray();
  }

  private static byte[] guide(FilmSheet sheet) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      SoundFiles.writeGuide(sheet, bytes);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return bytes.toByteArray();
  }

  static List<FrameRate> rates() {
    return List.of(
        FrameRate.FPS_23_976, FrameRate.FPS_24, FrameRate.FPS_25, FrameRate.FPS_29_97_DF);
  }

  @Test
  void the_jdk_reads_both_files() throws IOException, UnsupportedAudioFileException {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).sheet();
    long samples = SoundLayout.of(sheet.timing()).lengthSamples();
    for (byte[] file : List.of(click(sheet), guide(sheet))) {
      AudioInputStream sound = AudioSystem.getAudioInputStream(new ByteArrayInputStream(file));
      AudioFormat format = sound.getFormat();
      assertThat(format.getEncoding()).isEqualTo(AudioFormat.Encoding.PCM_SIGNED);
      assertThat(format.getSampleRate()).isEqualTo(48_000f);
      assertThat(format.getSampleSizeInBits()).isEqualTo(16);
      assertThat(sound.getFrameLength()).isEqualTo(samples);
    }
  }

  /** An onset is a sample far louder than anything in the 2 ms before it. */
  private static List<Long> onsets(short[] samples) {
    List<Long> onsets = new ArrayList<>();
    int quiet = 96;
    for (int i = 0; i < samples.length; i++) {
      int before = 0;
      for (int k = Math.max(0, i - quiet); k < i; k++) {
        before = Math.max(before, Math.abs(samples[k]));
      }
      if (Math.abs(samples[i]) > 9_000 && before < 2_000) {
        onsets.add((long) i);
      }
    }
    return onsets;
  }

  @ParameterizedTest
  @MethodSource("rates")
  void every_click_is_heard_within_a_sample_of_its_beat(FrameRate rate) {
    FilmSheet sheet = SampleFilm.at(rate).sheet();
    SoundLayout layout = SoundLayout.of(sheet.timing());
    List<Long> heard = onsets(new RiffWalker(click(sheet)).samples(1));
    List<Click> clicks = layout.clicks();
    assertThat(heard).hasSameSizeAs(clicks);
    for (int i = 0; i < clicks.size(); i++) {
      double exact = (clicks.get(i).at().toDouble() + layout.headSeconds()) * 48_000;
      assertThat((double) heard.get(i)).isCloseTo(exact, Offset.offset(1.0));
    }
  }

  @Test
  void downbeats_are_louder_than_other_beats() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).sheet();
    SoundLayout layout = SoundLayout.of(sheet.timing());
    short[] samples = new RiffWalker(click(sheet)).samples(1);
    TreeSet<Integer> downbeats = new TreeSet<>();
    TreeSet<Integer> others = new TreeSet<>();
    for (Click click : layout.clicks()) {
      int strength = Math.abs(samples[(int) layout.sampleAt(click.at())]);
      (click.downbeat() ? downbeats : others).add(strength);
    }
    assertThat(downbeats.first()).isGreaterThan(others.last());
  }

  @ParameterizedTest
  @MethodSource("rates")
  void the_pop_is_one_frame_long_two_seconds_before_the_first_frame(FrameRate rate) {
    FilmSheet sheet = SampleFilm.at(rate).sheet();
    short[] samples = new RiffWalker(click(sheet)).samples(1);
    int first = -1;
    int last = -1;
    // Nothing but the pop sounds between 5.5 s and 6.5 s of the file.
    for (int i = 264_000; i < 312_000; i++) {
      if (samples[i] != 0) {
        first = first < 0 ? i : first;
        last = i;
      }
    }
    double frame = 48_000.0 * rate.denominator() / rate.numerator();
    assertThat(first).isBetween(288_000, 288_001);
    assertThat((double) (last - 288_000)).isCloseTo(frame, Offset.offset(2.0));
  }

  @Test
  void without_a_pop_nothing_sounds_before_the_count_in_and_no_cue_names_it() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).pop(Optional.empty()).sheet();
    short[] samples = new RiffWalker(click(sheet)).samples(1);
    for (int i = 0; i < (int) ((8 + 2 - 3.125) * 48_000); i++) {
      assertThat(samples[i]).isZero();
    }
    assertThat(new RiffWalker(guide(sheet)).cues()).doesNotContainValue("pop");
  }

  @Test
  void an_early_pop_makes_the_head_longer_by_whole_seconds() {
    Optional<Seconds> before = Optional.of(Seconds.of(19, 2));
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).pop(before).sheet();
    assertThat(SoundLayout.of(sheet.timing()).headSeconds()).isEqualTo(10);
    assertThat(new RiffWalker(guide(sheet)).cues()).containsEntry(24_000L, "pop");
  }

  @Test
  void cue_points_name_pop_count_in_first_frame_and_every_cue() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).sheet();
    Map<Long, String> cues = new RiffWalker(guide(sheet)).cues();
    assertThat(cues)
        .containsEntry(6 * 48_000L, "pop")
        .containsEntry(8 * 48_000L, "film frame 0")
        .containsEntry((8 + 2) * 48_000L - 150_000L, "count-in")
        .containsEntry((8 + 2) * 48_000L + 210_000L, "glimmer 1")
        // Two beats of 5/8 s later.
        .containsEntry((8 + 2) * 48_000L + 270_000L, "glimmer 1 accent");
    assertThat(cues).hasSize(3 + points(sheet));
    for (Cue cue : sheet.timing().cues()) {
      assertThat(cues.values()).contains(cue.title());
    }
  }

  /** A point for each cue, and another where its accent is not its first note. */
  private static int points(FilmSheet sheet) {
    return sheet.timing().cues().stream()
        .mapToInt(cue -> cue.accentAt().equals(cue.at()) ? 1 : 2)
        .sum();
  }

  @Test
  void the_bext_chunk_says_what_the_file_is_and_when_it_begins() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_23_976).sheet();
    ByteBuffer bext = new RiffWalker(click(sheet)).chunk("bext");
    byte[] description = new byte[256];
    bext.get(description);
    assertThat(new String(description, StandardCharsets.US_ASCII))
        .startsWith("click track, head 8 s, 23.976 fps, film frame 0 is 01:00:00:00: The paper");
    assertThat(bext.getLong(338)).isEqualTo(172_972_800L - 384_000);
    assertThat(bext.limit()).isGreaterThan(602);
  }

  @Test
  void the_guide_is_the_same_every_time_and_never_clips() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).sheet();
    byte[] guide = guide(sheet);
    assertThat(guide).isEqualTo(guide(SampleFilm.at(FrameRate.FPS_24).sheet()));
    int peak = 0;
    for (short sample : new RiffWalker(guide).samples(2)) {
      peak = Math.max(peak, Math.abs(sample));
    }
    assertThat(peak).isBetween(8_000, 32_000);
  }

  @Test
  void the_guide_sounds_where_the_music_does_and_dies_away_after_it() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).sheet();
    short[] samples = new RiffWalker(guide(sheet)).samples(2);
    assertThat(loudness(samples, 0, 4)).isZero();
    for (int second = 10; second < 27; second++) {
      assertThat(loudness(samples, second, second + 1)).isGreaterThan(300);
    }
    int end = samples.length / 48_000;
    assertThat(loudness(samples, end - 1, end)).isLessThan(200);
  }

  /** Root of the mean square between two seconds. */
  private static double loudness(short[] samples, int from, int to) {
    double sum = 0;
    for (int i = from * 48_000; i < to * 48_000; i++) {
      sum += (double) samples[i] * samples[i];
    }
    return Math.sqrt(sum / (48_000.0 * (to - from)));
  }

  @Test
  void a_note_begins_on_its_sample() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).sheet();
    short[] samples = new RiffWalker(guide(sheet)).samples(2);
    // The pickup is the first note of all, at 10 s; the last click of the count-in is long over.
    int first = 479_000;
    while (Math.abs(samples[first]) < 8) {
      first++;
    }
    assertThat(first).isBetween(480_000, 480_048);
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_the_chunks_stay_whole(String text) {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_25).saying(text).sheet();
    assertThat(new RiffWalker(click(sheet)).cues()).hasSize(3 + points(sheet));
  }
}
