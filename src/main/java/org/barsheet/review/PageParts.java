package org.barsheet.review;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;

/** The page's own style, script and frame, read from beside this class. */
final class PageParts {

  /** In the order in which one builds on another. */
  private static final List<String> STYLES = List.of("paper.css", "print.css");

  private PageParts() {}

  static String template() {
    return read("page.html");
  }

  static String style() {
    return STYLES.stream().map(PageParts::read).collect(Collectors.joining());
  }

  /** All modules of {@code src/main/page} in one function, as the build bundled them. */
  static String script() {
    return read("script.js");
  }

  /**
   * The source expression of a content security policy that admits an inline text (CSP level 3).
   */
  static String hash(String inline) {
    try {
      MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
      byte[] digest = sha256.digest(inline.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
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
