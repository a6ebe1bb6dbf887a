package org.barsheet.paper;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A page read back from its SVG by a strict XML parser. */
record DrawnPage(Element root) {

  /** The foot of a page, with the legend's samples of lines, begins so far above its end. */
  private static final double FOOT = 36;

  record Line(String look, double x1, double y1, double x2, double y2) {}

  record Words(String words, double x, double y, double size) {}

  static DrawnPage of(PaperPage page) {
    try {
      return new DrawnPage(
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(PageSvg.of(page))))
              .getDocumentElement());
    } catch (ParserConfigurationException | SAXException | IOException broken) {
      throw new AssertionError(broken);
    }
  }

  double height() {
    return Double.parseDouble(root.getAttribute("height").replace("mm", ""));
  }

  double width() {
    return Double.parseDouble(root.getAttribute("width").replace("mm", ""));
  }

  /** All lines of a kind above the foot. */
  List<Line> lines(String look) {
    return all().stream()
        .filter(line -> line.look().equals(look))
        .filter(line -> Math.max(line.y1(), line.y2()) <= height() - FOOT)
        .toList();
  }

  /** Every line, those of the foot with them. */
  List<Line> all() {
    return each(
        "line",
        line ->
            new Line(
                line.getAttribute("class"),
                number(line, "x1"),
                number(line, "y1"),
                number(line, "x2"),
                number(line, "y2")));
  }

  List<Words> words() {
    return each(
        "text",
        text ->
            new Words(
                text.getTextContent(),
                number(text, "x"),
                number(text, "y"),
                number(text, "font-size")));
  }

  String text() {
    return String.join("\n", words().stream().map(Words::words).toList());
  }

  private <T> List<T> each(String name, Function<Element, T> read) {
    NodeList nodes = root.getElementsByTagName(name);
    List<T> all = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      all.add(read.apply((Element) nodes.item(i)));
    }
    return all;
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  static double left(List<Line> lines) {
    return lines.stream().mapToDouble(line -> Math.min(line.x1(), line.x2())).min().orElseThrow();
  }

  static double width(List<Line> lines) {
    return lines.stream().mapToDouble(line -> Math.max(line.x1(), line.x2())).max().orElseThrow()
        - left(lines);
  }

  static double top(List<Line> lines) {
    return lines.stream().mapToDouble(line -> Math.min(line.y1(), line.y2())).min().orElseThrow();
  }

  static double height(List<Line> lines) {
    return lines.stream().mapToDouble(line -> Math.max(line.y1(), line.y2())).max().orElseThrow()
        - top(lines);
  }
}
