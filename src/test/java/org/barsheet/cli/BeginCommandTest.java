package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.barsheet.plan.read.PlanReader;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A first plan finds its score, wherever the two lie. */
class BeginCommandTest {

  @TempDir private Path folder = Path.of("");

  private final StringWriter said = new StringWriter();

  private int run(String... args) {
    return Barsheet.run(new PrintWriter(said), new PrintWriter(said), args);
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan.yaml", "plans/first.yaml", "plans/first.xlsx", "Quay.XLSX"})
  void the_score_is_named_as_seen_from_the_plan(String name) throws IOException {
    Path score = Files.createDirectories(folder.resolve("music")).resolve("der Kai, früh.mid");
    Files.copy(Path.of("scores/lamplighters-quay.mid"), score);
    Path plan = folder.resolve(name);
    Files.createDirectories(folder.resolve("plans"));
    assertThat(run("begin", score.toString(), "--out", plan.toString())).isEqualTo(ExitStatus.DONE);
    Path named = PlanReader.read(plan).music().score();
    assertThat(named.normalize()).isEqualTo(score);

    Path elsewhere = folder.resolveSibling(folder.getFileName() + "-moved");
    Files.move(folder, elsewhere);
    said.getBuffer().setLength(0);
    assertThat(run("check", elsewhere.resolve(name).toString())).isEqualTo(ExitStatus.DONE);
    Files.move(elsewhere, folder);
  }
}
