package org.barsheet.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Prints what whole runs of the built jar take, from the start of Java to its end: {@code mvn
 * -Pbenchmark verify}. It judges nothing but that every run ends well.
 */
@Tag("benchmark")
class WholeProcessBenchmark {

  private static final String DEMO = "scores/lamplighters-quay.yaml";

  /** What the launcher of a machine with little to compile may say. */
  private static final List<String> SHORT_RUN =
      List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");

  @TempDir Path folder;

  @Test
  void theDemoIsMade() throws Exception {
    String out = folder.resolve("demo").toString();
    print("check of the demo", List.of(), "check", DEMO);
    print("make of the demo", List.of(), "make", DEMO, "--out", out);
    print("make of the demo, serial GC, C1", SHORT_RUN, "make", DEMO, "--out", out);
  }

  @Test
  void twoHundredThousandNotesAndThirtyPanelsAreMade() throws Exception {
    String plan = LargeProduction.into(folder).toString();
    String out = folder.resolve("large").toString();
    print("make of 200,000 notes", List.of("-Xmx768m"), "make", plan, "--out", out);
  }

  private static void print(String what, List<String> options, String... arguments)
      throws IOException, InterruptedException {
    TimedProcess run = TimedProcess.median(options, List.of(arguments));
    assertThat(run.seconds()).isPositive();
    System.out.printf("%-36s %6.2f s %6d MB%n", what, run.seconds(), run.megabytes());
  }
}
