package org.barsheet.desk;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Lets in only who was told the address: the token in it is exchanged for a cookie that scripts
 * cannot read and other sites do not send. Pages of other sites, and names that lead here from
 * elsewhere, are turned away by what a browser says of itself (Host and Origin, RFC 9110, 7.2, and
 * RFC 6454, 7).
 */
final class Gate {

  private static final int SECRET_BYTES = 24;

  private final int port;
  private final String token = secret();
  private final String pass = secret();

  Gate(int port) {
    this.port = port;
  }

  private static String secret() {
    byte[] bytes = new byte[SECRET_BYTES];
    new SecureRandom().nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }

  /** What a person opens. */
  String address() {
    return origin() + "/?token=" + token;
  }

  String origin() {
    return "http://" + host();
  }

  private String host() {
    return "127.0.0.1:" + port;
  }

  /** Whether a request names the token. */
  boolean bringsToken(HttpExchange exchange) {
    String query = exchange.getRequestURI().getRawQuery();
    return query != null && same(query, "token=" + token);
  }

  /** The cookie for it, for as long as the browser is open. */
  String cookie() {
    return name() + "=" + pass + "; Path=/; HttpOnly; SameSite=Strict";
  }

  /** Browsers keep cookies by host alone, so that another port needs another name. */
  private String name() {
    return "barsheet-desk-" + port;
  }

  /** Why a request is turned away, whoever sends it; nothing where it comes from our own page. */
  Optional<String> foreign(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    List<String> hosts = Objects.requireNonNullElse(headers.get("Host"), List.of());
    if (!hosts.equals(List.of(host()))) {
      return Optional.of("This address isn't the desk's. Open the one that barsheet printed.");
    }
    String from = headers.getFirst("Origin");
    String site = headers.getFirst("Sec-Fetch-Site");
    boolean elsewhere =
        (from != null && !from.equals(origin()))
            || (site != null && !List.of("same-origin", "none").contains(site));
    boolean changes = !exchange.getRequestMethod().equals("GET");
    return elsewhere || (changes && from == null)
        ? Optional.of("Another page asked for this. The desk answers its own page only.")
        : Optional.empty();
  }

  /** Whether a request brings the cookie. */
  boolean isKnown(HttpExchange exchange) {
    List<String> cookies =
        Objects.requireNonNullElse(exchange.getRequestHeaders().get("Cookie"), List.of());
    return cookies.stream()
        .flatMap(line -> List.of(line.split(";", -1)).stream())
        .anyMatch(each -> same(each.strip(), name() + "=" + pass));
  }

  /** Compares in the same time wherever two secrets differ. */
  private static boolean same(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }
}
