package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tag of a part that was read without fault (XML 1.0, 3.1).
 *
 * @param from index of its {@code <}
 * @param to index after its {@code >}
 * @param prefix of its name, with the colon, or ""
 * @param name without prefix
 * @param kind whether it opens, closes, or does both
 * @param attributes as they stand, with the space before them
 */
record XmlTag(int from, int to, String prefix, String name, Kind kind, String attributes) {

  enum Kind {
    OPENS,
    CLOSES,
    EMPTY
  }

  private static final Pattern COMMENT_OR_TAG =
      Pattern.compile(
          "<!--.*?-->|<!\\[CDATA\\[.*?]]>|<\\?.*?\\?>"
              + "|<(/?)([\\w.-]+:)?([\\w.-]+)((?:\\s+[^\\s=>/]+\\s*=\\s*(?:\"[^\"]*\"|'[^']*'))*+)"
              + "\\s*(/?)>",
          Pattern.DOTALL | Pattern.UNICODE_CHARACTER_CLASS);

  /** Every tag of a text; comments and what is marked as mere characters are left out. */
  static List<XmlTag> all(String xml) {
    List<XmlTag> tags = new ArrayList<>();
    Matcher found = COMMENT_OR_TAG.matcher(xml);
    while (found.find()) {
      if (found.group(3) != null) {
        tags.add(tag(found));
      }
    }
    return tags;
  }

  private static XmlTag tag(Matcher found) {
    Kind opened = found.group(5).isEmpty() ? Kind.OPENS : Kind.EMPTY;
    return new XmlTag(
        found.start(),
        found.end(),
        found.group(2) == null ? "" : found.group(2),
        found.group(3),
        found.group(1).isEmpty() ? opened : Kind.CLOSES,
        found.group(4));
  }

  /** An attribute without prefix; "" where it is not given. */
  String attribute(String name) {
    Matcher found =
        Pattern.compile("\\s" + name + "\\s*=\\s*(?:\"([^\"]*)\"|'([^']*)')").matcher(attributes);
    return !found.find() ? "" : found.group(1) != null ? found.group(1) : found.group(2);
  }
}
