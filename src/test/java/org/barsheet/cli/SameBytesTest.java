package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's sheets are the same bytes in every time zone and language, on every system. */
class SameBytesTest {

  private static final String PLAN = "scores/lamplighters-quay.yaml";

  @TempDir private Path folder = Path.of("set by the test runner");

  private Map<String, byte[]> made(String zone, String language, String country, String... java)
      throws IOException, InterruptedException {
    Path sheets = folder.resolve(language);
    List<String> options = new ArrayList<>(List.of(java));
    options.add("-Duser.timezone=" + zone);
    options.add("-Duser.language=" + language);
    options.add("-Duser.country=" + country);
    ChildProgram run =
        ChildProgram.run(Map.of("TZ", zone), options, "make", PLAN, "--out", sheets.toString());
    assertThat(run.status()).as(run.said()).isEqualTo(ExitStatus.DONE);
    return files(sheets);
  }

  private static Map<String, byte[]> files(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  /** What a workbook's archive holds, each entry with the time written beside it. */
  private static Map<String, byte[]> entries(byte[] workbook) throws IOException {
    Map<String, byte[]> entries = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(workbook))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        entries.put(entry.getName() + " of " + entry.getTimeLocal(), zip.readAllBytes());
      }
    }
    return entries;
  }

  private static void assertSame(Map<String, byte[]> made, Map<String, byte[]> elsewhere)
      throws IOException {
    assertThat(elsewhere.keySet()).isEqualTo(made.keySet()).hasSizeGreaterThan(10);
    for (String name : made.keySet()) {
      if (name.endsWith(".xlsx")) {
        Map<String, byte[]> entries = entries(Objects.requireNonNull(elsewhere.get(name)));
        entries(made.get(name))
            .forEach((entry, bytes) -> assertThat(entries.get(entry)).as(entry).isEqualTo(bytes));
      }
      assertThat(elsewhere.get(name)).as(name).isEqualTo(made.get(name));
    }
  }

  @Test
  void sheets_are_the_same_bytes_in_every_zone_and_language() throws Exception {
    Map<String, byte[]> made = made("UTC", "en", "US");
    assertSame(made, made("Pacific/Kiritimati", "ar", "EG"));
    assertSame(made, made("America/St_Johns", "tr", "TR", "-Dline.separator=\r\n"));
  }
}
