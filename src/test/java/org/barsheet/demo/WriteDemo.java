package org.barsheet.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.barsheet.demo.drawing.PanelFiles;

/**
 * Writes the demo production's score and panel drawings into a folder, after {@code mvn
 * test-compile}: {@code java -cp target/test-classes:target/classes org.barsheet.demo.WriteDemo
 * scores}.
 */
public final class WriteDemo {

  static final String SCORE = "lamplighters-quay.mid";

  private WriteDemo() {}

  /** The first argument is the folder, usually {@code scores}. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    Files.createDirectories(folder);
    Files.write(folder.resolve(SCORE), ScoreFile.bytes(LamplightersQuay.compose()));
    PanelFiles.write(folder.resolve("panels"));
  }
}
