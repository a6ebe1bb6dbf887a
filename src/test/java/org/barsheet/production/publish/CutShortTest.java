package org.barsheet.production.publish;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.barsheet.input.InputException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Publishing that is cut short at any of its steps, and then again while it is taken back. */
class CutShortTest {

  private static final String TIMING = "timing.json";
  private static final List<String> NAMES = List.of("a.html", "calls/b.html", TIMING, "a.xlsx");

  /** Made from the second time on, in a folder that is new. */
  private static final String LATER = "cards/c.svg";

  @TempDir private Path trials = Path.of("set by the test runner");

  private Path folder = Path.of("");
  private int trial;
  private int lastSteps;

  @BeforeEach
  void nameFolder() {
    folder = trials.resolve("sheets");
  }

  private static Map<String, String> generation(int number) {
    Map<String, String> files = new TreeMap<>();
    NAMES.forEach(name -> files.put(name, name + " " + number));
    if (number > 1) {
      files.put(LATER, LATER + " " + number);
    }
    return files;
  }

  private void publish(int number, Disk disk) {
    try (OutputFolder out = OutputFolder.open(folder, disk)) {
      generation(number)
          .forEach((name, text) -> out.write(name, stream -> stream.write(text.getBytes(UTF_8))));
      out.publish();
    }
  }

  /** Publishes and is killed; returns whether it was. */
  private boolean isKilled(int number, Disk disk) {
    try {
      publish(number, disk);
      return false;
    } catch (DyingDisk.Killed killed) {
      return true;
    }
  }

  /** A folder of its own for each trial, with the first generation in it. */
  private void begin() {
    trial++;
    folder = trials.resolve("trial " + trial);
    publish(1, new DyingDisk());
  }

