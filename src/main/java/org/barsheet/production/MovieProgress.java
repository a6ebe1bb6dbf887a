package org.barsheet.production;

import java.util.concurrent.TimeUnit;
import org.barsheet.movie.FramesDone;

/** Tells how far a movie is, and how long it will take, a few times a second. */
final class MovieProgress implements FramesDone {

  private static final long NANOSECONDS_BETWEEN = TimeUnit.MILLISECONDS.toNanos(200);

  private final Progress progress;
  private final String doing;
  private final long began = System.nanoTime();
  private long told = began;

  /**
   * Progress of one movie.
   *
   * @param doing in the present tense: "drawing the movie"
   */
  MovieProgress(Progress progress, String doing) {
    this.progress = progress;
    this.doing = doing;
    progress.step(doing);
  }

  @Override
  public void done(long frames, long all) {
    long now = System.nanoTime();
    if (now - told >= NANOSECONDS_BETWEEN) {
      told = now;
      progress.step(doing + ", " + words(now - began, frames, all));
    }
  }

  /** {@code 43 %, 12 s left}. */
  static String words(long nanoseconds, long frames, long all) {
    long left = nanoseconds / frames * (all - frames);
    long seconds = (left + TimeUnit.SECONDS.toNanos(1) - 1) / TimeUnit.SECONDS.toNanos(1);
    String time = seconds < 120 ? seconds + " s" : (seconds + 30) / 60 + " min";
    return 100 * frames / all + " %, " + time + " left";
  }
}
