package org.barsheet.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Prints what {@code about} takes (and {@code begin}, which does the same work) on music as thick
 * as a symphony's finale.
 */
@Tag("benchmark")
class DenseOrchestraBenchmark {

  private static final List<String> LAUNCHER = List.of(Path.of("target", "barsheet").toString());

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"16000, 0", "16000, 15", "50000, 0", "100000, 0", "100000, 15", "990000, 0"})
  void figures_are_suggested(int notes, int jitter) throws Exception {
    String score = DenseOrchestra.into(folder, notes, jitter).toString();
    print(notes, jitter, "about", score);
  }

  private static void print(int notes, int jitter, String... command) throws Exception {
    TimedProcess run = TimedProcess.median(LAUNCHER, List.of(command));
    assertThat(run.seconds()).isPositive();
    System.out.printf(
        "%s of %,9d notes, up to %2d ticks late %6.2f s %6d MB%n",
        command[0], notes, jitter, run.seconds(), run.megabytes());
  }
}
