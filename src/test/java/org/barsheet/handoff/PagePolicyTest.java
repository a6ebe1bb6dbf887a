package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The pages of calls and cards ask nothing of any network and run no script; only the page for the
 * phone beside the camera runs one, its own.
 */
class PagePolicyTest {

  private static final Pattern POLICY =
      Pattern.compile("<meta http-equiv=\"Content-Security-Policy\" content=\"([^\"]*)\"/?>\n");
  private static final Pattern SCRIPT = Pattern.compile("(?s)<script>(.*?)</script>");
  private static final Pattern STYLE = Pattern.compile("(?s)<style>(.*?)</style>");

  private static List<HandoffFile> pages(boolean ofPhone) {
    return Handoff.documents(DemoFilm.sheet(), "quay").stream()
        .filter(file -> file.path().endsWith(".html"))
        .filter(file -> file.path().startsWith("cards/phone-") == ofPhone)
        .toList();
  }

  private static String text(HandoffFile page) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    page.content().writeTo(bytes);
    return bytes.toString(StandardCharsets.UTF_8);
  }

  private static String hash(String text) throws GeneralSecurityException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
    return "sha256-" + Base64.getEncoder().encodeToString(digest);
  }

  private static String found(Pattern pattern, String page) {
    Matcher matcher = pattern.matcher(page);
    assertThat(matcher.find()).isTrue();
    return matcher.group(1);
  }

  /** Hashes as Content Security Policy Level 3 (W3C) defines them, computed here anew. */
  @Test
  void every_page_has_a_policy_that_admits_its_own_style_alone() throws Exception {
    List<HandoffFile> pages = pages(false);
    assertThat(pages).extracting(HandoffFile::path).anyMatch(path -> path.startsWith("calls/"));
    assertThat(pages).extracting(HandoffFile::path).anyMatch(path -> path.startsWith("cards/"));
    for (HandoffFile page : pages) {
      String text = text(page);
      assertThat(found(POLICY, text).replace("&#39;", "'"))
          .startsWith("default-src 'none'; style-src '" + hash(found(STYLE, text)) + "';")
          .endsWith("base-uri 'none'; form-action 'none'")
          .doesNotContain("script", "http");
      assertThat(text.indexOf("Content-Security-Policy")).isLessThan(text.indexOf("<style>"));
      assertThat(text).doesNotContain("<script", "https://");
    }
  }

  @Test
  void the_page_for_the_phone_runs_its_own_script_alone() throws Exception {
    List<HandoffFile> pages = pages(true);
    assertThat(pages).isNotEmpty();
    for (HandoffFile page : pages) {
      String text = text(page);
      assertThat(found(POLICY, text))
          .startsWith("default-src 'none'; script-src '" + hash(found(SCRIPT, text)) + "';")
          .contains("style-src '" + hash(found(STYLE, text)) + "';")
          .endsWith("base-uri 'none'; form-action 'none'")
          .doesNotContain("http", "unsafe");
      assertThat(text).doesNotContain("https://");
    }
  }
}
