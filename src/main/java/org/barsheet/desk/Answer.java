package org.barsheet.desk;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * What a request is answered.
 *
 * @param status of HTTP
 * @param type media type
 * @param text what is sent, in UTF-8
 */
record Answer(int status, String type, String text) {

  static final String JSON = "application/json; charset=utf-8";
  private static final String HTML = "text/html; charset=utf-8";
  private static final String TEXT = "text/plain; charset=utf-8";

  static Answer json(String text) {
    return new Answer(200, JSON, text);
  }

  static Answer page(String text) {
    return new Answer(200, HTML, text);
  }

  /** Words to a person whose request is not met. */
  static Answer refusal(int status, String words) {
    return new Answer(status, TEXT, words + "\n");
  }

  /** Sends it and ends the exchange. */
  void send(HttpExchange exchange) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    guard(headers);
    headers.set("Content-Type", type);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    exchange.sendResponseHeaders(status, bytes.length);
    try (OutputStream out = exchange.getResponseBody()) {
      out.write(bytes);
    }
  }

  /** Nothing is kept, guessed, framed or told to other sites. */
  static void guard(Headers headers) {
    headers.set("Cache-Control", "no-store");
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("X-Frame-Options", "DENY");
  }
}
