package org.barsheet.movie;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.Seconds;
import org.barsheet.film.FilmSheet;
import org.barsheet.frames.FilmFrames;
import org.barsheet.plan.Film;
import org.barsheet.timing.SoundLayout;

/**
 * The film as it stands, frame by frame: drawings, planned movements, photographs and clips as far
 * as they are there. One frame is kept at a time, however long the film is.
 */
public final class Movie {

  /** How near to the original ffmpeg stays: letters and paper edges look whole. */
  private static final int QUALITY = 20;

  private final FilmSheet sheet;
  private final FilmFrames frames;
  private final MovieOrder order;
  private final Sizes sizes;
  private final Material material;
  private final Optional<Ffmpeg> ffmpeg;
  private final Drawings drawings;

  /**
   * A movie of a film.
   *
   * @param material what there is already
   * @param ffmpeg reads clips and writes the movie; where there is none, clips are boxes
   */
  public Movie(FilmSheet sheet, MovieOrder order, Material material, Optional<Ffmpeg> ffmpeg) {
    this.sheet = sheet;
    this.order = order;
    this.sizes = Sizes.of(sheet.plan().film(), order.width(), order.strip());
    this.material = material;
    this.ffmpeg = ffmpeg;
    this.drawings = new Drawings(sizes.width());
    this.frames = FilmFrames.of(sheet, file -> drawings.of(file).isPresent());
  }

  /** Half the film's frame, as a movie is unless asked otherwise. */
  public static int usualWidth(Film film) {
    return Math.max(Sizes.NARROWEST, film.width() / 2);
  }

  /** Frames before the film that the sound files have sound for. */
  public static long headFrames(FilmSheet sheet) {
    Film film = sheet.plan().film();
    return film.rate().frameShowing(Seconds.of(SoundLayout.of(sheet.timing()).headSeconds()));
  }

  /**
   * Draws every frame.
   *
   * @return the worst second of it
   * @throws IOException if the sink does not take one
   */
  public FlashVerdict draw(FrameSink sink, FramesDone heard) throws IOException {
    Film film = sheet.plan().film();
    FlashMeter meter = new FlashMeter(film.rate());
    BufferedImage image = new BufferedImage(sizes.width(), sizes.all(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    Canvas.prepare(pen);
    try (ClipShelf clips = new ClipShelf(ffmpeg, material)) {
      FramePainter painter =
          new FramePainter(
              sheet,
              frames,
              sizes,
              new ImagePainter(
                  sizes, sheet.plan().workshop().artwork(), drawings, material, clips));
      long first = order.frames().start();
      for (long frame = first; frame < order.frames().endExclusive(); frame++) {
        boolean cautious = frame - first < film.rate().nominal();
        if (painter.paint(pen, frame, cautious)) {
          meter.look(image, sizes.height(), frame);
          clips.endOfFrame();
        }
        sink.take(image, frame);
        heard.done(frame - first + 1, order.frames().length());
      }
    } finally {
      pen.dispose();
    }
    return meter.worst();
  }

  /**
   * Writes the movie into a file.
   *
   * @param sounds tracks of sound
   * @param plain whether sound is kept sample for sample (QuickTime), rather than as AAC (MP4)
   * @throws IOException if ffmpeg stops before the end
   */
  public FlashVerdict write(
      Path file, List<MovieSound> sounds, long samples, boolean plain, FramesDone heard)
      throws IOException {
    Film film = sheet.plan().film();
    Encoding encoding =
        new Encoding(
            film.rate(),
            sizes.width(),
            sizes.all(),
            sheet.plan().title(),
            film.timecode(order.frames().start()).toString(),
            sounds,
            samples,
            plain,
            "veryfast",
            QUALITY);
    try (Encoder encoder =
        new Encoder(ffmpeg.orElseThrow(), encoding.arguments(file), sizes.width() * sizes.all())) {
      FlashVerdict worst = draw(encoder, heard);
      encoder.finish();
      return worst;
    }
  }

  /** Width and height of its frame, {@code 960 × 584}. */
  public String size() {
    return sizes.width() + " × " + sizes.all();
  }
}
