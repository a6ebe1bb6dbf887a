package org.barsheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.begin.BookWriter;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.plan.read.PlanSource;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * 2,000 plans damaged by chance from a seed: each is still a plan, or everything that is told has a
 * true place in it.
 */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class DamagedPlansTest {

  private static final int YAML_EACH = 150;
  private static final int BOOKS_EACH = 50;
  private static final Pattern LINE = Pattern.compile("line (\\d+)(?:, column (\\d+))?");
  private static final Pattern SHEET =
      Pattern.compile("sheet [^,]+(?:, (?:row \\d+|cell [A-Z]{1,3}\\d+))?");
  private static final String[] WORDS_NOT_USED = {"Exception", "invalid", "illegal", "failed to"};

  private static String yaml = "";
  private static Map<String, byte[]> parts = Map.of();

  @TempDir private Path folder;

  @BeforeAll
  static void readTheWholeSchema(@TempDir Path folder) throws IOException {
    try (InputStream in = DamagedPlansTest.class.getResourceAsStream("whole-schema.yaml")) {
      yaml = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
    Path file = folder.resolve("whole.yaml");
    Files.writeString(file, yaml);
    Entry.Keyed tree = PlanSource.read(new PlanReading(file));
    Path book = folder.resolve("whole.xlsx");
    Files.write(book, new BookWriter(tree, List.of("Celesta")).bytes());
    parts = unpacked(book);
  }

  private static Map<String, byte[]> unpacked(Path book) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(book.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        try (InputStream in = zip.getInputStream(entry)) {
          parts.put(entry.getName(), in.readAllBytes());
        }
      }
    }
    return parts;
  }

  private static byte[] packed(Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
      }
    }
    return bytes.toByteArray();
  }

  @RepeatedTest(10)
  void a_damaged_plan_in_yaml_is_a_plan_or_told_with_true_places(RepetitionInfo repetition)
      throws IOException {
    Random random = new Random(repetition.getCurrentRepetition());
    Path file = folder.resolve("plan.yaml");
    for (int trial = 0; trial < YAML_EACH; trial++) {
      String damaged = Damage.text(yaml, random);
      Files.writeString(file, damaged);
      List<String> lines = List.of(damaged.split("\r\n|\r|\n", -1));
      for (Problem problem : problems(file, damaged)) {
        assertTruePlace(problem, lines);
      }
    }
  }

  @RepeatedTest(10)
  void a_damaged_workbook_is_a_plan_or_told_with_true_places(RepetitionInfo repetition)
      throws IOException {
    Random random = new Random(1000 + repetition.getCurrentRepetition());
    Path file = folder.resolve("plan.xlsx");
    List<String> names = new ArrayList<>(parts.keySet());
    for (int trial = 0; trial < BOOKS_EACH; trial++) {
      Map<String, byte[]> damaged = new LinkedHashMap<>(parts);
      String name = names.get(random.nextInt(names.size()));
      String part = new String(parts.get(name), StandardCharsets.UTF_8);
      damaged.put(name, Damage.text(part, random).getBytes(StandardCharsets.UTF_8));
      byte[] book = packed(damaged);
      Files.write(file, random.nextInt(4) == 0 ? Damage.bytes(book, random) : book);
      for (Problem problem : problems(file, name + " in trial " + trial)) {
        assertThat(problem.position()).matches("|line \\d+.*|" + SHEET.pattern());
      }
    }
  }

  @SuppressWarnings("CatchingUnchecked")
  private static List<Problem> problems(Path file, String damaged) {
    try {
      assertThat(PlanReader.read(file).title()).isNotNull();
      return List.of();
    } catch (InputException wrong) {
      wrong.problems().forEach(DamagedPlansTest::assertWellSaid);
      return wrong.problems();
    } catch (RuntimeException | StackOverflowError other) {
      return fail("not told: " + damaged, other);
    }
  }

  private static void assertWellSaid(Problem problem) {
    assertThat(problem.file()).isNotEmpty();
    assertThat(problem.sentence()).isNotEmpty().doesNotContain(WORDS_NOT_USED);
    assertThat(problem.toString().length()).isLessThan(2000);
  }

  private static void assertTruePlace(Problem problem, List<String> lines) {
    Matcher place = LINE.matcher(problem.position());
    if (!problem.position().isEmpty()) {
      assertThat(place.matches()).as(problem.toString()).isTrue();
      int line = Integer.parseInt(place.group(1));
      assertThat(line).as(problem.toString()).isBetween(1, lines.size());
      if (place.group(2) != null) {
        String text = lines.get(line - 1);
        assertThat(Integer.parseInt(place.group(2)))
            .as(problem.toString())
            .isBetween(1, text.codePointCount(0, text.length()) + 1);
      }
    }
  }
}
