package org.barsheet.production;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The committed sheets of the demo are what the program makes of it today, and nothing else. */
class DemoSheetsTest {

  /** Taken of the sheets by hand for the README. */
  private static final Set<String> PHOTOGRAPHS_OF_README =
      Set.of(
          "cutting-sheet.png",
          "desk.png",
          "exposure-page.png",
          "review-page.png",
          "shooting-card.png");

  @Test
  void the_committed_sheets_are_rebuilt_to_the_byte(@TempDir Path folder) throws IOException {
    Made made =
        Production.make(
            Path.of("scores/lamplighters-quay.yaml"), folder, Extras.NONE, Progress.SILENT);
    for (Path file : made.files()) {
      Path committed = Path.of("sheets").resolve(folder.relativize(file).toString());
      if (file.toString().endsWith(".xlsx")) {
        assertThat(entries(file)).isEqualTo(entries(committed));
      } else {
        assertThat(file).hasSameBinaryContentAs(committed);
      }
    }
    Set<String> expected = names(folder);
    expected.addAll(PHOTOGRAPHS_OF_README);
    assertThat(names(Path.of("sheets"))).isEqualTo(expected);
  }

  private static Set<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  /** Uncompressed entries by name: compressed bytes differ between builds of zlib. */
  private static Map<String, Integer> entries(Path workbook) throws IOException {
    Map<String, Integer> entries = new TreeMap<>();
    try (InputStream in = Files.newInputStream(workbook);
        ZipInputStream zip = new ZipInputStream(in)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        entries.put(entry.getName(), Arrays.hashCode(zip.readAllBytes()));
      }
    }
    return entries;
  }
}
