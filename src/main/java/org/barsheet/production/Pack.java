package org.barsheet.production;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.time.LocalDateTime;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.text.Sha256;

/** Writes files into one zip, with a list of their checksums. */
final class Pack {

  /** The list, as {@code sha256sum --check} of the GNU core utilities reads it. */
  static final String CHECKSUMS = "SHA256SUMS";

  /** The first moment a zip can tell, so that the same files make the same zip. */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private Pack() {}

  /**
   * Writes a zip, whole or not at all.
   *
   * @param files by their names in the zip, folders parted with {@code /}
   * @throws InputException if a file cannot be read or the zip cannot be written
   */
  static void write(Path zip, SortedMap<String, Path> files) {
    NewFile.write(zip, out -> write(out, files));
  }

  private static void write(OutputStream out, SortedMap<String, Path> files) throws IOException {
    StringBuilder checksums = new StringBuilder();
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    for (Map.Entry<String, Path> file : files.entrySet()) {
      zip.putNextEntry(entry(file.getKey()));
      checksums
          .append(copied(file.getValue(), zip))
          .append("  ")
          .append(file.getKey())
          .append('\n');
      zip.closeEntry();
    }
    zip.putNextEntry(entry(CHECKSUMS));
    zip.write(checksums.toString().getBytes(StandardCharsets.UTF_8));
    zip.finish();
  }

  private static ZipEntry entry(String name) {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(TIME);
    return entry;
  }

  /** Copies a file; returns its checksum in hexadecimal digits. */
  private static String copied(Path file, OutputStream out) throws IOException {
    MessageDigest digest = Sha256.digest();
    try (InputStream in = new DigestInputStream(opened(file), digest)) {
      in.transferTo(out);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static InputStream opened(Path file) {
    try {
      return Files.newInputStream(file);
    } catch (IOException unreadable) {
      throw new InputException(
          Problem.ofFile(
              file.toString(), "this file cannot be read", "check that you're allowed to open it"));
    }
  }
}
