package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The printed map: one page, true to scale, in black and grays. */
class ArtworkSvgTest {

  private static final FilmSheet SHEET = SampleFilm.at(FrameRate.FPS_24).sheet();

  private static Document read(byte[] svg)
      throws ParserConfigurationException, SAXException, IOException {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg));
  }

  private static List<Element> elements(Document document, String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  /** A user unit is a millimeter: the view box has the page's own size. */
  @Test
  void the_page_is_a4_and_one_unit_is_one_millimeter() throws Exception {
    Element root = read(ArtworkSvg.bytes(SHEET)).getDocumentElement();
    assertThat(root.getAttribute("width")).isEqualTo("297mm");
    assertThat(root.getAttribute("height")).isEqualTo("210mm");
    assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 297 210");
  }

  /** Lamp 1 is 2 by 4 squares of 25.4 mm; the page says at which scale it is drawn. */
  @Test
  void openings_are_true_to_the_scale_that_the_page_names() throws Exception {
    Document page = read(ArtworkSvg.bytes(SHEET));
    String scale =
        elements(page, "text").stream()
            .map(Element::getTextContent)
            .filter(words -> words.startsWith("drawn 1 : "))
            .findFirst()
            .orElseThrow();
    double denominator = Double.parseDouble(scale.replaceAll("drawn 1 : ([0-9.]+),.*", "$1"));
    Element lamp = elements(page, "rect").get(2);
    assertThat(number(lamp, "width")).isCloseTo(2 * 25.4 / denominator, offset(0.001));
    assertThat(number(lamp, "height")).isCloseTo(4 * 25.4 / denominator, offset(0.001));
  }

  @Test
  void the_bar_to_check_the_printer_is_100_mm_long() throws Exception {
    assertThat(elements(read(ArtworkSvg.bytes(SHEET)), "line"))
        .anyMatch(line -> Math.abs(number(line, "x2") - number(line, "x1") - 100) < 0.001);
  }

  @Test
  void everything_lies_on_the_page() throws Exception {
    for (Element text : elements(read(ArtworkSvg.bytes(SHEET)), "text")) {
      assertThat(number(text, "y")).isBetween(0.0, 210.0);
      assertThat(number(text, "x")).isBetween(0.0, 297.0);
    }
  }

  @Test
  void it_needs_no_color() {
    String svg = new String(ArtworkSvg.bytes(SHEET), StandardCharsets.UTF_8);
    assertThat(svg.replaceAll("#(00|B0|FF)\\1\\1", "")).doesNotContain("=\"#");
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_stays_text(String text) throws Exception {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).saying(text).sheet();
    Document page = read(ArtworkSvg.bytes(sheet));
    assertThat(page.getDocumentElement().getTagName()).isEqualTo("svg");
    assertThat(elements(page, "script")).isEmpty();
  }
}
