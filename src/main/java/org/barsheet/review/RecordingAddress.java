package org.barsheet.review;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The address of a file as a page in a folder writes it (RFC 3986). */
final class RecordingAddress {

  private static final String UNRESERVED =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~";

  private RecordingAddress() {}

  /**
   * A file seen from a folder: a relative reference, or the file's own address where it lies on
   * another drive.
   */
  static String of(Path file, Path folder) {
    Path from = folder.toAbsolutePath().normalize();
    Path to = file.toAbsolutePath().normalize();
    if (!String.valueOf(from.getRoot()).equals(String.valueOf(to.getRoot()))) {
      return to.toUri().toString();
    }
    List<String> names = new ArrayList<>();
    from.relativize(to).forEach(name -> names.add(encoded(name.toString())));
    return String.join("/", names);
  }

  /** Every byte but unreserved ones written with %, so that no name is read as a scheme. */
  private static String encoded(String name) {
    StringBuilder text = new StringBuilder();
    for (byte each : name.getBytes(StandardCharsets.UTF_8)) {
      char letter = (char) (each & 0xFF);
      if (UNRESERVED.indexOf(letter) >= 0) {
        text.append(letter);
      } else {
        text.append('%').append("%02X".formatted(each & 0xFF));
      }
    }
    return text.toString();
  }
}
