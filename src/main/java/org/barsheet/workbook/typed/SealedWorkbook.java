package org.barsheet.workbook.typed;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.zip.ZipException;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/** A finished workbook with its fingerprint in it. */
public final class SealedWorkbook {

  /** Stands in the raw workbook where the fingerprint belongs. */
  public static final String PLACEHOLDER = "0".repeat(64);

  /** Stands in a workbook that nobody has typed into. */
  public static final String NOTHING_TYPED = "nothing typed";

  /** Every entry's time, the same in every workbook: noon of 1 January 1980, UTC. */
  private static final long ENTRY_TIME = 315_576_000_000L;

  private SealedWorkbook() {}

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
    copy.setTime(ENTRY_TIME);
    to.addRawArchiveEntry(copy, from.getRawInputStream(entry));
  }

  private static void fillIn(ZipArchiveOutputStream to, String name, String text)
      throws IOException {
    ZipArchiveEntry filled = new ZipArchiveEntry(name);
    filled.setTime(ENTRY_TIME);
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
  static boolean holdsNothingTyped(Path workbook) throws IOException {
    try (ZipFile zip = ZipFile.builder().setPath(workbook).get()) {
      ZipArchiveEntry kept = zip.getEntry(Fingerprint.KEPT_IN);
      String said = kept == null ? "" : text(zip, kept);
      return said.contains(NOTHING_TYPED) && said.contains(Fingerprint.of(zip));
    } catch (ZipException noArchive) {
      return false;
    }
  }

  /**
   * Whether a file is a workbook exactly as it was sealed. A program that saved it without a change
   * counts as having changed it.
   */
  public static boolean isUntouched(Path workbook) throws IOException {
    try (ZipFile zip = ZipFile.builder().setPath(workbook).get()) {
      ZipArchiveEntry kept = zip.getEntry(Fingerprint.KEPT_IN);
      return kept != null && text(zip, kept).contains(Fingerprint.of(zip));
    } catch (ZipException noArchive) {
      return false;
    }
  }
}
