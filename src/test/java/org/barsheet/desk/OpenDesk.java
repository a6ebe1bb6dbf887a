package org.barsheet.desk;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.barsheet.production.Watcher;

/** A desk that is open while a test runs, and what a browser would ask it. */
public final class OpenDesk implements AutoCloseable {

  /** Looks again as fast as it can, until it is closed. */
  private static final class UntilClosed implements Watcher.Pause {
    private final CountDownLatch closed = new CountDownLatch(1);

    @Override
    public boolean thenLookAgain() {
      try {
        return !closed.await(20, TimeUnit.MILLISECONDS);
      } catch (InterruptedException ended) {
        return false;
      }
    }
  }

  private final UntilClosed pause = new UntilClosed();
  private final CompletableFuture<Desk.Opened> opened = new CompletableFuture<>();
  private final Thread running;
  private final List<Throwable> faults = Collections.synchronizedList(new ArrayList<>());
  private final HttpClient client = HttpClient.newHttpClient();

  /** Opens a plan. */
  public OpenDesk(Path plan) {
    running = new Thread(() -> run(plan), "desk");
    running.start();
  }

  private void run(Path plan) {
    try {
      Desk.run(plan, pause, opened::complete, faults::add);
    } catch (RuntimeException wrong) {
      opened.completeExceptionally(wrong);
    }
  }

  /** A plan of two panels beside the demo's score. */
  public static Path smallPlan(Path folder) throws IOException {
    Files.copy(Path.of("scores/lamplighters-quay.mid"), folder.resolve("quay.mid"));
    return Files.writeString(
        folder.resolve("plan.yaml"),
        """
        title: Quay
        score: quay.mid # the music
        film: {frame-rate: 24}
        motifs:
          glimmer: {heard-at: {place: bar 9, length: 5 beats, part: Celesta}}
        panels:
          - {panel: 1, action: Fog} # first
          - {panel: 2, cue: bar 9}
          - {panel: 3, cue: glimmer near bar 19}
        """);
  }

  /** What went wrong inside so far. */
  List<Throwable> faults() {
    return faults;
  }

  public Desk.Opened opened() {
    return opened.orTimeout(30, TimeUnit.SECONDS).join();
  }

  /** The address with the token. */
  public String address() {
    return opened().address();
  }

  String origin() {
    return address().substring(0, address().indexOf("/?"));
  }

  int port() {
    return URI.create(address()).getPort();
  }

  /** The cookie that a browser gets for the token. */
  String cookie() throws IOException, InterruptedException {
    HttpResponse<String> answer = send(HttpRequest.newBuilder(URI.create(address())));
    return Objects.requireNonNull(
        answer.headers().firstValue("Set-Cookie").orElseThrow().split(";", -1)[0]);
  }

  /** What a window asks for, and what it is told. */
  public String order(String word, String body) throws IOException, InterruptedException {
    return post("/.desk/" + word, body).body();
  }

  HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return send(asked(path));
  }

  HttpResponse<String> post(String path, String body) throws IOException, InterruptedException {
    return send(
        asked(path)
            .header("Origin", origin())
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(body)));
  }

  HttpRequest.Builder asked(String path) throws IOException, InterruptedException {
    return HttpRequest.newBuilder(URI.create(origin() + path)).header("Cookie", cookie());
  }

  HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
    return client.send(request.build(), BodyHandlers.ofString());
  }

  HttpClient client() {
    return client;
  }

  @Override
  public void close() {
    pause.closed.countDown();
    try {
      running.join(TimeUnit.SECONDS.toMillis(20));
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }
}
