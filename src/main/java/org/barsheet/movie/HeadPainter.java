package org.barsheet.movie;

import java.awt.Color;
import java.awt.Graphics2D;
import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.film.FilmSheet;
import org.barsheet.frames.Strip;
import org.barsheet.plan.Film;

/** Draws the head before the film: a still gray ground, with words alone. Nothing flashes. */
final class HeadPainter {

  private static final Color GROUND = new Color(0x3A4048);

  private final FilmSheet sheet;
  private final Sizes sizes;

  HeadPainter(FilmSheet sheet, Sizes sizes) {
    this.sheet = sheet;
    this.sizes = sizes;
  }

  void paint(Graphics2D pen, long frame) {
    pen.setColor(GROUND);
    pen.fillRect(0, 0, sizes.width(), sizes.height());
    pen.setColor(Canvas.WHITE);
    Film film = sheet.plan().film();
    line(pen, sheet.plan().title(), 0.42, 1 / 11.0);
    line(pen, "first frame " + film.firstFrame() + ", " + film.rate() + " fps", 0.56, 1 / 20.0);
  }

  private void line(Graphics2D pen, String words, double down, double size) {
    pen.setFont(Canvas.bold(sizes.height() * size));
    String fitting = Canvas.fitting(words, pen.getFontMetrics(), sizes.width() * 0.9);
    double left = (sizes.width() - pen.getFontMetrics().stringWidth(fitting)) / 2.0;
    pen.drawString(fitting, (float) left, (float) (sizes.height() * down));
  }

  /** What stands beside a frame of the head; the pop is told on the frame that shows it. */
  Strip words(long frame) {
    Film film = sheet.plan().film();
    return new Strip(
        film.timecode(frame).toString(),
        frame,
        "head",
        0,
        "before the film",
        popFrame(film) == frame ? List.of("pop") : List.of());
  }

  private static long popFrame(Film film) {
    FrameRate rate = film.rate();
    return film.pop().map(pop -> rate.frameShowing(Seconds.ZERO.minus(pop))).orElse(Long.MAX_VALUE);
  }
}
