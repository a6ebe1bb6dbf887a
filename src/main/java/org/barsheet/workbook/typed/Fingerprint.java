package org.barsheet.workbook.typed;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

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
  static String of(ZipFile workbook) {
    List<String> lines = new ArrayList<>();
    for (ZipArchiveEntry entry : Collections.list(workbook.getEntries())) {
      if (!entry.getName().equals(KEPT_IN)) {
        lines.add(entry.getName() + " " + entry.getSize() + " " + entry.getCrc());
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
