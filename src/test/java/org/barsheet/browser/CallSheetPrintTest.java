package org.barsheet.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Call sheets as a browser prints them. */
class CallSheetPrintTest {

  private final DemoPage demo = DemoPage.made();
  private final Browser browser = demo.browser();

  /** Each page is a dictionary of type Page (ISO 32000-1, 7.7.3.3). */
  private long pages() {
    String pdf = new String(browser.printed(), StandardCharsets.ISO_8859_1);
    return Pattern.compile("/Type\\s*/Page\\b").matcher(pdf).results().count();
  }

  @Test
  void everybody_s_call_is_one_printed_page() throws IOException {
    List<Path> calls;
    try (Stream<Path> files = Files.list(demo.page().resolveSibling("calls"))) {
      calls = files.sorted().toList();
    }
    assertThat(calls).hasSize(6);
    for (Path call : calls) {
      browser.open(call);
      assertThat(pages()).as(call.toString()).isEqualTo(1);
    }
    assertThat(browser.complaints()).isEmpty();
  }
}
