package org.barsheet.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.barsheet.demo.drawing.Flap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The demo's plan, score and drawings speak of the same quay. */
class DemoProductionTest {

  private static final Path FOLDER = Path.of("scores");
  private static final Node PLAN = read(FOLDER.resolve("lamplighters-quay.yaml"));

  /** A part of the plan's YAML. */
  private record Node(Object value) {
    Node at(String key) {
      return new Node(Objects.requireNonNull(((Map<?, ?>) value).get(key), key));
    }

    boolean has(String key) {
      return ((Map<?, ?>) value).containsKey(key);
    }

    List<String> keys() {
      return ((Map<?, ?>) value).keySet().stream().map(String::valueOf).toList();
    }

    List<Node> items() {
      return ((List<?>) value).stream().map(Node::new).toList();
    }

    String text() {
      return String.valueOf(value);
    }

    double number() {
      return ((Number) value).doubleValue();
    }
  }

  private static Node read(Path file) {
    try {
      return new Node(
          new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Node> panels() {
    return PLAN.at("panels").items();
  }

  private static List<Node> inPanels(String key) {
    return panels().stream()
        .filter(panel -> panel.has(key))
        .flatMap(panel -> panel.at(key).items().stream())
        .toList();
  }

  @Test
  void the_plan_is_the_only_yaml_beside_the_score() throws Exception {
    try (var files = Files.list(FOLDER)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .filteredOn(name -> name.matches(".*\\.ya?ml"))
          .containsExactly("lamplighters-quay.yaml");
    }
    assertThat(PLAN.at("score").text()).isEqualTo(WriteDemo.SCORE);
  }

  @Test
  void it_has_twenty_six_panels_four_models_twelve_openings_and_six_performers() {
    assertThat(panels()).hasSize(26);
    assertThat(PLAN.at("artwork").at("models").keys()).hasSize(4);
    assertThat(PLAN.at("openings").keys()).hasSize(12);
    assertThat(PLAN.at("performers").keys()).hasSize(6);
  }

  @Test
  void every_panel_has_its_drawing() {
    for (int number = 1; number <= 26; number++) {
      Node panel = panels().get(number - 1);
      assertThat(panel.at("panel").text()).isEqualTo(Integer.toString(number));
      String photograph = String.format(Locale.ROOT, "panels/%02d.png", number);
      assertThat(panel.at("drawing").text()).isEqualTo(photograph);
      assertThat(FOLDER.resolve(photograph)).isRegularFile();
    }
  }

  @ParameterizedTest
  @EnumSource(Flap.class)
  void an_opening_is_drawn_where_the_plan_has_it(Flap flap) {
    String name = flap.name().toLowerCase(Locale.ROOT).replace('_', '-');
    Node opening = PLAN.at("openings").at(name);
    assertThat(flap.rectangle())
        .containsExactly(
            opening.at("left").number(),
            opening.at("top").number(),
            opening.at("width").number(),
            opening.at("height").number());
    assertThat(PLAN.at("artwork").at("models").keys()).contains(opening.at("model").text());
  }

  @Test
  void every_opening_opens_in_some_panel() {
    Set<String> revealed = new TreeSet<>();
    inPanels("reveals").forEach(reveal -> revealed.add(reveal.at("opening").text()));
    assertThat(revealed).containsExactlyInAnyOrderElementsOf(PLAN.at("openings").keys());
  }

  @Test
  void everybody_who_appears_is_a_performer_who_plays_a_part_of_the_score() {
    Node performers = PLAN.at("performers");
    assertThat(inPanels("appears"))
        .allSatisfy(
            appears -> {
              assertThat(performers.keys()).contains(appears.at("performer").text());
              assertThat(PLAN.at("openings").keys()).contains(appears.at("opening").text());
            });
    List<String> parts = Arrays.stream(Player.values()).map(player -> player.title).toList();
    for (String name : performers.keys()) {
      assertThat(parts).contains(performers.at(name).at("part").text());
    }
  }

  @Test
  void every_field_lies_within_the_artwork() {
    for (Node panel : panels()) {
      Node field = panel.at("field");
      if (field.value() instanceof Map && field.has("from")) {
        assertInside(field.at("from"));
        assertInside(field.at("to"));
      } else {
        assertInside(field);
      }
    }
  }

  private static void assertInside(Node field) {
    if (field.value() instanceof Map) {
      double width = field.at("width").number();
      assertThat(field.at("left").number() + width).isBetween(width, 24.0);
      assertThat(field.at("top").number() + width * 9 / 16).isBetween(width * 9 / 16, 13.5);
    }
  }

  @ParameterizedTest
  @EnumSource(Motif.class)
  void a_motif_is_heard_where_the_ledger_first_has_it(Motif motif) {
    Node heard = PLAN.at("motifs").at(motif.name().toLowerCase(Locale.ROOT)).at("heard-at");
    PlantedReturn first =
        LamplightersQuay.planted().stream()
            .filter(planted -> planted.motif() == motif)
            .findFirst()
            .orElseThrow();
    assertThat(heard.at("place").text()).isEqualTo("bar " + first.bar());
    assertThat(first.parts()).containsExactly(heard.at("part").text());
  }

  /** A later, better finder may find more returns; a place by number would then mean another. */
  @Test
  void no_return_is_quoted_by_its_number() {
    assertThat(panels())
        .noneMatch(
            panel -> panel.has("cue") && panel.at("cue").text().matches("(glimmer|tide) \\d+"));
  }
}
