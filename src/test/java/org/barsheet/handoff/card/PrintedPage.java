package org.barsheet.handoff.card;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A page or a drawing read back by a strict XML parser. */
record PrintedPage(Element root) {

  static PrintedPage of(String text) {
    try {
      DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      builder.setErrorHandler(null);
      Document document = builder.parse(new InputSource(new StringReader(text)));
      return new PrintedPage(document.getDocumentElement());
    } catch (ParserConfigurationException | SAXException | IOException broken) {
      throw new AssertionError(broken);
    }
  }

  /** Every element of a name, in order. */
  List<Element> all(String name) {
    return all(root, name);
  }

  static List<Element> all(Element within, String name) {
    NodeList nodes = within.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  /** An attribute as a number. */
  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }
}
