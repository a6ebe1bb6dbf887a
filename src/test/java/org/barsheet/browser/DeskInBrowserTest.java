package org.barsheet.browser;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.desk.OpenDesk;
import org.barsheet.outside.AxeCore;
import org.barsheet.production.Production;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/**
 * A director who never opens a terminal makes a plan: with the mouse, and with the keyboard alone.
 */
class DeskInBrowserTest {

  @TempDir Path folder = Path.of("");
  private final Browser browser = DemoPage.made().browser();
  private Path plan = Path.of("");
  private OpenDesk desk = new OpenDesk(Path.of("none"));

  @BeforeEach
  void begin_from_a_bare_score() throws IOException {
    Path score = folder.resolve("quay.mid");
    Files.copy(Path.of("scores/lamplighters-quay.mid"), score);
    plan = folder.resolve("quay.yaml");
    Production.begin(score, plan, "The quay", FrameRate.parse("24"));
    desk = new OpenDesk(plan);
    browser.width(1440, 900);
    browser.visit(desk.address());
    eventually("document.getElementById('desk-file').textContent", "quay.yaml · saved");
  }

  @AfterEach
  void close() {
    browser.light("light");
    browser.visit("about:blank");
    desk.close();
  }

  /** Waits until an expression of the page is a text, or contains one. */
  private void eventually(String expression, String text) {
    Object found =
        browser.later(
            "const [text, done] = arguments; let tries = 0;"
                + "const timer = setInterval(() => { let found = '';"
                + "  try { found = String("
                + expression
                + "); } catch (notYet) { found = ''; }  if (found.includes(text) || ++tries > 300)"
                + " { clearInterval(timer); done(found); }}, 50);",
            text);
    assertThat(found.toString()).contains(text);
  }

  private String text() throws IOException {
    return Files.readString(plan, UTF_8);
  }

  private static final String OUTCOME = "document.getElementById('desk-news').textContent";

  private static final String MODE =
      "document.querySelector('#modes [aria-checked=true]').textContent";

  private List<Integer> numbers(String script) {
    return ((List<?>) browser.run(script))
        .stream().map(each -> ((Number) each).intValue()).toList();
  }

