package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The small script beside the jar. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "it is a script for sh")
class LauncherTest {

  @TempDir Path folder;

  /** A {@code java} that says what it is asked for, one word a line. */
  private void writeJava() throws IOException {
    Path java = Files.createDirectories(folder.resolve("bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\nprintf '%s\\n' \"$@\"\nexit 3\n");
    assertThat(java.toFile().setExecutable(true)).isTrue();
  }

  @Test
  void it_runs_the_jar_beside_it_with_the_words_and_status_unchanged() throws Exception {
    writeJava();
    Path target = Files.createDirectories(folder.resolve("a build")).toRealPath();
    Path launcher = target.resolve("barsheet");
    Files.copy(Path.of("src", "main", "launcher", "barsheet"), launcher);
    assertThat(launcher.toFile().setExecutable(true)).isTrue();
    Path link = Files.createSymbolicLink(folder.resolve("linked"), launcher);

    ProcessBuilder builder =
        new ProcessBuilder(link.toString(), "make", "my plan.yaml", "--out", "*");
    String path = folder.resolve("bin") + ":" + System.getenv("PATH");
    builder.environment().put("PATH", path);
    Process process = builder.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);

    assertThat(process.waitFor()).isEqualTo(3);
    assertThat(said.lines().toList())
        .isEqualTo(
            List.of(
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-jar",
                target.resolve("barsheet.jar").toString(),
                "make",
                "my plan.yaml",
                "--out",
                "*"));
  }
}
