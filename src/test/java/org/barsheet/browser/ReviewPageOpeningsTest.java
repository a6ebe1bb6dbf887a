package org.barsheet.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.production.Extras;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** A lamp that opens and closes again while one panel is seen, and one that has too little time. */
class ReviewPageOpeningsTest {

  private static final String PLAN =
      """
      title: Tide gate
      score: quay.mid
      film: {frame-rate: 24}
      artwork: {square: 1 in, squares: 16x9}
      openings:
        lamp: {left: 3, top: 2, width: 4, height: 5, hinge: left, to: 90 deg}
        door: {left: 9, top: 2, width: 4, height: 5, hinge: left, to: 90 deg}
      panels:
        - panel: 1
          action: The lamp opens and closes
          length: 9 bars
          reveals:
            - {opening: lamp, photographs: 12, shown: on twos, lands-on: bar 3}
            - {opening: lamp, moves: closes, photographs: 12, shown: on twos, lands-on: bar 7}
        - panel: 2
          action: One photograph
          cut: bar 10
          cue: bar 12
          reveals: [{opening: door, photographs: 1, shown: on twos}]
        - panel: 3
          action: The door closes and opens
          cut: bar 15
          cue: bar 17
          reveals:
            - {opening: door, moves: closes, photographs: 6, shown: on twos, lands-on: bar 17}
            - {opening: door, photographs: 6, shown: on twos, lands-on: bar 19}
        - {panel: 4, action: The door stands open, cue: bar 21}
      """;

  private final Browser browser = DemoPage.open().browser();
  private List<PlannedReveal> reveals = List.of();

  @BeforeEach
  void open_the_page(@TempDir Path other) throws IOException {
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), other.resolve("quay.mid"));
    Path plan = other.resolve("plan.yaml");
    Files.writeString(plan, PLAN);
    reveals =
        Production.make(plan, other.resolve("out"), Extras.NONE, Progress.SILENT).film().reveals();
    browser.open(other.resolve("out/plan.html"));
  }

  private String under(long frame) {
    browser.run("reviewPage.seek(arguments[0])", frame);
    return browser.text("#fact-under");
  }

  private boolean ajar(long frame) {
    browser.run("reviewPage.seek(arguments[0])", frame);
    return (Boolean)
        browser.run(
            "return document.querySelector('[data-opening=\"0\"]').classList.contains('ajar')");
  }

  @Test
  void it_is_closed_then_open_then_closed() {
    PlannedReveal opens = reveals.get(0);
    PlannedReveal closes = reveals.get(1);
    assertThat(under(0)).isEqualTo("lamp 000, 0.0°");
    assertThat(ajar(opens.firstGapFrame() - 1)).isFalse();
    assertThat(ajar(opens.firstGapFrame())).isTrue();
    assertThat(under(opens.landsFrame())).isEqualTo("lamp 012, 90°");
    assertThat(under(closes.firstGapFrame() - 1)).isEqualTo("lamp 012, 90°");
    assertThat(under(closes.firstGapFrame())).isEqualTo("lamp 011, 82.5°");
    assertThat(ajar(closes.landsFrame() - 1)).isTrue();
    assertThat(under(closes.landsFrame())).isEqualTo("lamp 000, 0.0°");
    assertThat(ajar(closes.landsFrame())).isFalse();
    assertThat(browser.text("#fact-lands")).endsWith("♦ now: lamp closed");
  }

  @Test
  void the_animator_sees_one_column_and_what_comes_next() {
    PlannedReveal opens = reveals.get(0);
    PlannedReveal closes = reveals.get(1);
    browser.keys("2");
    browser.run("reviewPage.seek(arguments[0])", opens.landsFrame());
    assertThat(browser.text("#column-head")).isEqualTo("frame time lamp");
    assertThat(browser.text("#column tr[aria-current]")).endsWith("lamp 012 ♦");
    long away = closes.firstGapFrame() - opens.landsFrame();
    assertThat(browser.text(".card")).contains("lamp 011, ").contains("in " + away + " f");
    assertThat(browser.text(".card:nth-of-type(2)")).contains("Begins").doesNotContain("Now");
    browser.run("reviewPage.seek(arguments[0])", closes.landsFrame());
    assertThat(browser.text("#column tr[aria-current]")).endsWith("lamp 000 ♦");
    assertThat(browser.text(".card")).contains("Ended").doesNotContain("Now");
    assertThat(browser.text(".card:nth-of-type(2)")).contains("no more photographs");
  }

  @Test
  void a_single_photograph_is_one_photograph() {
    browser.keys("2");
    browser.run("reviewPage.seek(arguments[0])", reveals.get(2).landsFrame());
    assertThat(browser.text(".card")).contains("1 photograph on twos");
  }

  @Test
  void what_closes_goes_less_far_from_photograph_to_photograph() {
    browser.keys("2");
    browser.run("reviewPage.seek(arguments[0])", reveals.get(1).firstGapFrame());
    String closing = browser.text(".card:nth-of-type(2)");
    assertThat(closing).contains("lamp 011, 82.5°, 7.5° less").doesNotContain("more");
    assertThat(closing).contains("lamp 010, 75.0°\n7.5° less").contains("Begins to close");
    assertThat(closing).doesNotContain("First gap");
    browser.run("reviewPage.seek(arguments[0])", reveals.get(0).firstGapFrame());
    String opening = browser.text(".card");
    assertThat(opening)
        .contains("lamp 001, 7.5°, 7.5° more")
        .contains("lamp 002, 15.0°\n7.5° more");
    assertThat(opening).contains("First gap").doesNotContain("less");
  }

  @Test
  void what_moves_in_a_shot_does_not_stand_open_throughout() {
    browser.run("reviewPage.seek(arguments[0])", reveals.get(3).landsFrame());
    assertThat(browser.text("#fact-open")).isEqualTo("nothing");
    browser.keys(Keys.PAGE_DOWN);
    assertThat(browser.text("#in-shot")).startsWith("panel 4");
    assertThat(browser.text("#fact-open")).isEqualTo("door");
  }

  @Test
  void the_animator_steps_from_photograph_to_photograph() {
    browser.keys("2");
    PlannedReveal opens = reveals.get(0);
    browser.run("reviewPage.seek(arguments[0])", opens.firstGapFrame());
    browser.press("do-photograph-on");
    assertThat(browser.text("#column tr[aria-current]")).endsWith("lamp 002");
    assertThat(browser.number("reviewPage.clock.frame")).isEqualTo(opens.firstGapFrame() + 2);
    browser.keys(",");
    assertThat(browser.number("reviewPage.clock.frame")).isEqualTo(opens.firstGapFrame());
    browser.find(".card .link").click();
    assertThat(browser.number("reviewPage.clock.frame")).isEqualTo(opens.firstGapFrame() + 2);
    browser.keys("1");
    assertThat(browser.find("#do-photograph-on").isDisplayed()).isFalse();
  }
}
