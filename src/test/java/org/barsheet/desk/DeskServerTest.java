package org.barsheet.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The desk answers its own page on this machine and nobody else: what RFC 9110 (Host), RFC 6454
 * (Origin) and RFC 6265 (cookies) let a server know of who asks.
 */
class DeskServerTest {

  @TempDir static Path folder = Path.of("");
  private static OpenDesk desk = new OpenDesk(Path.of("none"));
  private static Path plan = Path.of("");

  @BeforeAll
  static void open() throws IOException {
    plan = OpenDesk.smallPlan(Files.createDirectory(folder.resolve("production")));
    Files.writeString(folder.resolve("secret.txt"), "outside");
    Files.writeString(plan.resolveSibling(".hidden"), "hidden");
    Files.writeString(plan.resolveSibling("notes.html"), "<p>0123456789");
    Files.createSymbolicLink(plan.resolveSibling("way-out.txt"), folder.resolve("secret.txt"));
    desk = new OpenDesk(plan);
  }

  @AfterAll
  static void close() {
    desk.close();
  }

  @Test
  void the_token_is_exchanged_for_a_cookie_that_scripts_cannot_read() throws Exception {
    HttpResponse<String> answer = desk.send(HttpRequest.newBuilder(URI.create(desk.address())));
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(answer.headers().firstValue("Location")).hasValue("/");
    assertThat(answer.headers().firstValue("Set-Cookie").orElseThrow())
        .startsWith("barsheet-desk-" + desk.port() + "=")
        .contains("HttpOnly")
        .contains("SameSite=Strict");
    assertThat(desk.cookie()).doesNotContain(desk.address().replaceAll(".*=", ""));
    HttpResponse<String> page = desk.get("/");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body()).contains("default-src 'none'", "connect-src 'self'", "id=\"film\"");
    assertThat(page.headers().firstValue("Access-Control-Allow-Origin")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/?token=0000", "/plan.yaml", "/.desk/state", "/.desk/live"})
  void nobody_is_answered_without_token_or_cookie(String path) throws Exception {
    HttpResponse<String> answer =
        desk.send(HttpRequest.newBuilder(URI.create(desk.origin() + path)));
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.body()).contains("Open the desk by the address");
  }

  @ParameterizedTest
  @CsvSource({
    "Origin, http://quay.example",
    "Origin, null",
    "Origin, http://127.0.0.1",
    "Sec-Fetch-Site, cross-site",
    "Sec-Fetch-Site, same-site"
  })
  void a_page_from_elsewhere_is_not_answered_though_it_sends_the_cookie(String name, String value)
      throws Exception {
    assertThat(desk.send(desk.asked("/.desk/state").header(name, value)).statusCode())
        .isEqualTo(403);
  }

