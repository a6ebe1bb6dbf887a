package org.barsheet.cli;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.barsheet.production.Progress;

/**
 * Ends long work at its next step when the program is told to stop, with Ctrl-C say, and lets it
 * clear up after itself first.
 */
final class StoppedProgress implements Progress, AutoCloseable {

  private static final long MOST_SECONDS_TO_END = 20;

  private final Progress progress;
  private final CountDownLatch ended = new CountDownLatch(1);
  private final Thread stopping = new Thread(this::stop, "stop the movie");
  private volatile boolean told;

  private StoppedProgress(Progress progress) {
    this.progress = progress;
  }

  /** Begins to listen. */
  static StoppedProgress listening(Progress progress) {
    StoppedProgress stopped = new StoppedProgress(progress);
    Runtime.getRuntime().addShutdownHook(stopped.stopping);
    return stopped;
  }

  private void stop() {
    told = true;
    try {
      ended.await(MOST_SECONDS_TO_END, TimeUnit.SECONDS);
    } catch (InterruptedException toldTwice) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * A step begins.
   *
   * @throws CancellationException if the program has been told to stop
   */
  @Override
  public void step(String doing) {
    if (told) {
      throw new CancellationException();
    }
    progress.step(doing);
  }

  @Override
  public void close() {
    ended.countDown();
    if (!told) {
      Runtime.getRuntime().removeShutdownHook(stopping);
    }
  }
}
