package org.barsheet.photographs;

import org.barsheet.exposure.FileNames;

/**
 * One photograph that the plan asks for.
 *
 * @param name permanent: {@code small-lamp 014}, {@code small-lamp clean}
 * @param number its number within its movement, -1 for a plate without one
 * @param amount how far the movement has gone, in its own unit, as the hand sets it
 * @param heldBy what the card says that holds it, or ""
 */
public record PlannedPhotograph(String name, int number, double amount, String heldBy) {

  /** A photograph of something at rest. */
  static PlannedPhotograph plate(String name) {
    return new PlannedPhotograph(name, -1, 0, "");
  }

  /** Its file's name without the extension, which is the camera's. */
  public String fileName() {
    return FileNames.ofPhotograph(name);
  }
}
