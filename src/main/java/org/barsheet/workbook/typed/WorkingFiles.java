package org.barsheet.workbook.typed;

import java.io.Closeable;
import java.io.File;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.util.TempFileCreationStrategy;

/**
 * A folder of our own for what the spreadsheet library sets aside while it writes; by itself it
 * shares one folder between all people of a machine, which only the first of them may write into.
 */
public final class WorkingFiles implements TempFileCreationStrategy, Closeable {

  private final Path folder;

  public WorkingFiles() throws IOException {
    folder = Files.createTempDirectory("barsheet-");
  }

  @Override
  public File createTempFile(String prefix, String suffix) throws IOException {
    return Files.createTempFile(folder, prefix, suffix).toFile();
  }

  @Override
  public File createTempDirectory(String prefix) throws IOException {
    return Files.createTempDirectory(folder, prefix).toFile();
  }

  @Override
  public void close() throws IOException {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder)) {
      for (Path file : left) {
        Files.deleteIfExists(file);
      }
    }
    Files.deleteIfExists(folder);
  }
}
