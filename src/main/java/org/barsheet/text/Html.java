package org.barsheet.text;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Builds HTML element by element; every text and attribute goes through one escape. */
public final class Html {

  private final StringBuilder page = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Begins a page, up to the inside of its head. */
  public static Html page() {
    Html html = new Html();
    html.page.append("<!DOCTYPE html>\n");
    html.open("html", "lang", "en").line().open("head").line();
    return html.empty("meta", "charset", "utf-8").line();
  }

  /**
   * Begins an element.
   *
   * @param attributes names and values in turn; one whose value is empty is left out
   */
  public Html open(String name, String... attributes) {
    open.push(name);
    return tag(name, attributes, ">");
  }

  /** Ends the element begun last. */
  public Html close() {
    page.append("</").append(open.pop()).append('>');
    return this;
  }

  /** An element that holds text or nothing. */
  public Html element(String name, String words, String... attributes) {
    return open(name, attributes).text(words).close();
  }

  /** An element that can hold nothing, as {@code col}. */
  public Html empty(String name, String... attributes) {
    return tag(name, attributes, "/>");
  }

  private Html tag(String name, String[] attributes, String end) {
    page.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      if (!attributes[i + 1].isEmpty()) {
        page.append(' ').append(attributes[i]).append("=\"");
        page.append(escaped(attributes[i + 1])).append('"');
      }
    }
    page.append(end);
    return this;
  }

  /** Text inside the element begun last. */
  public Html text(String words) {
    page.append(escaped(words));
    return this;
  }

  /** A new line in the file, for whoever reads it there. */
  public Html line() {
    page.append('\n');
    return this;
  }

  /** An element that holds text, on a line of the file. */
  public Html line(String name, String words, String... attributes) {
    return element(name, words, attributes).line();
  }

  /** A list of short texts. */
  public Html list(List<String> items) {
    open("ul").line();
    items.forEach(item -> line("li", item));
    return close().line();
  }

  /** A row of a table. */
  public Html row(String cell, List<String> cells) {
    open("tr");
    cells.forEach(words -> line(cell, words));
    return close().line();
  }

  /**
   * The page's own style, behind a policy that admits it and nothing else (Content Security Policy
   * Level 3, W3C): no script, nothing from a network. Elements may carry styles of their own, which
   * are numbers of ours.
   */
  public Html style(String css) {
    String inside = "\n" + css;
    empty("meta", "http-equiv", "Content-Security-Policy", "content", policy(inside)).line();
    page.append("<style>").append(inside).append("</style>\n");
    return this;
  }

  private static String policy(String style) {
    return "default-src 'none'; style-src '"
        + Sha256.policySource(style)
        + "'; style-src-attr 'unsafe-inline'; base-uri 'none'; form-action 'none'";
  }

  /** A finished part of a page. */
  public Html add(Html part) {
    page.append(part);
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

  /**
   * The finished page or part.
   *
   * @throws IllegalStateException if an element has no end
   */
  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("no end of " + open);
    }
    return page.toString();
  }
}
