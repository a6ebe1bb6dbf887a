package org.barsheet.movie;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Performer;
import org.jspecify.annotations.Nullable;

/**
 * What one performer plays along with, on a phone: guide and click, bar and beat, when they are
 * seen, and what of their camera. Its times are those of the sound files, and of the call sheet.
 */
public final class GuideVideo {

  /** Large flat parts need few bits; letters stay sharp. */
  private static final int QUALITY = 24;

  private static final Seconds TAIL = Seconds.of(2);

  private final FilmSheet sheet;
  private final Performer performer;

  public GuideVideo(FilmSheet sheet, Performer performer) {
    this.sheet = sheet;
    this.performer = performer;
  }

  /** From the head of the sound files on, to their tail. */
  public static FrameSpan frames(FilmSheet sheet) {
    FrameRate rate = sheet.plan().film().rate();
    return new FrameSpan(
        -Movie.headFrames(sheet), sheet.timing().lengthFrames() + rate.frameShowing(TAIL));
  }

  /**
   * Draws every frame.
   *
   * @return the worst second of it
   */
  FlashVerdict draw(FrameSink sink, FramesDone heard) throws IOException {
    GuideMoments moments = new GuideMoments(sheet, performer);
    GuidePainter painter = new GuidePainter(performer, sheet.plan().title());
    FlashMeter meter = new FlashMeter(sheet.plan().film().rate());
    BufferedImage image =
        new BufferedImage(GuidePainter.WIDTH, GuidePainter.HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    Canvas.prepare(pen);
    FrameSpan frames = frames(sheet);
    @Nullable GuideMoment before = null;
    for (long frame = frames.start(); frame < frames.endExclusive(); frame++) {
      GuideMoment moment = moments.at(frame);
      long since = frame - frames.start();
      boolean cautious = since < 2L * sheet.plan().film().rate().nominal();
      boolean cautionEnds = since == 2L * sheet.plan().film().rate().nominal();
      if (cautionEnds || !moment.equals(before)) {
        painter.paint(pen, moment, cautious);
        meter.look(image, GuidePainter.HEIGHT, frame);
        before = moment;
      }
      sink.take(image, frame);
      heard.done(since + 1, frames.length());
    }
    pen.dispose();
    return meter.worst();
  }

  /**
   * Writes it: H.264 and AAC.
   *
   * @param sound guide with click, from the video's first frame on
   * @throws IOException if ffmpeg stops before the end
   */
  public FlashVerdict write(
      Ffmpeg ffmpeg, Path file, MovieSound sound, long samples, FramesDone heard)
      throws IOException {
    Encoding encoding =
        new Encoding(
            sheet.plan().film().rate(),
            GuidePainter.WIDTH,
            GuidePainter.HEIGHT,
            performer.name() + ": " + sheet.plan().title(),
            "",
            List.of(sound),
            samples,
            false,
            "ultrafast",
            QUALITY);
    int pixels = GuidePainter.WIDTH * GuidePainter.HEIGHT;
    try (Encoder encoder = new Encoder(ffmpeg, encoding.arguments(file), pixels)) {
      FlashVerdict worst = draw(encoder, heard);
      encoder.finish();
      return worst;
    }
  }
}
