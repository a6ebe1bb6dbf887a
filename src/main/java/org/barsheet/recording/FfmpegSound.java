package org.barsheet.recording;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;

/**
 * Decodes sound by ffmpeg.
 *
 * @param program its file
 */
record FfmpegSound(Path program) {

  /**
   * The sound of a file, from the file's time 0 on.
   *
   * @param rate samples a second
   */
  Sound read(Path file, int rate) {
    try {
      Process process = start(file, rate);
      try (InputStream floats = process.getInputStream()) {
        process.getOutputStream().close();
        Sound sound = SoundReader.decoded(file, floats, rate);
        if (process.waitFor() != 0 || sound.length() == 0) {
          throw SoundReader.damaged(file);
        }
        return sound;
      } finally {
        process.destroy();
      }
    } catch (IOException broken) {
      throw SoundReader.damaged(file);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw SoundReader.damaged(file);
    }
  }

  private Process start(Path file, int rate) throws IOException {
    List<String> command =
        List.of(
            program.toString(),
            "-hide_banner",
            "-nostats",
            "-v",
            "error",
            "-nostdin",
            "-i",
            FfmpegProgram.named(file),
            "-map",
            "0:a:0",
            "-vn",
            "-af",
            "aresample=async=1:first_pts=0",
            "-ac",
            "1",
            "-ar",
            String.valueOf(rate),
            "-f",
            "f32le",
            "-");
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
  }
}
