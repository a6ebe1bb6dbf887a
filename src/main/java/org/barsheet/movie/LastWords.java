package org.barsheet.movie;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Hears a program's complaints while it runs, and keeps the last of them. */
final class LastWords {

  private static final int KEPT = 4000;

  private final Thread listener;
  private final StringBuilder heard = new StringBuilder();

  LastWords(InputStream complaints) {
    this.listener = new Thread(() -> listen(complaints), "ffmpeg complaints");
    listener.setDaemon(true);
    listener.start();
  }

  private void listen(InputStream complaints) {
    byte[] some = new byte[1024];
    try (complaints) {
      for (int count = complaints.read(some); count >= 0; count = complaints.read(some)) {
        heard.append(new String(some, 0, count, StandardCharsets.UTF_8));
        heard.delete(0, Math.max(0, heard.length() - KEPT));
      }
    } catch (IOException ended) {
      // There is no more to hear.
    }
  }

  /** The last line, once the program has ended; "" where it said nothing. */
  String told() {
    try {
      listener.join(2000);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    List<String> lines = heard.toString().strip().lines().toList();
    return lines.isEmpty() ? "" : lines.get(lines.size() - 1).strip();
  }
}
