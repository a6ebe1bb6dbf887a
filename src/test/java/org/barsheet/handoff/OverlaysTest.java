package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;
import org.barsheet.shooting.Setup;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Overlays of the demo, measured in pixels of its camera: 6000 by 4000, 50 mm on a 36 mm sensor.
 */
class OverlaysTest {

  private static final FilmSheet DEMO = DemoFilm.sheet();
  private static final List<HandoffFile> FILES = Overlays.files(DEMO);

  private record Edge(double x1, double y1, double x2, double y2) {}

  private static Element root(String photograph) throws Exception {
    for (HandoffFile file : FILES) {
      if (file.path().equals("overlays/" + photograph + ".svg")) {
        return DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(bytes(file)))
            .getDocumentElement();
      }
    }
    throw new AssertionError("no overlay of " + photograph);
  }

  private static byte[] bytes(HandoffFile file) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    file.content().writeTo(out);
    return out.toByteArray();
  }

  private static List<Edge> edges(String photograph, String look) throws Exception {
    List<Edge> edges = new ArrayList<>();
    NodeList lines = root(photograph).getElementsByTagName("line");
    for (int i = 0; i < lines.getLength(); i++) {
      Element line = (Element) lines.item(i);
      if (line.getAttribute("class").equals(look)) {
        edges.add(
            new Edge(
                Double.parseDouble(line.getAttribute("x1")),
                Double.parseDouble(line.getAttribute("y1")),
                Double.parseDouble(line.getAttribute("x2")),
                Double.parseDouble(line.getAttribute("y2"))));
      }
    }
    return edges;
  }

  private static Setup setup(String movement) {
    return DEMO.shooting().setups().stream()
        .filter(setup -> setup.runs().stream().anyMatch(run -> run.name().equals(movement)))
        .findFirst()
        .orElseThrow();
  }

  private static double square(String model) {
    return 25.4
        * DEMO.plan().workshop().artwork().model(model).map(Artwork.Model::enlarged).orElseThrow();
  }

  @Test
  void every_photograph_of_a_movement_has_one_as_large_as_itself() throws Exception {
    int taken =
        DEMO.shooting().setups().stream()
            .flatMap(setup -> setup.runs().stream())
            .mapToInt(run -> run.moved() + 1)
            .sum();
    assertThat(FILES).hasSize(taken);
    assertThat(root("hatch 003").getAttribute("viewBox")).isEqualTo("0 0 6000 4000");
    assertThat(root("hatch 003").getElementsByTagName("rect").getLength()).as("no ground").isZero();
    assertThat(root("hatch 003").getTextContent()).contains("hatch 003 · ");
  }

  /**
   * The lamp stands upright from photograph 29 on. Everything from the plan's numbers: pixels of
   * the field, distance, looming, one after another.
   */
  @Test
  void the_free_edge_of_an_upright_flap_is_where_the_camera_sees_it() throws Exception {
    Opening lamp = DEMO.plan().workshop().opening("bakers-lamp").orElseThrow();
    Rect field = setup("bakers-lamp").view().orElseThrow().field();
    double square = square("small-lamp");
    double pixels = 6000 / (field.width() * square);
    double distance = 50 * (field.width() * square / 36 + 1);
    double flap = lamp.rect().width() * square;
    double looming = distance / (distance - flap);
    double middle = field.left() + field.width() / 2;
    double hinge = 3000 + (lamp.rect().left() - middle) * square * pixels;
    Edge free = edges("bakers-lamp 029", "free").get(0);
    assertThat(free.x1()).isCloseTo(free.x2(), within(0.01));
    assertThat(free.x1() - 3000).isCloseTo((hinge - 3000) * looming, within(0.1));
    assertThat(Math.abs(free.y2() - free.y1()))
        .isCloseTo(lamp.rect().height() * square * pixels * looming, within(0.1));
  }

  @Test
  void closed_the_flap_lies_on_its_hole() throws Exception {
    List<Edge> hole = edges("bakers-lamp 000", "hole");
    assertThat(hole).hasSize(4);
    Edge free = edges("bakers-lamp 000", "free").get(0);
    assertThat(hole.stream().mapToDouble(edge -> Math.max(edge.x1(), edge.x2())).max())
        .hasValueCloseTo(free.x1(), within(0.01));
  }

  @Test
  void without_a_camera_there_are_none_and_it_is_said() {
    FilmSheet film = SampleFilm.at(FrameRate.FPS_24).sheet();
    assertThat(Overlays.files(film)).isEmpty();
    assertThat(Overlays.notes(film))
        .singleElement()
        .asString()
        .startsWith("No overlays: the plan has no camera.");
    assertThat(Overlays.notes(DEMO)).isEmpty();
  }
}
