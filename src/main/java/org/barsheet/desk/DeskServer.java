package org.barsheet.desk;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import org.barsheet.input.Limit;

/**
 * The desk's server, for browsers on this machine. It answers requests that {@link Gate} lets in,
 * within bounds: a request that comes too slowly is dropped, one that is too large is refused.
 */
final class DeskServer implements AutoCloseable {

  /** Bytes of what a page may send at once. */
  static final int MOST_BYTES = 1 << 18;

  /** Bytes heard to the end before a page is told that they are too many. */
  private static final int MOST_HEARD = 1 << 25;

  private static final String DRAWING = "/.desk/drawing/";

  private static final int THREADS = 24;
  private static final int WAITING = 400;

  private final HttpServer server;
  private final ExecutorService threads = Executors.newFixedThreadPool(THREADS);
  private final Gate gate;
  private final Windows windows;
  private final LiveDesk desk;
  private final Making making;
  private final ProductionFiles files;
  private final Consumer<Throwable> faults;

  private DeskServer(
      HttpServer server,
      Windows windows,
      LiveDesk desk,
      Making making,
      ProductionFiles files,
      Consumer<Throwable> faults) {
    this.server = server;
    this.windows = windows;
    this.desk = desk;
    this.making = making;
    this.files = files;
    this.faults = faults;
    this.gate = new Gate(server.getAddress().getPort());
  }

  /**
   * Begins to answer on a free port.
   *
   * @param faults hears what went wrong inside; the browser is told as well
   * @throws IOException if there is none
   */
  static DeskServer start(
      Windows windows,
      LiveDesk desk,
      Making making,
      ProductionFiles files,
      Consumer<Throwable> faults)
      throws IOException {
    // Read once by the JDK's server: seconds for a request to come in, and for an answer to go out.
    System.setProperty("sun.net.httpserver.maxReqTime", "10");
    System.setProperty("sun.net.httpserver.maxRspTime", "600");
    System.setProperty("sun.net.httpserver.nodelay", "true");
    InetAddress here = InetAddress.getByAddress(new byte[] {127, 0, 0, 1});
    HttpServer server = HttpServer.create(new InetSocketAddress(here, 0), WAITING);
    DeskServer made = new DeskServer(server, windows, desk, making, files, faults);
    server.setExecutor(made.threads);
    server.createContext("/", made::answer);
    server.start();
    return made;
  }

  /** What a person opens in a browser. */
  String address() {
    return gate.address();
  }

  private void answer(HttpExchange exchange) throws IOException {
    try {
      Optional<Answer> refusal = refusal(exchange);
      if (refusal.isPresent()) {
        refusal.get().send(exchange);
        exchange.close();
      } else {
        answerKnown(exchange);
      }
    } catch (IOException gone) {
      exchange.close();
    } catch (RuntimeException | Error fault) {
      faults.accept(fault);
      try (exchange) {
        Answer.refusal(500, "Internal error. Your files are unchanged.").send(exchange);
      }
    }
  }

  private Optional<Answer> refusal(HttpExchange exchange) {
    Optional<String> foreign = gate.foreign(exchange);
    if (foreign.isPresent()) {
      return Optional.of(Answer.refusal(403, foreign.get()));
    }
    String path = exchange.getRequestURI().getPath();
    if (path.equals("/") && gate.bringsToken(exchange)) {
      exchange.getResponseHeaders().set("Set-Cookie", gate.cookie());
      exchange.getResponseHeaders().set("Location", "/");
      return Optional.of(Answer.refusal(303, "Go on to the desk."));
    }
    return gate.isKnown(exchange)
        ? Optional.empty()
        : Optional.of(Answer.refusal(403, "Open the desk by the address that barsheet printed."));
  }

  private void answerKnown(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().getPath();
    String method = exchange.getRequestMethod();
    if (method.equals("GET") && path.equals("/.desk/live")) {
      windows.join(exchange, desk.versionEvent());
    } else if (method.equals("GET") && !path.equals("/") && !path.startsWith("/.desk/")) {
      files.send(exchange);
      exchange.close();
    } else {
      answer(method, path, exchange).send(exchange);
      exchange.close();
    }
  }

  private Answer answer(String method, String path, HttpExchange exchange) throws IOException {
    if (method.equals("GET")) {
      return switch (path) {
        case "/" -> Answer.page(desk.page());
        case "/.desk/state" -> Answer.json(desk.state());
        default -> Answer.refusal(404, "There is no such file.");
      };
    }
    if (!method.equals("POST")) {
      return Answer.refusal(405, "The desk is read and told, nothing else.");
    }
    int most = path.startsWith(DRAWING) ? Limit.DRAWING.bytes() : MOST_BYTES;
    byte[] body = exchange.getRequestBody().readNBytes(most + 1);
    if (body.length > most) {
      hearOut(exchange.getRequestBody());
      return Answer.refusal(413, "That is too much at once.");
    }
    return path.startsWith(DRAWING)
        ? Answer.json(desk.drawing(path.substring(DRAWING.length()), body))
        : told(path, new String(body, StandardCharsets.UTF_8));
  }

  /** A page hears an answer only once all that it sends is taken. */
  private static void hearOut(InputStream body) throws IOException {
    byte[] some = new byte[1 << 16];
    long heard = 0;
    for (int read = 0; read >= 0 && heard < MOST_HEARD; heard += read) {
      read = body.read(some);
    }
  }

  private Answer told(String path, String body) {
    return switch (path) {
      case "/.desk/do" -> Answer.json(desk.edit(body, true));
      case "/.desk/try" -> Answer.json(desk.edit(body, false));
      case "/.desk/undo" -> Answer.json(desk.step(true));
      case "/.desk/redo" -> Answer.json(desk.step(false));
      case "/.desk/figures" -> Answer.json(desk.figures());
      case "/.desk/make" -> {
        making.begin();
        yield Answer.json("{}");
      }
      case "/.desk/stop" -> {
        making.stop();
        yield Answer.json("{}");
      }
      default -> Answer.refusal(404, "The desk knows no such order.");
    };
  }

  @Override
  public void close() {
    windows.close();
    server.stop(0);
    threads.shutdownNow();
  }
}