  /** What a command that writes nothing sees. */
  private Map<String, String> seen() throws IOException {
    Map<String, String> before = onDisk();
    Map<String, String> seen = new TreeMap<>();
    for (String name : generation(2).keySet()) {
      LastSheets.read(folder, name, CutShortTest::text).ifPresent(text -> seen.put(name, text));
    }
    assertThat(onDisk()).as("looking writes nothing").isEqualTo(before);
    return seen;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, UTF_8);
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }

  private Map<String, String> onDisk() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (var walk = Files.walk(folder)) {
      for (Path file : walk.filter(path -> !path.equals(folder)).toList()) {
        String name = folder.relativize(file).toString();
        if (Files.isRegularFile(file)) {
          files.put(name, name.endsWith(".lock") ? "" : text(file));
        } else if (file.toFile().list().length == 0) {
          files.put(name, "an empty folder");
        }
      }
    }
    return files;
  }

  private void isWholeAndIsMendedByTheNext(String when) throws IOException {
    assertThat(seen()).as(when).isIn(generation(1), generation(2));
    assertThat(folder.resolve(TIMING)).as(when).exists();
    Map<String, String> whole = seen();
    try (OutputFolder opened = OutputFolder.open(folder, new DyingDisk())) {
      assertThat(opened.folder()).isEqualTo(folder);
    }
    assertThat(onDisk()).as(when + ", then opened").isEqualTo(whole);
    publish(3, new DyingDisk());
    assertThat(onDisk()).as(when + ", then made").isEqualTo(generation(3));
  }

  @Test
  void killed_at_any_step_it_leaves_all_old_or_all_new_and_the_next_run_mends_it()
      throws IOException {
    int steps = 0;
    for (boolean killed = true; killed; steps++) {
      begin();
      killed = isKilled(2, new DyingDisk(steps));
      isWholeAndIsMendedByTheNext("killed at step " + steps);
    }
    assertThat(steps).as("steps").isGreaterThan(50);
  }

  /** A disk that knows no second names gets copies. */
  @Test
  void a_disk_without_links_is_no_different() throws IOException {
    boolean killed = true;
    for (int steps = 0; killed; steps += 4) {
      begin();
      killed =
          isKilled(
              2,
              new DyingDisk(steps) {
                @Override
                protected void link(Path file, Path second) {
                  throw new UnsupportedOperationException("no second names");
                }
              });
      isWholeAndIsMendedByTheNext("killed at step " + steps);
    }
  }

  @Test
  void killed_again_while_it_is_taken_back_it_is_still_whole() throws IOException {
    Random random = new Random(5);
    for (int pair = 0; pair < 25; pair++) {
      killTwice(random.nextInt(70), random.nextInt(60));
    }
  }

  @Test
  @Tag("trial")
  void killed_at_every_pair_of_steps_it_is_still_whole() throws IOException {
    for (int first = 0; first < 70; first++) {
      for (int second = 0; second < 60; second++) {
        killTwice(first, second);
      }
    }
  }

  private void killTwice(int first, int second) throws IOException {
    begin();
    isKilled(2, new DyingDisk(first));
    Map<String, String> whole = seen();
    isKilled(2, new DyingDisk(second));
    String when = "killed at steps " + first + " and " + second;
    assertThat(seen()).as(when).isIn(whole, generation(2));
    isWholeAndIsMendedByTheNext(when);
  }

  /** A disk that refuses one change, and takes those after it. */
  private static Disk refusing(int steps) {
    return new Disk() {
      private int left = steps;

      @Override
      protected void step() throws IOException {
        if (left-- == 0) {
          throw new IOException("Input/output error");
        }
      }

      @Override
      protected void force(FileChannel file) {
        // The computer goes on.
      }
    };
  }

  @Test
  void a_disk_that_refuses_any_one_step_leaves_all_old_or_all_new() throws IOException {
    for (int steps = 0; steps < 80; steps += 4) {
      begin();
      try {
        publish(2, refusing(steps));
      } catch (InputException told) {
        assertThat(told).hasMessageContaining("Input/output error");
      }
      isWholeAndIsMendedByTheNext("refused at step " + steps);
    }
  }

  /** Killed when every file is in its place, just before the journal goes. */
  private void killLate() throws IOException {
    lastSteps = Math.max(30, lastSteps - 1);
    do {
      begin();
      isKilled(2, new DyingDisk(lastSteps));
      lastSteps++;
    } while (!onDisk().getOrDefault("a.xlsx", "").equals("a.xlsx 2"));
    assertThat(seen()).isEqualTo(generation(1));
  }

  @Test
  void what_somebody_saved_over_a_new_file_stays_and_the_one_before_is_kept() throws IOException {
    killLate();
    Files.writeString(folder.resolve("a.xlsx"), "notes on the new one", UTF_8);
    Files.writeString(folder.resolve(LATER), "a photograph", UTF_8);
    try (OutputFolder opened = OutputFolder.open(folder, new DyingDisk())) {
      assertThat(opened.folder()).isEqualTo(folder);
    }
    Map<String, String> expected = new TreeMap<>(generation(1));
    expected.put("a.xlsx", "notes on the new one");
    expected.put("a-kept-1.xlsx", "a.xlsx 1");
    expected.put(LATER, "a photograph");
    assertThat(onDisk()).isEqualTo(expected);
  }

  @Test
  void a_damaged_journal_is_told_and_nothing_is_touched() throws IOException {
    for (String text : List.of("", "{}", "[]", "{\"format\":1}", outside("../a"), outside("/a"))) {
      killLate();
      Files.writeString(folder.resolve(".barsheet/journal.json"), text, UTF_8);
      Map<String, String> before = onDisk();
      assertThatThrownBy(() -> OutputFolder.open(folder, new DyingDisk()))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("its list of files is damaged");
      assertThatThrownBy(() -> LastSheets.read(folder, TIMING, CutShortTest::text))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("its list of files is damaged");
      before.remove(".barsheet.lock");
      assertThat(onDisk()).isEqualTo(before);
    }
  }

  private static String outside(String name) {
    return "{\"format\":\"barsheet publishing 1\",\"folders\":[],\"files\":"
        + "[{\"name\":\"%s\",\"replaces\":false,\"bytes\":1,\"saved\":\"\"}]}".formatted(name);
  }

  @Test
  void files_of_a_run_that_goes_on_are_left_alone() {
    try (OutputFolder live = OutputFolder.open(folder, new DyingDisk())) {
      live.write("a.html", stream -> stream.write('a'));
      assertThatThrownBy(() -> OutputFolder.open(folder, new DyingDisk()))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("another barsheet is writing into this folder");
      live.publish();
    }
    assertThat(folder.resolve("a.html")).hasContent("a");
  }
}
