package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The pages of calls and cards ask nothing of any network and run no script. */
class PagePolicyTest {

  private static final Pattern POLICY =
      Pattern.compile("<meta http-equiv=\"Content-Security-Policy\" content=\"([^\"]*)\"/>\n");
  private static final Pattern STYLE = Pattern.compile("(?s)<style>(.*?)</style>");

  private static List<HandoffFile> pages() {
    return Handoff.documents(DemoFilm.sheet(), "quay").stream()
        .filter(file -> file.path().endsWith(".html"))
        .toList();
  }

  private static String found(Pattern pattern, String page) {
    Matcher matcher = pattern.matcher(page);
    assertThat(matcher.find()).isTrue();
    return matcher.group(1);
  }

  /** Hashes as Content Security Policy Level 3 (W3C) defines them, computed here anew. */
  @Test
  void every_page_has_a_policy_that_admits_its_own_style_alone() throws Exception {
    assertThat(pages()).extracting(HandoffFile::path).anyMatch(path -> path.startsWith("calls/"));
    assertThat(pages()).extracting(HandoffFile::path).anyMatch(path -> path.startsWith("cards/"));
    for (HandoffFile page : pages()) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      page.content().writeTo(bytes);
      String text = bytes.toString(StandardCharsets.UTF_8);
      byte[] style = found(STYLE, text).getBytes(StandardCharsets.UTF_8);
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(style);
      String hash = "sha256-" + Base64.getEncoder().encodeToString(digest);
      assertThat(found(POLICY, text).replace("&#39;", "'"))
          .startsWith("default-src 'none'; style-src '" + hash + "';")
          .endsWith("base-uri 'none'; form-action 'none'")
          .doesNotContain("script", "http");
      assertThat(text.indexOf("Content-Security-Policy")).isLessThan(text.indexOf("<style>"));
      assertThat(text).doesNotContain("<script", "https://");
    }
  }
}
