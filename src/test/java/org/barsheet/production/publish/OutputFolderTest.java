package org.barsheet.production.publish;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.input.InputException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {

  private Path folder = Path.of("");

  @BeforeEach
  void makeFolder(@TempDir Path temporary) {
    folder = temporary.resolve("sheets");
  }

  @Test
  void files_appear_only_when_published_and_nothing_else_stays_behind() throws IOException {
    try (OutputFolder out = OutputFolder.open(folder)) {
      out.write("a.txt", stream -> stream.write('a'));
      out.write("calls/b.txt", stream -> stream.write('b'));
      assertThat(folder.resolve("a.txt")).doesNotExist();

      assertThat(out.publish())
          .containsExactly(folder.resolve("a.txt"), folder.resolve("calls/b.txt"));
    }
    assertThat(names()).containsExactly("a.txt", "calls", "calls/b.txt");
  }

  @Test
  void a_writer_that_fails_leaves_the_earlier_file_whole() throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("a.txt"), "earlier", UTF_8);
    OutputFolder out = OutputFolder.open(folder);
    try (out) {
      assertThatThrownBy(
              () ->
                  out.write(
                      "a.txt",
                      stream -> {
                        stream.write('x');
                        throw new IOException("No space left on device");
                      }))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("check that the disk has room");
    }
    assertThat(folder.resolve("a.txt")).hasContent("earlier");
    assertThat(names()).containsExactly("a.txt");
  }

  @Test
  void a_full_disk_met_while_a_print_out_is_made_is_told_like_any_other() {
    OutputFolder out = OutputFolder.open(folder);
    try (out) {
      assertThatThrownBy(
              () ->
                  out.write(
                      "a.xlsx",
                      stream -> {
                        throw new UncheckedIOException(new IOException("No space left on device"));
                      }))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("a.xlsx")
          .hasMessageContaining("No space left on device");
    }
    assertThat(folder).doesNotExist();
  }

  @Test
  void a_folder_has_one_writer_at_a_time() {
    try (OutputFolder first = OutputFolder.open(folder)) {
      assertThat(first).isNotNull();
      assertThatThrownBy(() -> OutputFolder.open(folder))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("another barsheet is writing into this folder");
    }
    try (OutputFolder next = OutputFolder.open(folder)) {
      assertThat(next).isNotNull();
    }
  }

  @Test
  void two_programs_do_not_write_into_it_at_once() throws IOException, InterruptedException {
    Process other =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                FolderHolder.class.getName(),
                folder.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      assertThat(other.getInputStream().read()).as("the other program holds it").isEqualTo('h');
      assertThatThrownBy(() -> OutputFolder.open(folder))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("another barsheet is writing into this folder");
    } finally {
      other.getOutputStream().close();
      other.waitFor();
    }
    try (OutputFolder next = OutputFolder.open(folder)) {
      assertThat(next).isNotNull();
    }
  }

  @Test
  void a_file_in_the_place_of_the_folder_is_named() throws IOException {
    Files.writeString(folder, "not a folder", UTF_8);
    assertThatThrownBy(() -> OutputFolder.open(folder))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("a file already has this folder's name");
  }

  @Test
  void a_folder_in_the_place_of_a_file_stops_all_of_them() throws IOException {
    Files.createDirectories(folder.resolve("b.txt"));
    OutputFolder out = OutputFolder.open(folder);
    try (out) {
      out.write("a.txt", stream -> stream.write('a'));
      out.write("b.txt", stream -> stream.write('b'));
      assertThatThrownBy(out::publish)
          .isInstanceOf(InputException.class)
          .hasMessageContaining("b.txt: a folder already has this name");
    }
    assertThat(names()).containsExactly("b.txt");
  }

  @Test
  void folders_made_for_files_that_never_came_go_again() throws IOException {
    Files.createDirectories(folder.resolve("cards"));
    try (OutputFolder out = OutputFolder.open(folder)) {
      out.write("calls/a.txt", stream -> stream.write('a'));
      out.write("cards/b.txt", stream -> stream.write('b'));
    }
    assertThat(names()).containsExactly("cards");
  }

  private List<String> names() throws IOException {
    try (var walk = Files.walk(folder)) {
      return walk.filter(path -> !path.equals(folder))
          .map(path -> folder.relativize(path).toString())
          .sorted()
          .toList();
    }
  }
}
