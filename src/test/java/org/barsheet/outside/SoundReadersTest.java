package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.clips.ClipFacts;
import org.barsheet.clips.ClipReader;
import org.barsheet.clips.UnreadableClipException;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.handoff.Handoff;
import org.barsheet.handoff.HandoffFile;
import org.barsheet.handoff.SampleFilm;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sound files as other programs read them. */
class SoundReadersTest {

  @TempDir private static Path folder;

  private static Path click;
  private static Path guide;

  @BeforeAll
  static void write() throws IOException {
    List<HandoffFile> files =
        Handoff.sound(SampleFilm.at(FrameRate.FPS_29_97_DF).from("01:00:00;00").sheet(), "quay");
    for (HandoffFile file : files) {
      try (OutputStream out = Files.newOutputStream(folder.resolve(file.path()))) {
        file.content().writeTo(out);
      }
    }
    click = folder.resolve("quay-click.wav");
    guide = folder.resolve("quay-guide.wav");
  }

  @Test
  void ffprobe_reads_rate_channels_and_when_the_file_begins()
      throws IOException, InterruptedException {
    String told =
        OutsideProgram.output(
            "ffprobe",
            "-v",
            "error",
            "-show_entries",
            "stream=sample_rate,channels,codec_name:format_tags=time_reference",
            "-of",
            "default=noprint_wrappers=1",
            guide.toString());
    // Label 01:00:00;00 is 172799827 samples after midnight, less a head of 8 s.
    assertThat(told)
        .contains("codec_name=pcm_s16le", "sample_rate=48000", "channels=2")
        .contains("time_reference=" + (172_799_827L - 8 * 48_000));
  }

  @Test
  void sox_reads_the_click_and_finds_nothing_cut_off() throws IOException, InterruptedException {
    assertThat(OutsideProgram.output("sox", "--i", "-r", click.toString())).isEqualTo("48000");
    assertThat(OutsideProgram.output("sox", "--i", "-c", click.toString())).isEqualTo("1");
    String told = OutsideProgram.output("sox", guide.toString(), "-n", "stat");
    Matcher most = Pattern.compile("Maximum amplitude:\\s+(\\S+)").matcher(told);
    assertThat(most.find()).isTrue();
    assertThat(Double.parseDouble(most.group(1))).isBetween(0.05, 0.99);
  }

  /** What we write is read by our own reader of recordings as it is by the others. */
  @Test
  void our_own_reader_agrees_about_length_and_beginning()
      throws IOException, InterruptedException, UnreadableClipException {
    String samples = OutsideProgram.output("sox", "--i", "-s", guide.toString());
    ClipFacts facts = ClipReader.read(guide);
    assertThat(facts.length()).isEqualTo(Seconds.of(Long.parseLong(samples), 48_000));
    assertThat(facts.sinceMidnight()).contains(Seconds.of(172_799_827L - 8 * 48_000, 48_000));
  }
}
