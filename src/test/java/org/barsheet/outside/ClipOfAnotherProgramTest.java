package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
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
}
