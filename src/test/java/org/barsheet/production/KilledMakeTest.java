package org.barsheet.production;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.barsheet.changes.ChangeLine;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.publish.DyingDisk;
import org.barsheet.production.publish.LastSheets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code make} killed while it replaces the sheets of one plan by those of another: whatever reads
 * the folder next finds all of the one or all of the other.
 */
class KilledMakeTest {

  private static final String TIMING = "timing.json";

  @TempDir private Path folder = Path.of("set by the test runner");

  private TwoPlans plans = new TwoPlans(Path.of(""));

  /** Each plan's sheets made over the other's, as digests by name. */
  private Map<String, Integer> one = Map.of();

  private Map<String, Integer> other = Map.of();

  /** What {@code compare} says of each beside the first plan. */
  private List<ChangeLine> oneCompared = List.of();

  private List<ChangeLine> otherCompared = List.of();

  private final Set<String> names = new TreeSet<>();

  @BeforeEach
  void makeBoth() throws IOException {
    plans = new TwoPlans(folder);
    plans.write();
    make(0, new DyingDisk());
    make(1, new DyingDisk());
    other = onDisk();
    otherCompared = compared();
    make(0, new DyingDisk());
    one = onDisk();
    oneCompared = compared();
    assertThat(oneCompared).isNotEqualTo(otherCompared);
    names.addAll(one.keySet());
    names.addAll(other.keySet());
  }

  private List<ChangeLine> compared() {
    return Production.compare(plans.sheets(), plans.plan(0)).film().orElseThrow().lines();
  }

  private void make(int which, DyingDisk disk) {
    Production.make(plans.plan(which), plans.sheets(), Extras.NONE, Progress.SILENT, disk);
  }

  private Map<String, Integer> onDisk() throws IOException {
    Map<String, Integer> files = new TreeMap<>();
    try (var walk = Files.walk(plans.sheets())) {
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        files.put(plans.sheets().relativize(file).toString(), digest(file));
      }
    }
    return files;
  }

  private static int digest(Path file) {
    try {
      return Arrays.hashCode(Files.readAllBytes(file));
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }

  private Map<String, Integer> seen() {
    Map<String, Integer> seen = new TreeMap<>();
    for (String name : names) {
      LastSheets.read(plans.sheets(), name, KilledMakeTest::digest)
          .ifPresent(digest -> seen.put(name, digest));
    }
    return seen;
  }

  /** The sheets of the first plan stand there, the second is being made, and is killed. */
  private void isWhole(String when) throws IOException {
    Map<String, Integer> seen = seen();
    assertThat(seen).as(when).isIn(one, other);
    assertThat(plans.sheets().resolve(TIMING)).as(when).exists();
    Map<String, Integer> before = onDisk();
    FilmSheet checked = Production.film(plans.plan(0), plans.sheets(), Progress.SILENT);
    assertThat(compared())
        .as(when + ", compared")
        .isEqualTo(seen.equals(one) ? oneCompared : otherCompared);
    assertThat(checked.timing().shots()).hasSize(2);
    assertThat(onDisk()).as(when + ", only looked at").isEqualTo(before);
  }

  private void isMended(String when) throws IOException {
    make(1, new DyingDisk());
    make(0, new DyingDisk());
    assertThat(onDisk()).as(when + ", made again").isEqualTo(one);
  }

  private boolean isKilledAt(int step) throws IOException {
    try {
      make(1, new DyingDisk(step));
      return false;
    } catch (DyingDisk.Killed killed) {
      isWhole("killed at step " + step);
      return true;
    }
  }

  @Test
  void killed_at_some_steps_it_leaves_one_whole_generation() throws IOException {
    Random random = new Random(3);
    for (int trial = 0; trial < 4; trial++) {
      int step = random.nextInt(140);
      isKilledAt(step);
      isMended("killed at step " + step);
    }
  }

  @Test
  @Tag("trial")
  void killed_at_any_step_it_leaves_one_whole_generation() throws IOException {
    int step = 0;
    while (isKilledAt(step)) {
      isMended("killed at step " + step);
      step++;
    }
    assertThat(step).as("steps").isGreaterThan(100);
  }

  @Test
  void a_killed_program_leaves_one_whole_generation() throws IOException, InterruptedException {
    killPrograms(2);
  }

  @Test
  @Tag("trial")
  void programs_killed_at_any_moment_leave_one_whole_generation()
      throws IOException, InterruptedException {
    killPrograms(200);
  }

  /** A program of its own makes the two plans in turn until it is killed. */
  private void killPrograms(int trials) throws IOException, InterruptedException {
    Random random = new Random(7);
    for (int trial = 0; trial < trials; trial++) {
      Process program = program();
      try {
        assertThat(program.getInputStream().read()).as("it has begun").isEqualTo('b');
        Thread.sleep(random.nextInt(1500));
      } finally {
        program.destroyForcibly().waitFor();
      }
      String when = "killed program " + trial;
      assertThat(program.exitValue()).as(when).isGreaterThan(1);
      isWhole(when);
      isMended(when);
    }
  }

  private Process program() throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            TwoPlans.class.getName(),
            folder.toString())
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
