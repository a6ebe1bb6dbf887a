package org.barsheet.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {

  @TempDir Path folder = Path.of("set by the test runner");

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private long filesInFolder() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.count();
    }
  }

  @Test
  void a_new_file_holds_what_was_written_and_nothing_lies_beside_it() throws IOException {
    SafeFile.write(folder.resolve("cues.csv"), bytes("lamp"));
    assertThat(folder.resolve("cues.csv")).hasContent("lamp");
    assertThat(filesInFolder()).isEqualTo(1);
  }

  @Test
  void an_old_file_is_replaced() throws IOException {
    Path file = Files.writeString(folder.resolve("cues.csv"), "a much longer old content");
    SafeFile.write(file, bytes("new"));
    assertThat(file).hasContent("new");
  }

  @Test
  void a_failure_half_way_leaves_the_old_file_whole() throws IOException {
    Path file = Files.writeString(folder.resolve("cues.csv"), "old");
    assertThatThrownBy(
            () ->
                SafeFile.write(
                    file,
                    out -> {
                      out.write(bytes("half"));
                      throw new IOException("No space left on device");
                    }))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("cues.csv: this file cannot be written (No space left on device)")
        .hasMessageContaining("check that the disk has room");
    assertThat(file).hasContent("old");
    assertThat(filesInFolder()).isEqualTo(1);
  }

  @Test
  void a_bug_half_way_leaves_the_old_file_whole_too() throws IOException {
    Path file = Files.writeString(folder.resolve("cues.csv"), "old");
    assertThatThrownBy(
            () ->
                SafeFile.write(
                    file,
                    out -> {
                      throw new IllegalStateException("ours");
                    }))
        .isInstanceOf(IllegalStateException.class);
    assertThat(file).hasContent("old");
    assertThat(filesInFolder()).isEqualTo(1);
  }

  @Test
  void a_folder_in_the_way_is_told() throws IOException {
    Path file = Files.createDirectory(folder.resolve("cues.csv"));
    assertThatThrownBy(() -> SafeFile.write(file, bytes("x")))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("a folder stands where this file is to go");
  }

  @Test
  void a_missing_folder_is_told() {
    assertThatThrownBy(() -> SafeFile.write(folder.resolve("no/cues.csv"), bytes("x")))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("there is no folder to write this file into");
  }

  @Test
  void a_link_is_followed() throws IOException {
    Path real = Files.writeString(folder.resolve("real.csv"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("link.csv"), real);
    SafeFile.write(link, bytes("new"));
    assertThat(link).isSymbolicLink();
    assertThat(real).hasContent("new");
  }

  @Test
  void a_new_file_may_be_read_by_whoever_may_read_any_new_file() throws IOException {
    assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Path plain = Files.writeString(folder.resolve("plain.csv"), "x");
    Path safe = folder.resolve("safe.csv");
    SafeFile.write(safe, bytes("x"));
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(safe)))
        .isEqualTo(PosixFilePermissions.toString(Files.getPosixFilePermissions(plain)));
  }

  @Test
  void a_neighbour_left_by_a_killed_run_is_no_hindrance() throws IOException {
    long process = ProcessHandle.current().pid();
    Files.writeString(folder.resolve(".barsheet-" + process + "-0.part"), "left over");
    SafeFile.write(folder.resolve("cues.csv"), bytes("new"));
    assertThat(folder.resolve("cues.csv")).hasContent("new");
  }
}
