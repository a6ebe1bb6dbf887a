package org.barsheet.workbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Tells whether a workbook is still as we wrote it. A workbook is a zip archive; the fingerprint is
 * the SHA-256 of the names, lengths and checksums of all entries but the one that holds the
 * fingerprint itself. Any program that saves the workbook writes some entry anew.
 */
final class Fingerprint {

  /** The entry with the document's own properties, where the fingerprint is kept. */
  static final String KEPT_IN = "docProps/custom.xml";

  private Fingerprint() {}

  /** 64 hexadecimal digits. */
  static String of(Path workbook) throws IOException {
    List<String> lines = new ArrayList<>();
    try (ZipFile zip = new ZipFile(workbook.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        if (!entry.getName().equals(KEPT_IN)) {
          lines.add(entry.getName() + " " + entry.getSize() + " " + entry.getCrc());
        }
      }
    }
    Collections.sort(lines);
    byte[] text = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    return HexFormat.of().formatHex(sha256().digest(text));
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java platform has SHA-256", impossible);
    }
  }
}
