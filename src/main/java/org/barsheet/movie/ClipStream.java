package org.barsheet.movie;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Rect;
import org.barsheet.recording.FfmpegProgram;

/** One clip from one of its frames on, cut to an opening's shape about its middle. */
final class ClipStream implements AutoCloseable {

  private static final int MOST_PIXELS = 2048;

  private final Process ffmpeg;
  private final InputStream frames;
  private final BufferedImage image;
  private final byte[] bytes;
  private long next;

  private ClipStream(Process ffmpeg, long first, int width, int height) throws IOException {
    this.ffmpeg = ffmpeg;
    this.frames = ffmpeg.getInputStream();
    this.image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    this.bytes = new byte[width * height * 4];
    this.next = first;
    ffmpeg.getOutputStream().close();
    new LastWords(ffmpeg.getErrorStream());
  }

  /**
   * Begins to read.
   *
   * @param rate at which the clip's frames are counted
   * @param first frame of the clip, from 0
   * @param opening that it is to fill
   * @param scale pixels of the movie to one square
   */
  static ClipStream of(
      Ffmpeg program, Path clip, FrameRate rate, long first, Rect opening, double scale)
      throws IOException {
    int width = even(opening.width() * scale);
    int height = even(opening.height() * scale);
    String shape = String.format(Locale.ROOT, "%.6f", opening.width() / opening.height());
    String filter =
        "fps="
            + rate.exactName()
            + ",crop=w='min(iw,ih*"
            + shape
            + ")':h='min(ih,iw/"
            + shape
            + ")'"
            + ",scale="
            + width
            + ":"
            + height
            + ":flags=area,format=bgr0";
    List<String> arguments =
        List.of(
            "-ss",
            from(rate, first),
            "-i",
            FfmpegProgram.named(clip),
            "-map",
            "0:v:0",
            "-vf",
            filter,
            "-f",
            "rawvideo",
            "pipe:1");
    return new ClipStream(program.start(arguments), first, width, height);
  }

  private static int even(double pixels) {
    return 2 * (int) Math.max(1, Math.ceil(Math.min(MOST_PIXELS, pixels) / 2));
  }

  /** A quarter of a frame early, so that no rounding of a time can miss the frame. */
  private static String from(FrameRate rate, long frame) {
    Seconds early = rate.startOf(frame).minus(rate.frameDuration().times(BigFraction.of(1, 4)));
    return (early.signum() < 0 ? Seconds.ZERO : early).toDecimal(6).toPlainString();
  }

  /**
   * A frame of the clip; one that was read already stands until the next is asked for.
   *
   * @return empty beyond the clip's end, or where it cannot be read
   */
  Optional<BufferedImage> frame(long frame) {
    try {
      boolean fresh = next <= frame;
      while (next <= frame) {
        if (frames.readNBytes(bytes, 0, bytes.length) < bytes.length) {
          return Optional.empty();
        }
        next++;
      }
      if (fresh) {
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).asIntBuffer().get(pixels);
      }
      return Optional.of(image);
    } catch (IOException broken) {
      return Optional.empty();
    }
  }

  @Override
  public void close() {
    ffmpeg.destroyForcibly();
  }
}
