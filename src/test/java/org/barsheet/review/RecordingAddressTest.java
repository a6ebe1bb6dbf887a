package org.barsheet.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a page names the recording that lies somewhere beside it. */
class RecordingAddressTest {

  @ParameterizedTest
  @CsvSource({
    "film/mix.wav, film/sheets, ../mix.wav",
    "film/sheets/mix.wav, film/sheets, mix.wav",
    "sound/mix.wav, film/out/sheets, ../../../sound/mix.wav",
    "film/../sound/mix.wav, film/./sheets, ../../sound/mix.wav",
  })
  void it_is_seen_from_the_page(String file, String folder, String address) {
    assertThat(RecordingAddress.of(Path.of(file), Path.of(folder))).isEqualTo(address);
  }

  /** RFC 3986, 5.2: the browser resolves the reference against the page's own address. */
  @ParameterizedTest
  @CsvSource({
    "javascript:alert(1).wav",
    "http:evil.wav",
    "what? #2 100% größer.wav",
    "'quote\"<b>.wav'",
  })
  void whatever_its_name_it_leads_to_that_file(String name, @TempDir Path folder) {
    Path file = folder.resolve("sound").resolve(name);
    Path page = folder.resolve("out/page.html");
    String address = RecordingAddress.of(file, folder.resolve("out"));
    URI resolved = page.toUri().resolve(address);
    assertThat(Path.of(resolved)).isEqualTo(file);
    Path beside = page.resolveSibling(name);
    assertThat(Path.of(page.toUri().resolve(RecordingAddress.of(beside, folder.resolve("out")))))
        .isEqualTo(beside);
  }
}
