package org.barsheet.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Prints what whole runs take, from the start of Java to its end: {@code mvn -Pbenchmark verify}.
 * It judges nothing but that every run ends well.
 */
@Tag("benchmark")
class WholeProcessBenchmark {

  private static final String DEMO = "scores/lamplighters-quay.yaml";

  private static final List<String> LAUNCHER = List.of(Path.of("target", "barsheet").toString());

  private static final List<String> PLAIN_JAVA =
      List.of("java", "-Xmx768m", "-jar", Path.of("target", "barsheet.jar").toString());

  @TempDir Path folder;

  private static final String YARDSTICK =
      "src/test/resources/org/barsheet/benchmark/exposure_rows.py";

  /** A script of 30 lines over general libraries that writes nothing but the exposure rows. */
  @Test
  void theDemoAndTheYardstickAreMadeInTurn() throws Exception {
    String rows = folder.resolve("rows.xlsx").toString();
    String out = folder.resolve("demo").toString();
    print("make of the demo", LAUNCHER, "make", DEMO, "--out", out);
    print("yardstick", List.of("python3", YARDSTICK), "sheets/timing.json", rows);
    print("make of the demo", LAUNCHER, "make", DEMO, "--out", out);
    print("yardstick", List.of("python3", YARDSTICK), "sheets/timing.json", rows);
  }

  @Test
  void theDemoIsMade() throws Exception {
    String out = folder.resolve("demo").toString();
    print("check of the demo", LAUNCHER, "check", DEMO);
    print("make of the demo", LAUNCHER, "make", DEMO, "--out", out);
    print("make of the demo, plain Java", PLAIN_JAVA, "make", DEMO, "--out", out);
  }

  @Test
  void twoHundredThousandNotesAndThirtyPanelsAreMade() throws Exception {
    String plan = LargeProduction.into(folder).toString();
    String out = folder.resolve("large").toString();
    print("make of 200,000 notes", LAUNCHER, "make", plan, "--out", out);
    print("make of 200,000 notes, plain Java", PLAIN_JAVA, "make", plan, "--out", out);
    String revised = LargeProduction.revisedInto(folder).toString();
    print("adopt of 200,000 notes", LAUNCHER, "adopt", plan, revised, "--out", out, "--preview");
  }

  private static void print(String what, List<String> program, String... arguments)
      throws IOException, InterruptedException {
    TimedProcess run = TimedProcess.median(program, List.of(arguments));
    assertThat(run.seconds()).isPositive();
    System.out.printf(
        "%-36s %6.2f s, processor %6.2f s %6d MB%n",
        what, run.seconds(), run.processor(), run.megabytes());
  }
}
