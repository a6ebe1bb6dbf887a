package org.barsheet.movie;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.ShortBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.outside.OutsideProgram;

/** A movie as ffmpeg and ffprobe read it back. */
final class Decoded {

  private final Path movie;

  Decoded(Path movie) {
    this.movie = movie;
  }

  /** One frame in gray, a byte a pixel. */
  interface Look {
    void at(byte[] gray, long frame);
  }

  /** Looks at every frame, and counts them. */
  long frames(int width, int height, Look look) throws IOException, InterruptedException {
    Process ffmpeg =
        new ProcessBuilder(
                "ffmpeg",
                "-v",
                "error",
                "-i",
                movie.toString(),
                "-map",
                "0:v",
                "-vsync",
                "0",
                "-pix_fmt",
                "gray",
                "-f",
                "rawvideo",
                "pipe:1")
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    byte[] gray = new byte[width * height];
    long count = 0;
    try (InputStream frames = ffmpeg.getInputStream()) {
      while (frames.readNBytes(gray, 0, gray.length) == gray.length) {
        look.at(gray, count++);
      }
    }
    assertThat(ffmpeg.waitFor()).isZero();
    return count;
  }

  /** The samples of a track of sound as they are in the file, at its own rate. */
  short[] samples(int track, int channels) throws IOException, InterruptedException {
    Process ffmpeg =
        new ProcessBuilder(
                "ffmpeg",
                "-v",
                "error",
                "-i",
                movie.toString(),
                "-map",
                "0:a:" + track,
                "-ac",
                "" + channels,
                "-c:a",
                "pcm_s16le",
                "-f",
                "s16le",
                "pipe:1")
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    byte[] bytes = ffmpeg.getInputStream().readAllBytes();
    assertThat(ffmpeg.waitFor()).isZero();
    ShortBuffer samples = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer();
    short[] all = new short[samples.remaining()];
    samples.get(all);
    return all;
  }

  /** What ffprobe says of a stream: {@code v:0}, {@code a:1}. */
  Map<String, String> stream(String which) throws IOException, InterruptedException {
    String told =
        OutsideProgram.output(
            "ffprobe",
            "-v",
            "error",
            "-select_streams",
            which,
            "-count_frames",
            "-show_streams",
            "-of",
            "default=noprint_wrappers=1",
            movie.toString());
    Map<String, String> fields = new TreeMap<>();
    Matcher line = Pattern.compile("(?m)^([^=]+)=(.*)$").matcher(told);
    while (line.find()) {
      fields.putIfAbsent(line.group(1), line.group(2));
    }
    return fields;
  }

  /** The bits of the corner that programs read, or -1 where they do not agree with their sum. */
  static long[] code(byte[] gray, Sizes sizes) {
    long bits = 0;
    int side = CodeCells.side(sizes);
    for (int cell = 0; cell < CodeCells.COLUMNS * CodeCells.ROWS; cell++) {
      int x = CodeCells.left(sizes) + cell % CodeCells.COLUMNS * side + side / 2;
      int y = CodeCells.top(sizes) + cell / CodeCells.COLUMNS * side + side / 2;
      bits = bits << 1 | ((gray[y * sizes.width() + x] & 0xFF) > 127 ? 1 : 0);
    }
    long frame = bits >> 24 << 40 >> 40;
    int shot = (int) (bits >> 8 & 0xFFFF);
    return bits == CodeCells.bits(frame, shot) ? new long[] {frame, shot} : new long[] {-1, -1};
  }

  /** Where a sound that was silent gets loud. */
  static List<Integer> onsets(short[] samples, int quietFor, int loud) {
    List<Integer> onsets = new ArrayList<>();
    int quiet = quietFor;
    for (int i = 0; i < samples.length; i++) {
      if (Math.abs(samples[i]) > loud) {
        if (quiet >= quietFor) {
          onsets.add(i);
        }
        quiet = 0;
      } else {
        quiet++;
      }
    }
    return onsets;
  }
}
