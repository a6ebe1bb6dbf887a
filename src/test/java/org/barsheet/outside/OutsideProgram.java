package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;

/** Runs a program that is no part of the project, to hear what it makes of our files. */
public final class OutsideProgram {

  private OutsideProgram() {}

  /** What it prints; the test is left out, or fails where required, if it is not installed. */
  public static String output(String... command) throws IOException, InterruptedException {
    Process process;
    try {
      process = new ProcessBuilder(command).redirectErrorStream(true).start();
    } catch (IOException notInstalled) {
      RegistryScores.missing(command[0] + " is not installed");
      return "";
    }
    process.getOutputStream().close();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as("%s", printed).isZero();
    return printed.strip();
  }
}
