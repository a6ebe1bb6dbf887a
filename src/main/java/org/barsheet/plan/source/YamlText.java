package org.barsheet.plan.source;

/** Writes one text so that YAML reads the same text back. */
public final class YamlText {

  private YamlText() {}

  /** The text itself where nothing in it has a meaning of its own, else in double quotes. */
  public static String of(String text) {
    boolean plain =
        text.matches("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} ./%'’+()_-]*[\\p{L}\\p{N}.%)'’])?");
    return plain ? text : quoted(text);
  }

  /** The text in double quotes. */
  public static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"', '\\' -> quoted.append('\\').append(c);
        case '\n' -> quoted.append("\\n");
        case '\t' -> quoted.append("\\t");
        default -> quoted.append(Character.isISOControl(c) ? ' ' : c);
      }
    }
    return quoted.append('"').toString();
  }
}
