package org.barsheet.workbook.typed;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.barsheet.text.Sha256;

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
    return Sha256.hex(String.join("\n", lines));
  }
}
