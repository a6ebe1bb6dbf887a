package org.barsheet.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.barsheet.review.ReviewPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands in the page's file, without a browser. */
class ReviewPageTest {

  private static final Path DEMO = Path.of("scores", "lamplighters-quay.yaml");

  private static FilmSheet film;
  private static String page;

  @BeforeAll
  static void write_the_demo_page() throws IOException {
    film = Production.film(DEMO, Progress.SILENT);
    page = page(film);
  }

  private static String page(FilmSheet film) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReviewPage.write(film, "lamplighters-quay", Path.of("sheets"), out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String between(String text, String start, String end) {
    Matcher found =
        Pattern.compile(Pattern.quote(start) + "(.*?)" + Pattern.quote(end), Pattern.DOTALL)
            .matcher(text);
    assertThat(found.find()).isTrue();
    return found.group(1);
  }

  private static JsonObject data(String page) {
    String json = between(page, "<script type=\"application/json\" id=\"film\">", "</script>");
    return JsonParser.parseString(json).getAsJsonObject();
  }

  @Test
  void the_same_film_gives_the_same_bytes() throws IOException {
    assertThat(page(film)).isEqualTo(page);
  }

  /** Hashes as Content Security Policy Level 3 (W3C) defines them, computed here anew. */
  @Test
  void the_policy_admits_this_style_and_this_script_and_nothing_from_a_network() throws Exception {
    String policy = between(page, "http-equiv=\"Content-Security-Policy\" content=\"", "\"");
    assertThat(policy)
        .startsWith("default-src 'none'")
        .contains("script-src '" + hash(between(page, "<script>", "</script>")) + "'")
        .contains("style-src '" + hash(between(page, "<style>", "</style>")) + "'")
        .doesNotContain("unsafe")
        .doesNotContain("http");
    assertThat(page).doesNotContain("https://").doesNotContain("@import");
  }

  private static String hash(String inline) throws Exception {
    byte[] bytes = inline.getBytes(StandardCharsets.UTF_8);
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
    return "sha256-" + Base64.getEncoder().encodeToString(digest);
  }

  @Test
  void a_hostile_title_stays_text(@TempDir Path folder) throws IOException {
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), folder.resolve("lamplighters-quay.mid"));
    String title = "</title></script><script>alert(1)</script> {{data}} \\\" javascript:x";
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan,
        "title: '"
            + title
            + "'\nscore: lamplighters-quay.mid\nfilm: {frame-rate: 24}\n"
            + "panels:\n  - {panel: '<b>', action: '</script><img src=x onerror=alert(1)>'}\n");
    String hostile = page(Production.film(plan, Progress.SILENT));
    assertThat(hostile).doesNotContain("<script>alert").doesNotContain("<img src=x");
    assertThat(hostile.split("</script>", -1)).hasSize(3);
    assertThat(data(hostile).get("title").getAsString()).isEqualTo(title);
  }

  @Test
  void cuts_of_an_earlier_run_stand_in_the_page_only_where_one_moved() throws IOException {
    assertThat(data(page(film.since(film.laidDown()))).has("earlier")).isFalse();
    Path other = Path.of("target", "earlier-cuts.yaml").toAbsolutePath();
    String plan = Files.readString(DEMO).replace("cue: bar 35,", "cue: bar 36,");
    Path scores = DEMO.toAbsolutePath().getParent();
    Files.writeString(
        other, plan.replace("lamplighters-quay.mid", scores + "/lamplighters-quay.mid"));
    FilmSheet before = Production.film(other, Progress.SILENT);
    JsonArray earlier = data(page(film.since(before.laidDown()))).getAsJsonArray("earlier");
    assertThat(earlier).hasSize(film.timing().shots().size());
    for (JsonElement each : earlier) {
      JsonObject cut = each.getAsJsonObject();
      assertThat(before.timing().shots())
          .filteredOn(shot -> shot.panel().name().equals(cut.get("panel").getAsString()))
          .singleElement()
          .satisfies(
              shot -> assertThat(shot.frames().start()).isEqualTo(cut.get("start").getAsLong()));
    }
  }

  @Test
  void a_drawing_that_cannot_be_shown_is_named(@TempDir Path folder) throws IOException {
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), folder.resolve("quay.mid"));
    byte[] large = new byte[8_000_000];
    byte[] start = "RIFF\0\0\0\0WEBP".getBytes(StandardCharsets.ISO_8859_1);
    System.arraycopy(start, 0, large, 0, start.length);
    Files.write(folder.resolve("fog.webp"), large);
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan,
        """
        title: Quay
        score: quay.mid
        film: {frame-rate: 24}
        panels: [{panel: 1, action: Fog, drawing: fog.webp}]
        """);
    JsonObject shot =
        data(page(Production.film(plan, Progress.SILENT)))
            .getAsJsonArray("shots")
            .get(0)
            .getAsJsonObject();
    assertThat(shot.has("drawing")).isFalse();
    assertThat(shot.get("leftOut").getAsString())
        .startsWith("fog.webp is too large or can't be shown");
  }

  @Test
  void a_drawing_stands_in_the_page_as_it_is() throws IOException {
    String first = data(page).getAsJsonArray("drawings").get(0).getAsString();
    assertThat(first).startsWith("data:image/png;base64,");
    byte[] inside = Base64.getDecoder().decode(first.substring(first.indexOf(',') + 1));
    assertThat(inside).isEqualTo(Files.readAllBytes(Path.of("scores", "panels", "01.png")));
  }
}
