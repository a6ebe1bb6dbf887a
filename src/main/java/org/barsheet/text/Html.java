package org.barsheet.text;

import java.util.List;

/** Builds an HTML page; every text a person typed goes through one escape. */
public final class Html {

  private final StringBuilder page = new StringBuilder();

  /** Markup of our own, as it is. */
  public Html raw(String markup) {
    page.append(markup);
    return this;
  }

  /** An element that holds text. */
  public Html element(String name, String words) {
    page.append('<').append(name).append('>').append(escaped(words));
    page.append("</").append(name).append(">\n");
    return this;
  }

  /** A list of short texts. */
  public Html list(List<String> items) {
    page.append("<ul>\n");
    items.forEach(item -> element("li", item));
    page.append("</ul>\n");
    return this;
  }

  /** A row of a table. */
  public Html row(String cell, List<String> cells) {
    page.append("<tr>");
    cells.forEach(words -> element(cell, words));
    page.append("</tr>\n");
    return this;
  }

  /**
   * Text as it stands in a page: markup characters escaped, control characters taken out, and signs
   * that turn the reading direction kept from reaching past it.
   */
  public static String escaped(String words) {
    return words
        .replaceAll("\\p{Cntrl}+", " ")
        .replaceAll("[\\u202A-\\u202E\\u2066-\\u2069]", "")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  @Override
  public String toString() {
    return page.toString();
  }
}
