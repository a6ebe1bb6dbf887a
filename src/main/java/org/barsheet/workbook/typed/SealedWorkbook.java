package org.barsheet.workbook.typed;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Collections;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.ZipException;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipExtraField;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/** A finished workbook with its fingerprint in it. */
public final class SealedWorkbook {

  /** Stands in the raw workbook where the fingerprint belongs. */
  public static final String PLACEHOLDER = "0".repeat(64);

  /** Stands in a workbook that nobody has typed into. */
  public static final String NOTHING_TYPED = "nothing typed";

  /** Every entry's time, the same in every workbook: archives hold times of no zone. */
  private static final LocalDateTime ENTRY_TIME = LocalDateTime.of(1980, 1, 1, 12, 0);

  private SealedWorkbook() {}

  /** The moment at which clocks here show that time: it is written as they show it. */
  private static long entryTime() {
    return ENTRY_TIME.atZone(ZoneId.systemDefault()).toInstant().toEpochMilli();
  }

  /** Copies a raw workbook entry by entry, with fixed times and the placeholder filled in. */
  public static byte[] seal(byte[] raw) throws IOException {
    ByteArrayOutputStream sealed = new ByteArrayOutputStream(raw.length + 1024);
    try (ZipFile from =
            ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(raw)).get();
        ZipArchiveOutputStream to = new ZipArchiveOutputStream(sealed)) {
      String fingerprint = Fingerprint.of(from);
      for (ZipArchiveEntry entry : Collections.list(from.getEntriesInPhysicalOrder())) {
        if (entry.getName().equals(Fingerprint.KEPT_IN)) {
          fillIn(to, entry.getName(), text(from, entry).replace(PLACEHOLDER, fingerprint));
        } else {
          copy(from, entry, to);
        }
      }
    }
    return sealed.toByteArray();
  }

  private static void copy(ZipFile from, ZipArchiveEntry entry, ZipArchiveOutputStream to)
      throws IOException {
    ZipArchiveEntry copy = new ZipArchiveEntry(entry);
    copy.setTime(entryTime());
    copy.setExtraFields(new ZipExtraField[0]); // they hold times once more, counted in UTC
    to.addRawArchiveEntry(copy, from.getRawInputStream(entry));
  }

  private static void fillIn(ZipArchiveOutputStream to, String name, String text)
      throws IOException {
    ZipArchiveEntry filled = new ZipArchiveEntry(name);
    filled.setTime(entryTime());
    to.putArchiveEntry(filled);
    to.write(text.getBytes(StandardCharsets.UTF_8));
    to.closeArchiveEntry();
  }

  private static String text(ZipFile from, ZipArchiveEntry entry) throws IOException {
    try (InputStream content = from.getInputStream(entry)) {
      return new String(content.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /**
   * Whether a file is a workbook exactly as it was sealed, and nothing in it was carried over from
   * people: then there is nothing to read out of it.
   */
  static boolean holdsNothingTyped(Path workbook) {
    return says(workbook, NOTHING_TYPED);
  }

  /**
   * Whether a file is a workbook exactly as it was sealed. A program that saved it without a change
   * counts as having changed it.
   */
  public static boolean isUntouched(Path workbook) {
    return says(workbook, "");
  }

  /** Throws an exception of some kind where a file is no archive, or not as its checksums say. */
  static void checkContent(Path workbook) throws IOException {
    try (ZipFile zip = ZipFile.builder().setPath(workbook).get()) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        CRC32 found = new CRC32();
        try (InputStream content = new CheckedInputStream(zip.getInputStream(entry), found)) {
          content.transferTo(OutputStream.nullOutputStream());
        }
        if (found.getValue() != entry.getCrc()) {
          throw new ZipException(entry.getName() + " doesn't match its checksum");
        }
      }
    }
  }

  /** Whether a file is a workbook as it was sealed, with these words beside its fingerprint. */
  private static boolean says(Path workbook, String words) {
    try (ZipFile zip = ZipFile.builder().setPath(workbook).get()) {
      ZipArchiveEntry kept = zip.getEntry(Fingerprint.KEPT_IN);
      String said = kept == null ? "" : text(zip, kept);
      return said.contains(words) && said.contains(Fingerprint.of(zip));
    } catch (IOException | RuntimeException damaged) {
      // No archive, or one whose numbers are wrong: not as it was sealed.
      return false;
    }
  }
}
