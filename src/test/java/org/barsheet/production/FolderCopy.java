package org.barsheet.production;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Enumeration;
import java.util.HexFormat;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Whole folders: copied, unpacked, told by their checksums. */
public final class FolderCopy {

  private FolderCopy() {}

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).toList();
    }
  }

  /** Copies every file of a folder. */
  public static void copy(Path from, Path to) throws IOException {
    for (Path file : files(from)) {
      Path target = to.resolve(from.relativize(file).toString());
      Files.createDirectories(target.resolveSibling(""));
      Files.copy(file, target);
    }
  }

  /** Unpacks a zip; returns the folder. */
  public static Path unzip(Path zip, Path folder) throws IOException {
    try (ZipFile file = new ZipFile(zip.toFile())) {
      for (Enumeration<? extends ZipEntry> all = file.entries(); all.hasMoreElements(); ) {
        ZipEntry entry = all.nextElement();
        Path target = folder.resolve(entry.getName());
        Files.createDirectories(target.resolveSibling(""));
        try (InputStream in = file.getInputStream(entry)) {
          Files.copy(in, target);
        }
      }
    }
    return folder;
  }

  /** SHA-256 of every file by its path in the folder, folders parted with {@code /}. */
  public static SortedMap<String, String> checksums(Path folder) throws IOException {
    SortedMap<String, String> checksums = new TreeMap<>();
    for (Path file : files(folder)) {
      String name = folder.relativize(file).toString().replace('\\', '/');
      checksums.put(name, checksum(Files.readAllBytes(file)));
    }
    return checksums;
  }

  private static String checksum(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
