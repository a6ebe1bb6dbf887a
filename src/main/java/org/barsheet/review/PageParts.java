package org.barsheet.review;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/** The page's own style, script and frame, read from beside this class. */
final class PageParts {

  /** In the order in which one builds on another. */
  private static final List<String> STYLES = List.of("paper.css", "dark.css", "print.css");

  private static final List<String> LIVE_STYLES =
      List.of("paper.css", "dark.css", "desk.css", "print.css");

  private PageParts() {}

  static String template() {
    return read("page.html");
  }

  static String style() {
    return style(STYLES);
  }

  /** The same with the style of what changes a plan. */
  static String liveStyle() {
    return style(LIVE_STYLES);
  }

  private static String style(List<String> names) {
    return names.stream().map(PageParts::read).collect(Collectors.joining());
  }

  /** All modules of {@code src/main/page} in one function, as the build bundled them. */
  static String script() {
    return read("script.js");
  }

  /** The same with the modules of {@code src/main/page/desk}. */
  static String liveScript() {
    return read("desk.js");
  }

  /** Text as it stands between two tags. */
  static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static String read(String name) {
    try (InputStream part = PageParts.class.getResourceAsStream(name)) {
      if (part == null) {
        throw new IllegalStateException(name + " is missing from the program");
      }
      return new String(part.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
