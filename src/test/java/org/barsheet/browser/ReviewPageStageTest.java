package org.barsheet.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.barsheet.artwork.Framing;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Shot;
import org.junit.jupiter.api.Test;

/** What the camera sees: the panel's drawing, and openings over it where they move. */
class ReviewPageStageTest {

  private final DemoPage demo = DemoPage.open();
  private final Browser browser = demo.browser();
  private final FilmSheet film = demo.film();

  /** Names of the openings painted over the drawing in the middle of a panel's shot. */
  private List<String> painted(String panel) {
    Shot shot = shot(panel);
    browser.run(
        "reviewPage.seek(arguments[0])", shot.frames().start() + shot.frames().length() / 2);
    List<?> names =
        (List<?>)
            browser.run(
                "return [...document.querySelectorAll('[data-opening]')]"
                    + ".filter((group) => getComputedStyle(group.querySelector('.flap')).display !== 'none')"
                    + ".map((group) => group.querySelector('.opening-name').textContent)");
    return names.stream().map(Object::toString).toList();
  }

  private Shot shot(String panel) {
    return film.timing().shots().stream()
        .filter(each -> each.panel().name().equals(panel))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void over_a_panel_s_own_drawing_only_what_moves_is_painted() {
    assertThat(painted("4")).containsExactly("bakers-lamp");
    assertThat(painted("10")).containsExactly("loft-shutter-left", "loft-shutter-right");
    assertThat(painted("12")).isEmpty();
  }

  /** The camera moves over the drawing of panel 1, in which all is closed as in panel 2. */
  @Test
  void where_the_camera_moves_what_the_whole_drawing_shows_is_left_as_drawn() {
    assertThat(Framing.of(film.timing(), shot("2")).orElseThrow().field().isMoving()).isTrue();
    assertThat(painted("2")).isEmpty();
  }

  /** In panel 7 two lamps are lit; the whole drawing nearest to it, of panel 12, shows six. */
  @Test
  void what_stands_otherwise_than_in_the_whole_drawing_is_painted() {
    assertThat(painted("7"))
        .containsExactly(
            "sailmakers-lamp",
            "customs-lamp",
            "loft-shutter-left",
            "loft-shutter-right",
            "hoist-door");
  }

  @Test
  void the_whole_artwork_shows_every_opening() {
    browser.find("[data-value='map']").click();
    assertThat(painted("12")).hasSize(film.plan().workshop().openings().size());
  }

  @Test
  void who_is_seen_in_an_opening_that_stands_still_is_named() {
    painted("15");
    assertThat(browser.text("[data-opening='7'] .who")).isEqualTo("horn");
  }
}
