package org.barsheet.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.benchmark.LongFilm.Mixture;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Prints what long films of every mixture take to check, from the start of Java to its end. It
 * judges nothing but that every run ends with a film.
 */
@Tag("benchmark")
class LongFilmBenchmark {

  private static final List<Integer> SIZES = List.of(100, 300, 1_000, 3_000);

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(Mixture.class)
  void isChecked(Mixture mixture) throws Exception {
    for (int panels : SIZES) {
      Path plan = LongFilm.into(folder, panels, mixture);
      assertThat(Files.size(plan)).isPositive();
      TimedProcess run =
          TimedProcess.once(
              List.of(Path.of("target", "barsheet").toString(), "check", plan.toString()));
      System.out.printf(
          "%-26s %6d panels %7.2f s of processor time %6d MB%n",
          mixture, panels, run.processor(), run.megabytes());
    }
  }
}
