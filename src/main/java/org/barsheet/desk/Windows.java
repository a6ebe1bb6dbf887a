package org.barsheet.desk;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Queue;

/**
 * The windows in which the desk is open: each is told of every new state by server-sent events
 * (HTML Standard, 9.2), so that all show the same.
 */
final class Windows {

  /** More than anybody looks at; the one told least recently goes. */
  private static final int MOST = 24;

  private final Queue<HttpExchange> open = new ArrayDeque<>();

  /** Keeps an exchange open for events, and sends the first. */
  synchronized void join(HttpExchange exchange, String first) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    Answer.guard(headers);
    headers.set("Content-Type", "text/event-stream");
    exchange.sendResponseHeaders(200, 0);
    while (open.size() >= MOST) {
      open.remove().close();
    }
    if (isTold(exchange, first)) {
      open.add(exchange);
    }
  }

  /** Tells all windows; one that is gone is forgotten. */
  synchronized void tell(String event) {
    open.removeIf(exchange -> !isTold(exchange, event));
  }

  private static boolean isTold(HttpExchange exchange, String event) {
    try {
      exchange.getResponseBody().write(event.getBytes(StandardCharsets.UTF_8));
      exchange.getResponseBody().flush();
      return true;
    } catch (IOException gone) {
      exchange.close();
      return false;
    }
  }

  /** An event with data on one line. */
  static String event(String name, String data) {
    return "event: " + name + "\ndata: " + data + "\n\n";
  }

  synchronized void close() {
    open.forEach(HttpExchange::close);
    open.clear();
  }
}
