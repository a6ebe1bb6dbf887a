package org.barsheet.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.barsheet.outside.AxeCore;
import org.barsheet.plan.Film;
import org.barsheet.production.Extras;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.barsheet.timing.Shot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people do with the page besides playing it, and that it harms nobody. */
class ReviewPageReadersTest {

  private final DemoPage demo = DemoPage.open();
  private final Browser browser = demo.browser();

  /**
   * Systems after the third are built like the first three and left out to save time; so are all of
   * them where a view leaves them as they were.
   */
  @ParameterizedTest
  @ValueSource(ints = {390, 1440})
  void nothing_hinders_people_with_disabilities(int width) throws IOException {
    browser.width(width, 900);
    browser.run(AxeCore.script());
    for (String reader : List.of("1", "2", "3", "4", "f", "n")) {
      browser.keys(reader);
      int systems = reader.equals("1") || reader.equals("4") ? 3 : 0;
      assertThat(serious(systems)).as("view " + reader + " at " + width).isEmpty();
      browser.run("document.activeElement.blur()");
    }
    browser.press("do-sound");
    for (String source : List.of("score", "recording", "silence")) {
      browser.find("#mixer [data-value='" + source + "']").click();
      assertThat(serious(0)).as("sound " + source + " at " + width).isEmpty();
    }
    browser.keys("?");
    assertThat(serious(0)).as("keys at " + width).isEmpty();
  }

  private List<?> serious(int systems) {
    return (List<?>)
        browser.later(
            "axe.run({exclude: ['.system:nth-child(n+"
                + (systems + 1)
                + ")']}, {resultTypes: ['violations']}).then((found) => arguments[0]("
                + "found.violations.filter((v) => v.impact === 'serious' || v.impact === 'critical')"
                + ".map((v) => v.id + ' ' + v.nodes.map((n) => n.target.join(' ')).slice(0, 3))));");
  }

