package org.barsheet.plan.edit;

import java.nio.file.Path;
import java.util.Arrays;

/** A file of a plan before and after its values changed. */
public final class EditedFile {

  private final Path file;
  private final byte[] before;
  private final byte[] after;

  EditedFile(Path file, byte[] before, byte[] after) {
    this.file = file;
    this.before = before;
    this.after = after;
  }

  /** The file, as the plan names it. */
  public Path file() {
    return file;
  }

  /** What it held when it was read. */
  public byte[] before() {
    return before.clone();
  }

  /** What it is to hold. */
  public byte[] after() {
    return after.clone();
  }

  /** Whether some bytes are those it held when it was read. */
  public boolean isBefore(byte[] bytes) {
    return Arrays.equals(before, bytes);
  }
}
