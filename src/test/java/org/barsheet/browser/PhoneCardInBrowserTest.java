package org.barsheet.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.barsheet.shooting.WorkDay;
import org.barsheet.ticks.TakenPhotograph;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** The card for the phone beside the camera, on a screen of 390 × 844, opened from a file. */
class PhoneCardInBrowserTest {

  private final DemoPage demo = DemoPage.made();
  private final Browser browser = demo.browser();
  private final WorkDay day = demo.film().shooting().days().get(1);
  private final Path card = demo.page().resolveSibling("cards/phone-day-2.html");

  @BeforeEach
  void a_new_phone() {
    browser.width(390, 844);
    browser.open(card);
    browser.run("localStorage.clear()");
    browser.open(card);
  }

  private String shown() {
    return browser.text("#number");
  }

  @Test
  void one_button_or_one_key_goes_through_the_day_and_the_state_is_kept() {
    assertThat(shown()).isEqualTo("000");
    assertThat(browser.text("#title")).startsWith("customs-lamp");
    browser.press("taken");
    browser.keys(Keys.ENTER);
    browser.keys(" ");
    assertThat(shown()).isEqualTo("003");
    assertThat(browser.text("#count")).isEqualTo("3 of " + day.taken().size() + " today");
    browser.keys("a");
    assertThat(browser.text("#of")).contains("take again");
    browser.open(card);
    assertThat(shown()).as("what has to be taken again is next").isEqualTo("003");
    assertThat(browser.text("#of")).contains("take again");
    browser.press("back");
    assertThat(browser.text("#of")).contains("taken");
    assertThat(browser.complaints()).isEmpty();
    assertThat(browser.requests()).allMatch(address -> address.startsWith("file:"));
  }

  @Test
  void the_flap_is_drawn_in_the_colors_of_the_light() {
    String edge = "return document.querySelector('#flap line:last-child').getAttribute('stroke')";
    Object dark = browser.run(edge);
    browser.press("light");
    assertThat(browser.run(edge)).isNotEqualTo(dark);
    browser.press("light");
    assertThat(browser.run(edge)).isEqualTo(dark);
  }

  @Test
  void what_it_saves_is_read_by_make_and_check() throws IOException {
    browser.press("taken");
    browser.press("taken");
    browser.press("back");
    browser.press("again");
    browser.press("note");
    browser.find("#note-text").sendKeys("a <b>hair</b> \"in\" frame");
    browser.press("note-keep");
    assertThat(browser.text("#written")).isEqualTo("note: a <b>hair</b> \"in\" frame");
    browser.press("save");
    Path saved = demo.page().resolveSibling("lamplighters-quay-taken.json");
    waitFor(saved);
    try {
      JsonObject file = JsonParser.parseString(Files.readString(saved)).getAsJsonObject();
      JsonArray taken = file.getAsJsonArray("taken");
      assertThat(taken).hasSize(2);
      assertThat(taken.get(1).getAsJsonObject().get("at").getAsString())
          .matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d");
      FilmSheet film =
          Production.film(
              Path.of("scores", "lamplighters-quay.yaml"),
              demo.page().resolveSibling(""),
              Progress.SILENT);
      assertThat(film.ticks().words()).startsWith("1 of ").endsWith(", 1 to take again");
      List<TakenPhotograph> said =
          film.ticks().photographs().stream().filter(one -> one.mark().isPresent()).toList();
      assertThat(said)
          .extracting(TakenPhotograph::name)
          .containsExactly("customs-lamp 000", "customs-lamp 001");
      assertThat(said.get(1).notes()).containsExactly("a <b>hair</b> \"in\" frame");
    } finally {
      Files.delete(saved);
    }
  }

  private static void waitFor(Path file) {
    for (int tries = 0; tries < 100 && !Files.isRegularFile(file); tries++) {
      try {
        Thread.sleep(50);
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
      }
    }
    assertThat(file).isRegularFile();
  }

  /** The buttons stand where they stood, and nothing has to be scrolled to. */
  @Test
  void every_photograph_of_the_day_fits_on_the_screen_and_nothing_on_it_is_white() {
    long items =
        browser.number("JSON.parse(document.getElementById('day').textContent).items.length");
    assertThat(items).isGreaterThan(day.taken().size());
    long top = browser.number("document.getElementById('taken').getBoundingClientRect().top");
    List<?> tooLarge =
        (List<?>)
            browser.run(
                "const found = []; const m = document.getElementById('middle');"
                    + "for (let item = 0; item < arguments[0]; item++) {"
                    + "  const top = document.getElementById('taken').getBoundingClientRect().top;"
                    + "  if (top !== arguments[1] || m.scrollHeight > m.clientHeight"
                    + "      || document.documentElement.scrollWidth > 390"
                    + "      || document.documentElement.scrollHeight > 844) {"
                    + "    found.push(document.getElementById('number').textContent);"
                    + "  }"
                    + "  document.dispatchEvent(new KeyboardEvent('keydown', {key: 'ArrowRight'}));"
                    + "} return found;",
                items,
                top);
    assertThat(tooLarge).isEmpty();
    assertThat(browser.text("#title")).isEqualTo("Everything of today is taken.");
    assertThat(browser.run("return getComputedStyle(document.body).backgroundColor"))
        .isEqualTo("rgb(20, 23, 26)");
    assertThat(browser.number("document.getElementById('taken').offsetHeight"))
        .isGreaterThanOrEqualTo(84);
  }
}