  @Test
  void it_asks_nothing_of_any_network_and_keeps_its_policy() {
    browser.requests();
    browser.complaints();
    browser.open(demo.page());
    browser.press("do-play");
    browser.keys("2");
    browser.press("do-play");
    assertThat(browser.requests()).containsExactly(demo.page().toUri().toString());
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void the_page_is_as_wide_as_the_screen() {
    browser.width(360, 900);
    browser.open(demo.page());
    for (int width : List.of(360, 390, 820, 1180, 1440)) {
      browser.width(width, 900);
      for (String reader : List.of("1", "2", "3", "4")) {
        browser.keys(reader);
        String wider =
            "document.documentElement.scrollWidth - document.documentElement.clientWidth";
        assertThat(browser.number(wider)).as("view " + reader + " at " + width).isZero();
      }
    }
  }

  @Test
  void notes_are_kept_in_the_browser() {
    browser.run("reviewPage.seek(733)");
    browser.keys("n");
    browser.find("#note-text").sendKeys("Too early? </script><b>");
    browser.press("add-note");
    browser.open(demo.page());
    browser.keys("n");
    assertThat(browser.text(".note p")).isEqualTo("Too early? </script><b>");
    browser.find(".note .small").click();
    assertThat(browser.text("#tab-notes")).isEqualTo("Notes 0");
  }

  @Test
  void notes_saved_from_the_page_come_back_into_the_film(@TempDir Path other) throws Exception {
    Path plan = other.resolve("lamplighters-quay.yaml");
    Files.copy(Path.of("scores", "lamplighters-quay.yaml"), plan);
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), other.resolve("lamplighters-quay.mid"));
    browser.run("reviewPage.seek(733)");
    browser.keys("n");
    browser.find("#note-text").sendKeys("=later, \"please\"");
    browser.press("add-note");
    Path downloads = demo.page().resolveSibling("lamplighters-quay-notes.csv");
    for (String ending : List.of("csv", "json")) {
      browser.press("save-" + ending);
      Path saved = downloads.resolveSibling("lamplighters-quay-notes." + ending);
      for (int tries = 0; !Files.exists(saved) && tries < 100; tries++) {
        Thread.sleep(50);
      }
      Files.move(saved, other.resolve(saved.getFileName()));
    }
    browser.find(".note .small").click();
    assertThat(Production.film(plan, Progress.SILENT).findings())
        .filteredOn(finding -> finding.sentence().equals("viewer's note: =later, \"please\""))
        .singleElement()
        .satisfies(finding -> assertThat(finding.frame()).hasValue(733))
        .satisfies(finding -> assertThat(finding.panel()).isEqualTo("4"));
  }

  @Test
  void a_note_keeps_the_panel_it_was_written_on(@TempDir Path other) throws Exception {
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), other.resolve("quay.mid"));
    Path plan = other.resolve("plan.yaml");
    String words = "title: Noted\nscore: quay.mid\nfilm: {frame-rate: 24}\n";
    Files.writeString(plan, words + "panels: [{panel: 1, action: Fog}]\n");
    Production.make(plan, other.resolve("out"), Extras.NONE, Progress.SILENT);
    browser.open(other.resolve("out/plan.html"));
    browser.keys("n");
    browser.find("#note-text").sendKeys("Longer");
    browser.press("add-note");
    Files.writeString(plan, words + "panels: [{panel: 9, action: Rain}]\n");
    Production.make(plan, other.resolve("out"), Extras.NONE, Progress.SILENT);
    browser.open(other.resolve("out/plan.html"));
    browser.keys("n");
    assertThat(browser.text(".note")).contains("panel 1, now panel 9");
    browser.press("save-json");
    Path saved = demo.page().resolveSibling("plan-notes.json");
    for (int tries = 0; !Files.exists(saved) && tries < 100; tries++) {
      Thread.sleep(50);
    }
    Files.move(saved, other.resolve(saved.getFileName()));
    browser.find(".note .small").click();
    assertThat(Production.film(plan, Progress.SILENT).findings())
        .filteredOn(finding -> finding.sentence().equals("viewer's note: Longer"))
        .singleElement()
        .satisfies(
            finding ->
                assertThat(finding.remedy())
                    .isEqualTo("it was written on panel 1; panel 9 is there now"));
  }

  /** The first time the celesta is seen, in panel 4. */
  private long seenFrom() {
    return demo.film().appearances().get(0).frames().start();
  }

  @Test
  void a_player_is_told_when_to_be_ready_and_is_counted_in() {
    browser.keys("4");
    assertThat(browser.text(".board")).contains("seen in").contains("at bar 9 beat");
    browser.run("reviewPage.seek(arguments[0])", seenFrom() - 24);
    assertThat(browser.text(".board")).contains("ready and still").contains("1.00 s, 2 beats");
    assertThat(browser.text(".board .numeral")).isEqualTo("2");
    browser.run("reviewPage.seek(arguments[0])", seenFrom());
    assertThat(browser.text(".board")).startsWith("seen");
    browser.find("#reader-body .small").click();
    assertThat(browser.text("#do-play")).isEqualTo("Pause");
    assertThat(browser.text("#sound-summary")).endsWith("click on");
    assertThat(browser.number("reviewPage.clock.frame"))
        .isBetween(demo.film().timing().bars().get(7).startFrame(), seenFrom());
  }

  @Test
  void a_player_finds_their_bars_in_the_score() {
    String marked = "return [...document.querySelectorAll('.appears')].map((n) => n.textContent)";
    assertThat((List<?>) browser.run(marked)).isEmpty();
    browser.keys("4");
    assertThat((List<?>) browser.run(marked))
        .extracting(Object::toString)
        .contains("seen in bakers-lamp")
        .allMatch(words -> words.equals("seen in bakers-lamp"));
    browser.run(
        "const picker = document.getElementById('performer'); picker.value = 2;"
            + "picker.dispatchEvent(new Event('change'))");
    assertThat((List<?>) browser.run(marked))
        .extracting(Object::toString)
        .contains("seen in sailmakers-lamp")
        .doesNotContain("seen in bakers-lamp");
    browser.run("document.activeElement.blur()");
    browser.keys("1");
    assertThat((List<?>) browser.run(marked)).isEmpty();
  }

  @Test
  void an_editor_is_told_in_and_out_of_the_shot_and_the_next_cue() {
    browser.keys("3");
    browser.run("reviewPage.seek(760)");
    Shot shot = demo.film().timing().shots().get(3);
    Film film = demo.film().plan().film();
    assertThat(browser.text("#reader-body"))
        .contains(film.timecode(shot.frames().start()) + " frame " + shot.frames().start())
        .contains(film.timecode(shot.frames().endExclusive()).toString())
        .contains("exclusive; " + shot.frames().length() + " frames")
        .contains("glimmer 1 in 8 frames (0.33 s)")
        .contains("celesta.mov, clip frame ");
  }

  @Test
  void a_stretch_that_may_flash_is_blurred_until_the_viewer_asks(@TempDir Path other)
      throws IOException {
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), other.resolve("quay.mid"));
    StringBuilder plan = new StringBuilder("title: Shutters\nscore: quay.mid\n");
    plan.append("film: {frame-rate: 24}\nopenings:\n");
    StringBuilder reveals = new StringBuilder();
    for (int i = 0; i < 4; i++) {
      plan.append(
          "  o"
              + i
              + ": {left: "
              + 4 * i
              + ", top: 1, width: 3, height: 3, hinge: left, to: 90 deg}\n");
      String beat = List.of("1", "1.25", "1.5", "1.75").get(i);
      reveals.append(
          "      - {opening: o"
              + i
              + ", photographs: 8, shown: on ones, lands-on: bar 10 beat "
              + beat
              + "}\n");
    }
    plan.append("panels:\n  - panel: 1\n    action: All at once\n    reveals:\n").append(reveals);
    Files.writeString(other.resolve("plan.yaml"), plan);
    Production.make(other.resolve("plan.yaml"), other.resolve("out"), Extras.NONE, Progress.SILENT);
    browser.open(other.resolve("out/plan.html"));
    assertThat(browser.find("#veil").isDisplayed()).isFalse();
    browser.find("[data-bar='10']").click();
    assertThat(browser.text("#veil")).contains("WCAG 2.3.1");
    assertThat(browser.run("return getComputedStyle(document.querySelector('#frame svg')).filter"))
        .asString()
        .startsWith("blur");
    browser.press("do-show");
    assertThat(browser.find("#veil").isDisplayed()).isFalse();
  }

  @Test
  void cuts_that_moved_since_an_earlier_make_are_marked(@TempDir Path other) throws IOException {
    JsonObject earlier = demo.timing().deepCopy();
    JsonArray shots = earlier.getAsJsonArray("shots");
    JsonObject fourth = shots.get(3).getAsJsonObject();
    long was = fourth.get("startFrame").getAsLong() - 24;
    fourth.addProperty("startFrame", was);
    shots.get(2).getAsJsonObject().addProperty("endFrameExclusive", was);
    Path file = other.resolve("timing.json");
    Files.writeString(file, earlier.toString());
    browser.find("#earlier-file").sendKeys(file.toString());
    browser.later(
        "const done = arguments[0]; const timer = setInterval(() => {"
            + "if (document.querySelector('.was')) { clearInterval(timer); done(0); } }, 20);");
    assertThat(browser.text(".comparison")).contains("2 panels changed").contains("24 f later");
    List<?> marked =
        (List<?>)
            browser.run(
                "return [...document.querySelectorAll('.was:not(.same)')].map((n) => n.textContent)");
    assertThat(marked).extracting(Object::toString).containsOnly("was 3", "was 4");
  }

  /** What cannot be compared is told to the viewer. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {"format":"barsheet-timing","shots":[]} | doesn't give the film's frame rate
          {"format":"barsheet-timing","film":{"frameRate":"24"},"shots":[{}]} | has no first frame or no end
          {"format":"barsheet-timing","film":{"frameRate":"25"},"shots":[]} | runs at 25 fps
          {} | not the timing.json of a film
          { | this is not JSON
          """)
  void a_damaged_earlier_make_is_told(String words, String told, @TempDir Path other)
      throws IOException {
    Path file = other.resolve("timing.json");
    Files.writeString(file, words);
    browser.find("#earlier-file").sendKeys(file.toString());
    Object said =
        browser.later(
            "const done = arguments[0]; const told = document.querySelector('.comparison [role=status]');"
                + "const timer = setInterval(() => { if (told.textContent) {"
                + " clearInterval(timer); done(told.textContent); } }, 20);");
    assertThat((String) said).contains(told);
  }

  @Test
  void it_prints_as_a_storyboard_of_six_panels_a_page() {
    browser.run("window.dispatchEvent(new Event('beforeprint'))");
    assertThat(browser.run("return document.querySelectorAll('#storyboard section').length"))
        .isEqualTo(5L);
    assertThat(browser.run("return document.querySelectorAll('#storyboard article img').length"))
        .isEqualTo(26L);
    browser.run("window.dispatchEvent(new Event('afterprint'))");
    assertThat(browser.run("return document.querySelectorAll('#storyboard *').length"))
        .isEqualTo(0L);
  }

  /** Each page is a dictionary of type Page (ISO 32000-1, 7.7.3.3). */
  @Test
  void six_panels_and_no_more_stand_on_a_printed_page() {
    String pdf = new String(browser.printed(), StandardCharsets.ISO_8859_1);
    long pages = Pattern.compile("/Type\\s*/Page\\b").matcher(pdf).results().count();
    assertThat(pages).isEqualTo(5);
  }

  @Test
  void hostile_words_stay_words(@TempDir Path other) throws IOException {
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), other.resolve("quay.mid"));
    String words = "</script><script>window.hacked = 1</script><img src=x onerror=window.hacked=1>";
    Path plan = other.resolve("plan.yaml");
    Files.writeString(
        plan,
        "title: '"
            + words
            + "'\nscore: quay.mid\nfilm: {frame-rate: 24}\nperformers:\n  \"<i>\\\"'\": {}\n"
            + "panels:\n  - {panel: 'javascript:hack()', action: \""
            + words
            + " \\\" ' & {{title}}\"}\n");
    Production.make(plan, other.resolve("out"), Extras.NONE, Progress.SILENT);
    browser.open(other.resolve("out/plan.html"));
    browser.press("do-bar-on");
    browser.keys("4");
    assertThat(browser.text("h1")).isEqualTo(words);
    assertThat(browser.text("#caption")).contains(words + " \" ' & {{title}}");
    assertThat(browser.run("return String(window.hacked)")).isEqualTo("undefined");
    assertThat(browser.run("return document.images.length + document.links.length")).isEqualTo(0L);
  }
}
