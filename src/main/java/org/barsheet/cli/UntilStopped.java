package org.barsheet.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.barsheet.production.Watcher;

/**
 * Looks again a few times a second until the program is told to stop, with Ctrl-C say. Work that is
 * under way then is let end first, so that nothing is left half done.
 */
final class UntilStopped implements Watcher.Pause {

  private static final long MILLISECONDS = 150;
  private static final long MOST_SECONDS_TO_END = 20;

  private final CountDownLatch stopped = new CountDownLatch(1);
  private final CountDownLatch ended = new CountDownLatch(1);

  private UntilStopped() {}

  /** Begins to listen. */
  static UntilStopped listening() {
    UntilStopped pause = new UntilStopped();
    Runtime.getRuntime().addShutdownHook(new Thread(pause::stop, "stop watching"));
    return pause;
  }

  private void stop() {
    stopped.countDown();
    try {
      ended.await(MOST_SECONDS_TO_END, TimeUnit.SECONDS);
    } catch (InterruptedException toldTwice) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public boolean thenLookAgain() {
    try {
      return !stopped.await(MILLISECONDS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException toldToEnd) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  @Override
  public void close() {
    ended.countDown();
  }
}