  @Test
  void an_order_must_say_that_it_comes_from_the_desk() throws Exception {
    HttpRequest.Builder order =
        desk.asked("/.desk/do").POST(HttpRequest.BodyPublishers.ofString("{}"));
    assertThat(desk.send(order).statusCode()).isEqualTo(403);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"quay.example", "localhost:PORT", "127.0.0.1", "127.0.0.1:1", "[::1]:PORT"})
  void a_foreign_name_that_leads_here_is_not_answered(String host) throws Exception {
    String named = host.replace("PORT", String.valueOf(desk.port()));
    assertThat(raw("GET /.desk/state HTTP/1.1\r\nHost: " + named + "\r\nCookie: " + desk.cookie()))
        .startsWith("HTTP/1.1 403 ");
  }

  /** The first line of what is answered to a request written by hand. */
  private static String raw(String head) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), desk.port())) {
      socket.getOutputStream().write((head + "\r\nConnection: close\r\n\r\n").getBytes(UTF_8));
      return new String(socket.getInputStream().readAllBytes(), UTF_8)
          .lines()
          .findFirst()
          .orElse("");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../secret.txt",
        "/%2e%2e/secret.txt",
        "/..%2fsecret.txt",
        "/x/../../secret.txt",
        "//etc/passwd",
        "/%2Fetc/passwd",
        "/way-out.txt",
        "/.hidden",
        "/sub/.hidden",
        "/.desk/../../secret.txt",
        "/nothing%00.txt",
        "/"
      })
  void no_path_leaves_the_folder_of_the_plan(String path) throws Exception {
    String answer =
        raw(
            "GET "
                + path
                + " HTTP/1.1\r\nHost: 127.0.0.1:"
                + desk.port()
                + "\r\nCookie: "
                + desk.cookie());
    assertThat(answer).matches(path.equals("/") ? "HTTP/1.1 200 .*" : "HTTP/1.1 4.. .*");
  }

  @Test
  void a_file_of_the_production_is_shown_and_may_not_act_in_the_name_of_the_desk()
      throws Exception {
    HttpResponse<String> file = desk.get("/notes.html");
    assertThat(file.body()).isEqualTo("<p>0123456789");
    assertThat(file.headers().firstValue("Content-Security-Policy").orElseThrow())
        .startsWith("sandbox")
        .doesNotContain("same-origin");
    HttpResponse<String> part = desk.send(desk.asked("/notes.html").header("Range", "bytes=3-5"));
    assertThat(part.statusCode()).isEqualTo(206);
    assertThat(part.body()).isEqualTo("012");
    assertThat(desk.send(desk.asked("/notes.html").header("Range", "bytes=11-")).body())
        .isEqualTo("89");
  }

  @Test
  void ten_megabytes_are_refused() throws Exception {
    HttpResponse<String> answer = desk.post("/.desk/do", "x".repeat(10_000_000));
    assertThat(answer.statusCode()).isEqualTo(413);
    assertThat(desk.get("/.desk/state").statusCode()).isEqualTo(200);
  }

  @Test
  void two_hundred_requests_at_once_are_all_answered_while_a_slow_one_waits() throws Exception {
    try (Socket slow = new Socket(InetAddress.getLoopbackAddress(), desk.port())) {
      slow.getOutputStream().write("GET / HTTP/1.1\r\nHos".getBytes(UTF_8));
      String cookie = desk.cookie();
      List<CompletableFuture<HttpResponse<Void>>> answers = new ArrayList<>();
      for (int i = 0; i < 200; i++) {
        HttpRequest request =
            HttpRequest.newBuilder(URI.create(desk.origin() + "/plan.yaml"))
                .header("Cookie", cookie)
                .build();
        answers.add(desk.client().sendAsync(request, BodyHandlers.discarding()));
      }
      assertThat(answers).allMatch(answer -> answer.join().statusCode() == 200);
    }
  }

  @Test
  void a_second_desk_on_the_same_plan_tells_where_the_first_is() throws Exception {
    try (OpenDesk second = new OpenDesk(plan.resolveSibling(".").resolve("plan.yaml"))) {
      assertThat(second.opened()).isEqualTo(new Desk.Opened(desk.address(), true));
    }
  }

  @Test
  void every_window_is_told_when_the_plan_is_saved_and_a_closed_desk_answers_no_more(
      @TempDir Path other) throws Exception {
    Path own = OpenDesk.smallPlan(other);
    String text = Files.readString(own);
    OpenDesk live = new OpenDesk(own);
    try (live) {
      HttpResponse<InputStream> events =
          live.client().send(live.asked("/.desk/live").build(), BodyHandlers.ofInputStream());
      assertThat(next(events.body())).isEqualTo("event: laid\ndata: 1\n\n");
      Files.writeString(own, text.replace("cue: bar 9", "cue: bar 10"));
      assertThat(next(events.body())).isEqualTo("event: laid\ndata: 2\n\n");
      assertThat(live.get("/.desk/state").body())
          .contains("\"moved\":[\"panel 2 is now on bar 10 ", "\"problems\":[]");
      Files.writeString(own, text.replace("cue: bar 9", "cue: bar 999"));
      assertThat(next(events.body())).isEqualTo("event: laid\ndata: 3\n\n");
      assertThat(live.get("/.desk/state").body())
          .contains("there is no bar 999", "\"film\":{\"name\"");
    }
    assertThatThrownBy(() -> live.send(HttpRequest.newBuilder(URI.create(live.address()))))
        .isInstanceOf(ConnectException.class);
    assertThat(own).hasContent(text.replace("cue: bar 9", "cue: bar 999"));
  }

  /** The next event, without the blank line's end. */
  private static String next(InputStream events) throws IOException {
    StringBuilder text = new StringBuilder();
    while (text.indexOf("\n\n") < 0) {
      int read = events.read();
      if (read < 0) {
        throw new IOException("the desk hung up");
      }
      text.append((char) read);
    }
    return text.toString();
  }
}
