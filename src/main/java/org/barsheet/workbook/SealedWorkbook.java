package org.barsheet.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** Puts the fingerprint of a finished workbook into it. */
final class SealedWorkbook {

  /** Stands in the raw workbook where the fingerprint belongs. */
  static final String PLACEHOLDER = "0".repeat(64);

  /** Every entry's time: midnight of 1 January 1980 UTC, near the first a zip archive can say. */
  private static final long ENTRY_TIME = 315_532_800_000L;

  private SealedWorkbook() {}

  /** Copies a raw workbook entry by entry, with fixed times and the placeholder filled in. */
  static void seal(Path raw, Path sealed) throws IOException {
    String fingerprint = Fingerprint.of(raw);
    try (ZipFile from = ZipFile.builder().setPath(raw).get();
        ZipArchiveOutputStream to = new ZipArchiveOutputStream(sealed)) {
      for (ZipArchiveEntry entry : Collections.list(from.getEntriesInPhysicalOrder())) {
        if (entry.getName().equals(Fingerprint.KEPT_IN)) {
          fillIn(from, entry, fingerprint, to);
        } else {
          ZipArchiveEntry copy = new ZipArchiveEntry(entry);
          copy.setTime(ENTRY_TIME);
          copy.setExtra(new byte[0]);
          to.addRawArchiveEntry(copy, from.getRawInputStream(entry));
        }
      }
    }
  }

  private static void fillIn(
      ZipFile from, ZipArchiveEntry entry, String fingerprint, ZipArchiveOutputStream to)
      throws IOException {
    String text;
    try (InputStream content = from.getInputStream(entry)) {
      text = new String(content.readAllBytes(), StandardCharsets.UTF_8);
    }
    ZipArchiveEntry filled = new ZipArchiveEntry(entry.getName());
    filled.setTime(ENTRY_TIME);
    to.putArchiveEntry(filled);
    to.write(text.replace(PLACEHOLDER, fingerprint).getBytes(StandardCharsets.UTF_8));
    to.closeArchiveEntry();
  }
}
