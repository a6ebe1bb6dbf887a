package org.barsheet.production;

import java.nio.file.Path;
import java.util.List;

/**
 * A film packed into one zip.
 *
 * @param files their names in the zip, in order, without the list of checksums
 * @param missing files the plan names that are not there
 */
public record Packed(List<String> files, List<Path> missing) {

  public Packed {
    files = List.copyOf(files);
    missing = List.copyOf(missing);
  }
}
