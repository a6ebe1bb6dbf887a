package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The review page's modules by themselves, without a browser: in Node.js, and under ESLint. */
class PageModulesTest {

  private static final Path TESTS = Path.of("src", "test", "page");

  /** ESLint 10.11.0 in one file (MIT). */
  private static final RegistryPackage LINTER =
      new RegistryPackage(
          "eslint-linter-browserify@10.11.0",
          "eslint-linter-browserify-10.11.0.tgz",
          "XVaxxFwVyLM80nUjJhp0HXah9uDXDTuSU74+FcJB02ibU6uNviMGqzy0R6OFtFSoREGp40zRkTGfF7T37R+fZA==",
          "eslint");

  /** The rules that ESLint recommends (MIT). */
  private static final RegistryPackage RECOMMENDED =
      new RegistryPackage(
          "@eslint/js@10.0.1",
          "eslint-js-10.0.1.tgz",
          "zeR9k5pd4gxjZ0abRoIaxdc7I3nDktoXZk2qOv9gCNWx3mVwEn32VRhyLaRsDiJjTs0xq/T8mfPtyuXu7GWBcA==",
          "eslint-recommended");

  @Test
  void their_own_tests_pass() throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("node", "--test", "--test-reporter=tap"));
    try (Stream<Path> files = Files.list(TESTS)) {
      files.map(Path::toString).filter(file -> file.endsWith(".test.mjs")).forEach(command::add);
    }
    assertThat(command).hasSizeGreaterThan(3);
    String printed = OutsideProgram.output(command.toArray(String[]::new));
    assertThat(printed).contains("\n# fail 0\n").doesNotContain("\n# pass 0\n");
  }

  @Test
  void no_name_is_undefined_or_unused() throws IOException, InterruptedException {
    Path linter = LINTER.file("linter.mjs");
    Path recommended = RECOMMENDED.file("src/configs/eslint-recommended.js");
    String printed =
        OutsideProgram.output(
            "node",
            TESTS.resolve("lint.mjs").toString(),
            linter.toString(),
            recommended.toString());
    assertThat(printed).endsWith(" files, 0 findings");
  }
}
