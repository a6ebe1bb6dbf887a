package org.barsheet.workbook.typed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkingFilesTest {

  @TempDir private Path all;

  /** A process number that is nobody's: Linux gives 4,194,304 at most (proc(5), pid_max). */
  private Path folder(String name) throws IOException {
    Path folder = Files.createDirectory(all.resolve("barsheet-99999999-" + name));
    Files.writeString(folder.resolve("sheet1.xml"), "half a sheet");
    return folder;
  }

  @Test
  void what_a_killed_program_set_aside_goes() throws IOException {
    Path dead = folder("1");
    Files.createFile(dead.resolve("lock"));
    WorkingFiles.clearDead(all);
    assertThat(dead).doesNotExist();
  }

  @Test
  void what_another_program_has_not_locked_yet_stays_and_so_does_anybody_elses()
      throws IOException {
    Path beginning = folder("2");
    Path theirs = Files.createDirectory(all.resolve("theirs"));
    Files.createFile(theirs.resolve("lock"));
    Path link = Files.createSymbolicLink(all.resolve("barsheet-99999999-3"), theirs);
    WorkingFiles.clearDead(all);
    assertThat(beginning.resolve("sheet1.xml")).exists();
    assertThat(link).exists();
    assertThat(theirs.resolve("lock")).exists();
  }

  @Test
  void what_we_set_aside_stays_until_we_are_done() throws IOException {
    Path set;
    try (WorkingFiles working = new WorkingFiles()) {
      set = working.createTempFile("sheet", ".xml").toPath();
      WorkingFiles.clearDead(set.resolve("../..").normalize());
      assertThat(set).exists();
    }
    assertThat(set.getParent()).doesNotExist();
  }
}
