package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.barsheet.clips.ClipFacts;
import org.barsheet.clips.ClipFacts.Video;
import org.barsheet.clips.ClipReader;
import org.barsheet.clips.UnreadableClipException;
import org.barsheet.clock.Seconds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clips that other programs write are read as those say. */
class ClipOfAnotherProgramTest {

  /** A second reader: what another program writes at a known rate and size is read as such. */
  @Test
  void a_film_of_another_program_is_read(@TempDir Path out)
      throws IOException, InterruptedException, UnreadableClipException {
    Path file = out.resolve("test.mp4");
    String source = "testsrc=size=320x240:rate=30000/1001:duration=2";
    OutsideProgram.output(
        "ffmpeg", "-v", "error", "-f", "lavfi", "-i", source, "-c:v", "mpeg4", file.toString());
    Video video = ClipReader.read(file).video().orElseThrow();
    assertThat(video.frames()).isEqualTo(60);
    assertThat(video.frameDuration()).isEqualTo(Seconds.of(1001, 30_000));
    assertThat(video.width()).isEqualTo(320);
    assertThat(video.height()).isEqualTo(240);
  }

  /** A camera's timecode (tmcd): 29.97 non-drop-frame labels run slower than clocks. */
  @Test
  void the_timecode_another_program_writes_is_read(@TempDir Path out)
      throws IOException, InterruptedException, UnreadableClipException {
    Path file = out.resolve("test.mov");
    OutsideProgram.output(
        "ffmpeg",
        "-v",
        "error",
        "-f",
        "lavfi",
        "-i",
        "testsrc=size=64x48:rate=30000/1001:duration=1",
        "-f",
        "lavfi",
        "-i",
        "sine=duration=1",
        "-c:v",
        "mpeg4",
        "-c:a",
        "pcm_s16le",
        "-timecode",
        "01:00:02:10",
        file.toString());
    ClipFacts facts = ClipReader.read(file);
    assertThat(facts.sinceMidnight()).contains(Seconds.of((3602 * 30 + 10) * 1001L, 30_000));
    assertThat(facts.sounding()).isTrue();
  }
}
