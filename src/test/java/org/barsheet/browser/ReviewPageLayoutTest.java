package org.barsheet.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;

/** Everything on the page can be reached and read, on a phone, a tablet and a laptop. */
class ReviewPageLayoutTest {

  private static final String BOX =
      "const box = (node) => node.getBoundingClientRect();"
          + "const crosses = (a, b) => a.left < b.right - 1 && b.left < a.right - 1"
          + " && a.top < b.bottom - 1 && b.top < a.bottom - 1;";

  private final DemoPage demo = DemoPage.open();
  private final Browser browser = demo.browser();

  private void screen(int width, int height) {
    browser.width(width, height);
    browser.open(demo.page());
  }

  @ParameterizedTest
  @CsvSource({"390, 844", "820, 1180", "1440, 900"})
  void the_score_turns_to_the_bar_that_sounds(int width, int height) {
    screen(width, height);
    for (int bar : new int[] {80, 9, 40, 57}) {
      browser.run("reviewPage.seek(reviewPage.film.bars[arguments[0]].start)", bar);
      browser.keys(bar % 2 == 0 ? "2" : "3");
      Object seen =
          browser.later(
              "const done = arguments[0]; const score = document.getElementById('score'); let tries = 0;"
                  + "const timer = setInterval(() => {"
                  + "  const at = score.querySelector('.bar[aria-current]').getBoundingClientRect();"
                  + "  const view = score.getBoundingClientRect();"
                  + "  const inside = at.top >= view.top && at.bottom <= view.bottom;"
                  + "  if (inside || ++tries > 60) { clearInterval(timer); done(inside); } }, 30);");
      assertThat(seen).as("bar " + bar + " at " + width).isEqualTo(true);
    }
  }

  /** The panel of the sound may be longer than the screen; then it scrolls inside. */
  @ParameterizedTest
  @CsvSource({"390, 844", "820, 1180", "1440, 900"})
  void every_switch_of_the_sound_can_be_reached(int width, int height) {
    screen(width, height);
    browser.press("do-sound");
    assertThat(
            browser.run(
                BOX
                    + "const at = box(document.getElementById('mixer'));"
                    + "return at.top >= 0 && at.bottom <= innerHeight && at.left >= 0 && at.right <= innerWidth"))
        .isEqualTo(true);
    browser.find(".parts tr:last-child button").click();
    assertThat(browser.find(".parts tr:last-child button").getDomAttribute("aria-pressed"))
        .isEqualTo("true");
    browser.escape();
    assertThat(browser.find("#mixer").isDisplayed()).isFalse();
  }

  @Test
  void names_on_the_whole_artwork_stand_clear_of_one_another() {
    browser.find("[data-value='map']").click();
    List<?> crossing =
        (List<?>)
            browser.run(
                BOX
                    + "const names = [...document.querySelectorAll('.opening-name')];"
                    + "return names.flatMap((one, i) => names.slice(i + 1)"
                    + ".filter((other) => crosses(box(one), box(other)))"
                    + ".map((other) => one.textContent + ' over ' + other.textContent))");
    assertThat(crossing).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"390, 844", "820, 1180", "1440, 900"})
  void no_button_lies_over_another_or_outside_the_page(int width, int height) {
    screen(width, height);
    for (String reader : List.of("1", "2", "3", "4", "f", "n")) {
      browser.keys(reader);
      List<?> faults =
          (List<?>)
              browser.run(
                  BOX
                      + "const all = [...document.querySelectorAll('.masthead button, #transport button,"
                      + " #modes button, #sound button, #reader button, #reader select')]"
                      + ".filter((node) => node.offsetParent && box(node).width > 0);"
                      + "const inside = (node) => box(node).left >= 0 && box(node).right <= innerWidth + 1;"
                      + "return all.filter((node) => !inside(node)).map((node) => 'outside: ' + node.textContent)"
                      + ".concat(all.flatMap((one, i) => all.slice(i + 1)"
                      + "  .filter((other) => one.parentNode === other.parentNode && crosses(box(one), box(other))"
                      + "    && !one.closest('.choice'))"
                      + "  .map((other) => one.textContent + ' over ' + other.textContent)));");
      assertThat(faults).as("view " + reader + " at " + width).isEmpty();
      browser.run("document.activeElement.blur()");
    }
  }

  /** From the top with Tab alone: readers, frame, sound, playing, reader's part, the bar. */
  @Test
  void every_part_is_reached_with_the_tab_key() {
    List<String> way = new ArrayList<>();
    while (way.size() < 90 && !way.contains("bar")) {
      browser.keysToFocus(Keys.TAB);
      String at =
          "const node = document.activeElement;"
              + "return node.id || node.dataset.value || node.classList[0] || node.tagName;";
      way.add(browser.run(at).toString());
    }
    assertThat(way)
        .containsSubsequence(
            "director",
            "camera",
            "do-sound",
            "do-play",
            "do-loop",
            "do-help",
            "tab-own",
            "reader-body",
            "link",
            "earlier-file",
            "do-print",
            "bar");
  }

  @Test
  void the_space_bar_plays_after_a_click_and_presses_what_the_tab_key_reached() {
    browser.find("[data-bar='9']").click();
    browser.keysToFocus(Keys.SPACE);
    assertThat(browser.text("#do-play")).isEqualTo("Pause");
    browser.press("do-bar-on");
    browser.keysToFocus(Keys.SPACE);
    assertThat(browser.text("#do-play")).isEqualTo("Play");
    long stood = browser.number("reviewPage.clock.frame");
    browser.run("document.getElementById('do-frame-on').focus()");
    browser.keysToFocus(Keys.SPACE);
    assertThat(browser.number("reviewPage.clock.frame")).isEqualTo(stood + 1);
  }

  @Test
  void a_button_clicked_while_a_note_is_typed_takes_the_keys_from_it() {
    browser.keys("n");
    browser.keysToFocus("Too early");
    browser.press("do-frame-on");
    browser.keysToFocus(Keys.ARROW_RIGHT);
    assertThat(browser.number("reviewPage.clock.frame")).isEqualTo(2);
    assertThat(browser.run("return document.getElementById('note-text').value"))
        .isEqualTo("Too early");
  }

  @Test
  void a_list_that_has_the_focus_is_scrolled_with_the_arrow_keys() {
    browser.keys("f");
    browser.run("document.getElementById('reader-body').focus()");
    browser.keysToFocus(Keys.PAGE_DOWN);
    assertThat(browser.number("reviewPage.clock.frame")).isZero();
    browser.keysToFocus(Keys.ARROW_RIGHT);
    assertThat(browser.number("reviewPage.clock.frame")).isEqualTo(1);
  }

  /** From the first system to the fifth: near enough for the score to glide there. */
  @Test
  void the_score_does_not_glide_for_those_who_want_less_motion() {
    String turned =
        "const score = document.getElementById('score'); score.scrollTop = 0;"
            + "reviewPage.seek(reviewPage.film.bars[arguments[0]].start); return score.scrollTop > 0";
    assertThat(browser.run(turned, 16)).isEqualTo(false);
    browser.reducedMotion(true);
    assertThat(browser.run(turned, 18)).isEqualTo(true);
    browser.reducedMotion(false);
  }
}
