package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * The program run in a Java of its own, for what is settled before a program begins.
 *
 * @param status its exit status
 * @param said all it printed
 */
record ChildProgram(int status, String said) {

  private static final long MOST_SECONDS = 120;

  /**
   * Runs a command to its end.
   *
   * @param environment what to set there besides
   * @param java options of Java
   */
  static ChildProgram run(Map<String, String> environment, List<String> java, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Djava.awt.headless=true"));
    command.addAll(java);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Barsheet.class.getName()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().putAll(environment);
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IOException("it never ended: " + command);
    }
    return new ChildProgram(process.exitValue(), said);
  }
}
