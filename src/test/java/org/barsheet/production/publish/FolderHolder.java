package org.barsheet.production.publish;

import java.io.IOException;
import java.nio.file.Path;

/** A program that holds a folder until it is told to let go. */
final class FolderHolder {

  private FolderHolder() {}

  public static void main(String[] args) throws IOException {
    try (OutputFolder held = OutputFolder.open(Path.of(args[0]))) {
      System.out.print(held.folder().toString().isEmpty() ? '-' : 'h');
      System.out.flush();
      while (System.in.read() >= 0) {
        // Until the end of the input.
      }
    }
  }
}
