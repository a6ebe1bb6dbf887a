package org.barsheet.cli;

import java.io.PrintWriter;
import java.time.Duration;
import org.barsheet.production.Progress;

/**
 * One line that says what is being done, once the work has taken more than a second. Written over
 * in place and wiped at the end, so it belongs on a terminal only.
 */
final class ProgressLine implements Progress, AutoCloseable {

  private static final Duration PATIENCE = Duration.ofSeconds(1);
  private static final int WIDTH = 60;

  private final PrintWriter err;
  private final Thread ticker;
  private volatile String step = "";

  ProgressLine(PrintWriter err) {
    this.err = err;
    this.ticker = new Thread(this::show, "progress line");
    ticker.setDaemon(true);
    ticker.start();
  }

  @Override
  public void step(String doing) {
    step = doing;
  }

  private void show() {
    try {
      Thread.sleep(PATIENCE.toMillis());
      while (true) {
        String doing = step;
        err.print("\r" + doing + " ".repeat(Math.max(0, WIDTH - doing.length())));
        err.flush();
        Thread.sleep(200);
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    ticker.interrupt();
    try {
      ticker.join();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    err.print("\r" + " ".repeat(WIDTH) + "\r");
    err.flush();
  }
}
