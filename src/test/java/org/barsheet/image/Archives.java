package org.barsheet.image;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.apache.commons.compress.archivers.ArchiveEntry;
import org.apache.commons.compress.archivers.ArchiveOutputStream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.compressors.gzip.GzipCompressorOutputStream;

/** Packs a folder under its own name, with permissions and one time for all. */
final class Archives {

  private static final int PROGRAM = 0100755;
  private static final int FILE = 0100644;

  private Archives() {}

  static Path zip(Path folder, Path archive, Instant time) throws IOException {
    try (ZipArchiveOutputStream out = new ZipArchiveOutputStream(archive)) {
      pack(
          folder,
          out,
          (name, file) -> {
            ZipArchiveEntry entry = new ZipArchiveEntry(name);
            entry.setTime(time.toEpochMilli());
            entry.setUnixMode(mode(file));
            return entry;
          });
    }
    return archive;
  }

  static Path tarGz(Path folder, Path archive, Instant time) throws IOException {
    try (TarArchiveOutputStream out =
        new TarArchiveOutputStream(
            new GzipCompressorOutputStream(
                new BufferedOutputStream(Files.newOutputStream(archive))))) {
      out.setLongFileMode(TarArchiveOutputStream.LONGFILE_POSIX);
      pack(
          folder,
          out,
          (name, file) -> {
            TarArchiveEntry entry = new TarArchiveEntry(name);
            entry.setSize(Files.size(file));
            entry.setLastModifiedTime(FileTime.from(time));
            entry.setMode(mode(file));
            return entry;
          });
    }
    return archive;
  }

  /** Describes a file to an archive. */
  private interface Entries<E extends ArchiveEntry> {
    E of(String name, Path file) throws IOException;
  }

  private static <E extends ArchiveEntry> void pack(
      Path folder, ArchiveOutputStream<E> out, Entries<E> entries) throws IOException {
    for (Path file : Folders.files(folder)) {
      String name = folder.resolveSibling("").relativize(file).toString().replace('\\', '/');
      out.putArchiveEntry(entries.of(name, file));
      Files.copy(file, out);
      out.closeArchiveEntry();
    }
  }

  private static int mode(Path file) {
    return Files.isExecutable(file) ? PROGRAM : FILE;
  }
}
