package org.barsheet.desk;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files beside a plan and below, to look at. What lies elsewhere is never sent, by whatever
 * name or link it is asked for; names that begin with a dot are not sent either.
 */
final class ProductionFiles {

  private static final Pattern RANGE = Pattern.compile("bytes=(\\d{1,15})-(\\d{0,15})");

  private static final Map<String, String> TYPES =
      Map.ofEntries(
          Map.entry("html", "text/html; charset=utf-8"),
          Map.entry("svg", "image/svg+xml"),
          Map.entry("png", "image/png"),
          Map.entry("jpg", "image/jpeg"),
          Map.entry("jpeg", "image/jpeg"),
          Map.entry("pdf", "application/pdf"),
          Map.entry("json", "application/json"),
          Map.entry("csv", "text/csv; charset=utf-8"),
          Map.entry("vtt", "text/vtt; charset=utf-8"),
          Map.entry("yaml", "text/plain; charset=utf-8"),
          Map.entry("wav", "audio/wav"),
          Map.entry("mp3", "audio/mpeg"),
          Map.entry("m4a", "audio/mp4"),
          Map.entry("ogg", "audio/ogg"),
          Map.entry("flac", "audio/flac"),
          Map.entry("mp4", "video/mp4"));

  private final Path folder;

  /**
   * The files of a folder.
   *
   * @param folder real path of the plan's folder
   */
  ProductionFiles(Path folder) {
    this.folder = folder;
  }

  /** Sends the file that a request's path names, or says that there is none. */
  void send(HttpExchange exchange) throws IOException {
    Optional<Path> file = file(exchange.getRequestURI().getPath());
    if (file.isEmpty()) {
      Answer.refusal(404, "There is no such file.").send(exchange);
      return;
    }
    Headers headers = exchange.getResponseHeaders();
    Answer.guard(headers);
    headers.set("Content-Type", type(file.get()));
    // Whatever is in the file, it does not act in the desk's name.
    headers.set("Content-Security-Policy", "sandbox allow-scripts allow-downloads allow-modals");
    headers.set("Accept-Ranges", "bytes");
    part(exchange, file.get());
  }

  /** The file of a path that begins with a slash, if it is the production's. */
  Optional<Path> file(String path) {
    try {
      Path asked = Path.of(path.substring(1));
      for (Path name : asked) {
        if (name.toString().startsWith(".")) {
          return Optional.empty();
        }
      }
      Path file = folder.resolve(asked).toRealPath();
      return file.startsWith(folder) && Files.isRegularFile(file)
          ? Optional.of(file)
          : Optional.empty();
    } catch (IOException | InvalidPathException notThere) {
      return Optional.empty();
    }
  }

  private static String type(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    String ending = name.substring(name.lastIndexOf('.') + 1);
    return TYPES.getOrDefault(ending, "application/octet-stream");
  }

  /** All of it, or the one range that a player asks for (RFC 9110, 14.2). */
  private static void part(HttpExchange exchange, Path file) throws IOException {
    long size = Files.size(file);
    String asked = exchange.getRequestHeaders().getFirst("Range");
    Matcher range = RANGE.matcher(asked == null ? "" : asked);
    long first = range.matches() ? Long.parseLong(range.group(1)) : 0;
    boolean some = range.matches() && first < size;
    long last =
        some && !range.group(2).isEmpty()
            ? Math.min(size - 1, Long.parseLong(range.group(2)))
            : size - 1;
    if (some && last < first) {
      some = false;
      last = size - 1;
    }
    long from = some ? first : 0;
    long length = last - from + 1;
    if (some) {
      exchange.getResponseHeaders().set("Content-Range", "bytes " + from + "-" + last + "/" + size);
    }
    exchange.sendResponseHeaders(some ? 206 : 200, length == 0 ? -1 : length);
    if (length > 0) {
      copy(file, from, length, exchange);
    }
  }

  private static void copy(Path file, long from, long length, HttpExchange exchange)
      throws IOException {
    try (InputStream in = Files.newInputStream(file);
        OutputStream out = exchange.getResponseBody()) {
      in.skipNBytes(from);
      byte[] some = new byte[1 << 16];
      long left = length;
      while (left > 0) {
        int read = in.read(some, 0, (int) Math.min(some.length, left));
        if (read < 0) {
          return;
        }
        out.write(some, 0, read);
        left -= read;
      }
    }
  }
}