  @Test
  void a_production_is_made_with_the_mouse_from_a_bare_score() throws IOException {
    String before = text();
    List<Integer> way =
        numbers(
            "document.querySelector('[data-bar=\"9\"]').scrollIntoView({block: 'center'});const box"
                + " = (node) => node.getBoundingClientRect();const from ="
                + " box([...document.querySelectorAll('.panel:not(.goes-on)')].find((each) =>"
                + " each.dataset.shot === '1'));const to ="
                + " box(document.querySelector('[data-bar=\"11\"]'));return [from.left + 12,"
                + " from.top + 20, to.left + 2, to.top - 20].map(Math.round);");
    browser.drag(way.get(0), way.get(1), way.get(2), way.get(3));
    eventually(OUTCOME, "panel 2 is now on bar 11");
    assertThat(text()).isEqualTo(before.replaceFirst("cue: bar 9\\b", "cue: bar 11"));
    browser.press("do-undo");
    eventually(OUTCOME, "panel 2 is now on bar 9");
    assertThat(text()).as("undone to the byte").isEqualTo(before);

    List<Integer> notes =
        numbers(
            "document.querySelector('[data-bar=\"9\"]').scrollIntoView({block: 'center'});const box"
                + " = (node) => node.getBoundingClientRect();const [nine, ten] = ['9',"
                + " '10'].map((bar) => box(document.querySelector('[data-bar=\"' + bar +"
                + " '\"]')));return [nine.left + 1, nine.top + 14, ten.left + 60, nine.top +"
                + " 38].map(Math.round);");
    browser.drag(notes.get(0), notes.get(1), notes.get(2), notes.get(3));
    eventually("document.getElementById('naming').textContent", "notes of the");
    eventually("document.getElementById('naming').textContent", "returns");
    browser.run("document.getElementById('motif-name').value = ''");
    browser.keysToFocus("lamp");
    browser.press("do-keep");
    eventually("reviewPage.film.motifs.map(({ name }) => name)", "lamp");
    assertThat(text()).contains("  lamp:").contains("place: bar 9");

    browser.press("tab-artwork");
    eventually(MODE, "Whole artwork");
    browser.press("tab-panel");
    eventually(MODE, "Camera");

    browser.press("do-make");
    eventually("document.getElementById('desk-made').textContent", "√ Made");
    assertThat(folder.resolve("quay-sheets/quay.xlsx")).exists();
    assertThat(browser.find("#desk-made a").getDomAttribute("href")).startsWith("quay-sheets/");
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void the_keyboard_alone_does_the_same() throws IOException {
    String before = text();
    browser.keys(Keys.PAGE_DOWN);
    tabTo("panel-cue");
    browser.typeOver("bar 999");
    eventually("document.querySelector('.outcome').textContent", "there is no bar 999");
    browser.keysToFocus(Keys.ENTER);
    assertThat(text()).as("what cannot be is not written").isEqualTo(before);
    browser.typeOver("bar 12");
    browser.keysToFocus(Keys.ENTER);
    eventually(OUTCOME, "panel 2 is now on bar 12");
    assertThat(browser.run("return document.activeElement.id")).isEqualTo("panel-cue");
    tabTo("panel-do-lock");
    browser.keysToFocus(Keys.ENTER);
    eventually("document.querySelector('.panel-form h2').textContent", "locked");
    browser.keys(Keys.chord(Keys.CONTROL, "z"));
    eventually("document.getElementById('do-redo').disabled", "false");
    browser.keys(Keys.chord(Keys.CONTROL, "z"));
    eventually(OUTCOME, "panel 2 is now on bar 9");
    assertThat(text()).isEqualTo(before);
  }

  private void tabTo(String id) {
    for (int i = 0; i < 90 && !browser.run("return document.activeElement.id").equals(id); i++) {
      browser.keysToFocus(Keys.TAB);
    }
    assertThat(browser.run("return document.activeElement.id")).isEqualTo(id);
  }

  @Test
  void what_another_window_or_an_editor_changes_shows_without_a_reload() throws Exception {
    browser.run("window.mark = 'still here'; reviewPage.seek(100);");
    desk.order("do", "{\"edits\":[{\"put\":[\"panels\",1,\"cue\"],\"value\":\"bar 10\"}]}");
    eventually(OUTCOME, "panel 2 is now on bar 10");
    Files.writeString(plan, text().replaceFirst("cue: bar 10\\b", "cue: bar 12"), UTF_8);
    eventually(OUTCOME, "panel 2 is now on bar 12");
    Files.writeString(plan, text().replaceFirst("cue: bar 12\\b", "cue: bar 1234"), UTF_8);
    eventually(OUTCOME, "there is no bar 1234");
    assertThat(browser.run("return window.mark + reviewPage.clock.frame"))
        .isEqualTo("still here100");
  }

  /** Checked by axe-core, as the page is, in both lights. */
  @Test
  void nothing_hinders_people_with_disabilities() throws IOException {
    browser.run(AxeCore.script());
    for (String light : List.of("light", "dark")) {
      browser.light(light);
      for (String tab : List.of("panel", "motifs", "artwork", "findings")) {
        browser.press("tab-" + tab);
        assertThat(serious()).as(tab + " in the " + light).isEmpty();
      }
      browser.press("tab-motifs");
      browser.press("do-name");
      eventually("document.getElementById('naming').textContent", "return");
      assertThat(serious()).as("naming in the " + light).isEmpty();
      browser.escape();
    }
  }

  private List<?> serious() {
    return (List<?>)
        browser.later(
            "axe.run({exclude: ['.system:nth-child(n+3)']}, {resultTypes: ['violations']})"
                + ".then((found) => arguments[0](found.violations"
                + ".filter((v) => v.impact === 'serious' || v.impact === 'critical')"
                + ".map((v) => v.id + ' ' + v.nodes.map((n) => n.target.join(' ')).slice(0, 4))));");
  }
}
