package org.barsheet.photographs;

import java.nio.file.Path;

/**
 * A photograph as it came out of a camera.
 *
 * @param file where it is
 * @param facts what its file says of it
 */
public record Taken(Path file, PhotoFacts facts) {

  /** Its file's name without folders. */
  public String name() {
    return String.valueOf(file.getFileName());
  }

  /** {@code .JPG}, as the camera writes it. */
  public String ending() {
    String name = name();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(dot) : ".jpg";
  }
}
