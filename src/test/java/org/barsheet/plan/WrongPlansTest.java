package org.barsheet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.read.PlanReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every case of {@code wrong-plans.txt}: a plan, and everything a person is told about it. With
 * {@code -Dgolden=write} what is told is written anew, to be read before it is kept.
 */
class WrongPlansTest {

  private static final Path SOURCE =
      Path.of("src/test/resources/org/barsheet/plan/wrong-plans.txt").toAbsolutePath();

  private static final String TOLD = "--- is told:\n";

  @TempDir private Path folder;

  record Case(String name, String plan, String told) {
    String whole(String answer) {
      return "=== " + name + "\n" + plan + TOLD + answer + "\n";
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> cases() throws IOException {
    String all;
    try (InputStream in = WrongPlansTest.class.getResourceAsStream("wrong-plans.txt")) {
      all = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
    return Arrays.stream(all.split("(?m)^=== ", -1))
        .filter(text -> !text.isBlank())
        .map(WrongPlansTest::caseOf);
  }

  private static Case caseOf(String text) {
    int name = text.indexOf('\n');
    int told = text.indexOf(TOLD);
    return new Case(
        text.substring(0, name),
        text.substring(name + 1, told),
        text.substring(told + TOLD.length()).stripTrailing());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void a_wrong_plan_is_told_what_is_wrong_where_and_what_to_do(Case one) throws IOException {
    String told = told(one.plan());
    if ("write".equals(System.getProperty("golden"))) {
      String all = Files.readString(SOURCE, StandardCharsets.UTF_8);
      Files.writeString(SOURCE, all.replace(one.whole(one.told()), one.whole(told)));
    }
    assertThat(told).isEqualTo(one.told());
  }

  @Test
  void a_plan_with_ten_mistakes_is_told_all_ten() throws IOException {
    Case ten = cases().filter(one -> one.name().equals("ten mistakes")).findFirst().orElseThrow();
    assertThat(problems(ten.plan())).hasSize(10).allMatch(one -> one.position().startsWith("line"));
  }

  private String told(String plan) throws IOException {
    return problems(plan).stream()
        .map(problem -> problem.toString().replace(file().toString(), "plan.yaml"))
        .collect(Collectors.joining("\n"));
  }

  private List<Problem> problems(String plan) throws IOException {
    Files.writeString(file(), plan);
    try {
      PlanReader.read(file());
      return List.of();
    } catch (InputException wrong) {
      return wrong.problems();
    }
  }

  private Path file() {
    return folder.resolve("plan.yaml");
  }
}
