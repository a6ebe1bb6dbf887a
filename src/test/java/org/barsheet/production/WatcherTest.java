package org.barsheet.production;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work is repeated after saves; the pauses between looks are where the person types. */
class WatcherTest {

  private Path plan = Path.of("");
  private Path table = Path.of("");
  private final List<Set<Path>> work = new ArrayList<>();

  /** Something that happens between two looks. */
  private interface Deed {
    void happens() throws IOException;
  }

  private static final Deed NOTHING = () -> {};

  @BeforeEach
  void writePlan(@TempDir Path folder) throws IOException {
    plan = folder.resolve("plan.yaml");
    table = folder.resolve("panels.csv");
    Files.writeString(plan, planWith("panels.csv"), UTF_8);
    Files.writeString(table, "panel,cue\n1,\n", UTF_8);
  }

  private static String planWith(String panels) {
    return "title: Quay\nscore: quay.mid\nfilm: {frame-rate: 24}\npanels: " + panels + "\n";
  }

  /** Watches while these deeds happen, one a pause, and stops after the last. */
  private void watch(Deed... deeds) {
    Iterator<Deed> next = List.of(deeds).iterator();
    new Watcher(
            plan,
            work::add,
            () -> {
              if (!next.hasNext()) {
                return false;
              }
              try {
                next.next().happens();
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
              return true;
            })
        .run();
  }

  private Deed save(Path file, String text) {
    return () -> Files.writeString(file, text, UTF_8);
  }

  @Test
  void work_is_done_once_where_nothing_is_saved() {
    watch(NOTHING, NOTHING, NOTHING);
    assertThat(work).containsExactly(Set.of());
  }

  @Test
  void a_save_of_the_plan_is_seen_once_it_lies_still() {
    watch(save(plan, planWith("panels.csv # 1")), NOTHING, NOTHING);
    assertThat(work).containsExactly(Set.of(), Set.of(plan));
  }

  @Test
  void a_file_that_is_still_being_written_is_left_alone() {
    watch(
        save(plan, "title: Qu"),
        save(plan, "title: Quay\nsco"),
        save(plan, planWith("panels.csv # 2")));
    assertThat(work).containsExactly(Set.of());
  }

  @Test
  void a_file_that_is_empty_for_now_is_waited_for() {
    watch(save(plan, ""), NOTHING, NOTHING, save(plan, planWith("panels.csv # 3")), NOTHING);
    assertThat(work).containsExactly(Set.of(), Set.of(plan));
  }

  @Test
  void the_files_a_plan_names_are_watched_too() {
    watch(
        save(table, "panel,cue\n1,\n2,bar 3\n"),
        NOTHING,
        save(plan.resolveSibling("quay.mid"), "MThd"),
        NOTHING);
    assertThat(work)
        .containsExactly(Set.of(), Set.of(table), Set.of(plan.resolveSibling("quay.mid")));
  }

  @Test
  void recordings_are_waited_for_in_their_folder_and_where_a_table_says() {
    String sent = "performers: {cello: {clip: cello.mov}}\nclips: ";
    Path inFolder = plan.resolveSibling("clips").resolve("cello.mov");
    Path inTable = plan.resolveSibling("post").resolve("take 2.wav");
    watch(
        save(plan, planWith("panels.csv") + sent + "clips\n"),
        NOTHING,
        () -> Files.createDirectories(inFolder.resolveSibling("other")),
        save(inFolder, "ftyp"),
        NOTHING,
        save(plan, planWith("panels.csv") + sent + "{cello: {file: post/take 2.wav}}\n"),
        NOTHING,
        () -> Files.createDirectories(inTable.resolveSibling("other")),
        save(inTable, "RIFF"),
        NOTHING);
    assertThat(work)
        .containsExactly(Set.of(), Set.of(plan), Set.of(inFolder), Set.of(plan), Set.of(inTable));
  }

  @Test
  void a_folder_is_no_file_to_watch() {
    watch(
        save(plan, planWith("panels.csv").replace("quay.mid", "scores")),
        () -> Files.createDirectory(plan.resolveSibling("scores")),
        NOTHING,
        save(plan.resolveSibling("scores").resolve("quay.mid"), "MThd"),
        NOTHING,
        NOTHING);
    assertThat(work).containsExactly(Set.of(), Set.of(plan));
  }

  @Test
  void an_editor_may_put_a_new_file_in_the_place_of_the_old_one() {
    Path beside = plan.resolveSibling("plan.yaml~");
    watch(
        save(beside, planWith("panels.csv")),
        () -> Files.delete(plan),
        () -> Files.move(beside, plan, StandardCopyOption.REPLACE_EXISTING),
        NOTHING);
    assertThat(work).containsExactly(Set.of(), Set.of(plan));
  }

  @Test
  void a_plan_that_does_not_parse_is_watched_until_it_does() {
    watch(
        save(plan, "title: 'Quay"),
        NOTHING,
        save(plan, planWith("others.csv")),
        NOTHING,
        save(plan.resolveSibling("others.csv"), "panel\n1\n"),
        NOTHING);
    assertThat(work)
        .containsExactly(
            Set.of(), Set.of(plan), Set.of(plan), Set.of(plan.resolveSibling("others.csv")));
  }

  @Test
  void what_is_saved_while_the_work_goes_on_is_seen_after_it() {
    List<Set<Path>> seen = new ArrayList<>();
    Iterator<Boolean> looks = List.of(true, true, false).iterator();
    new Watcher(
            plan,
            saved -> {
              seen.add(saved);
              if (saved.isEmpty()) {
                writePlanAgain();
              }
            },
            looks::next)
        .run();
    assertThat(seen).containsExactly(Set.of(), Set.of(plan));
  }

  private void writePlanAgain() {
    try {
      Files.writeString(plan, planWith("panels.csv # again"), UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
