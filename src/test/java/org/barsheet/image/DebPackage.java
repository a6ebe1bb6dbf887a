package org.barsheet.image;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;

/** The same as a package of Debian, where its tool dpkg-deb is at hand. */
final class DebPackage {

  private DebPackage() {}

  /** Writes {@code barsheet_<version>_<architecture>.deb}; nothing where the tool is missing. */
  static Optional<Path> write(Path image, Path target, String version, Instant time)
      throws IOException, InterruptedException {
    String architecture;
    try {
      Process asked = new ProcessBuilder("dpkg", "--print-architecture").start();
      architecture = new String(asked.getInputStream().readAllBytes(), UTF_8).strip();
    } catch (IOException noSuchTool) {
      return Optional.empty();
    }
    Path tree = target.resolve("image").resolve("deb");
    fill(tree, image);
    Files.createDirectories(tree.resolve("DEBIAN"));
    Files.writeString(tree.resolve("DEBIAN/control"), control(version, architecture));
    Path file = target.resolve("barsheet_" + version + "_" + architecture + ".deb");
    ProcessBuilder builder =
        new ProcessBuilder(
            List.of(
                "dpkg-deb",
                "--root-owner-group",
                "-Zgzip",
                "--build",
                tree.toString(),
                file.toString()));
    builder.environment().put("SOURCE_DATE_EPOCH", Long.toString(time.getEpochSecond()));
    Process process = builder.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    if (process.waitFor() != 0) {
      throw new IOException("dpkg-deb: " + said);
    }
    return Optional.of(file);
  }

  private static void fill(Path tree, Path image) throws IOException {
    Path program = tree.resolve("usr/lib/barsheet");
    for (String part : List.of("runtime", "demo")) {
      Folders.copy(image.resolve(part), program.resolve(part));
    }
    copy(image.resolve("barsheet"), program.resolve("barsheet"));
    copy(
        image.resolve("completions/barsheet"),
        tree.resolve("usr/share/bash-completion/completions/barsheet"));
    copy(image.resolve("README.md"), tree.resolve("usr/share/doc/barsheet/README.md"));
    copy(image.resolve("LICENSES.txt"), tree.resolve("usr/share/doc/barsheet/copyright"));
    Path manual = Files.createDirectories(tree.resolve("usr/share/man/man1"));
    for (Path page : Folders.files(image.resolve("man/man1"))) {
      Path packed = manual.resolve(page.getFileName() + ".gz");
      try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed))) {
        Files.copy(page, out);
      }
    }
    Path programs = Files.createDirectories(tree.resolve("usr/bin"));
    Files.createSymbolicLink(programs.resolve("barsheet"), Path.of("../lib/barsheet/barsheet"));
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to.resolveSibling(""));
    Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES);
  }

  private static String control(String version, String architecture) {
    return """
        Package: barsheet
        Version: %s
        Architecture: %s
        Depends: libc6, zlib1g, libfreetype6, libharfbuzz0b, liblcms2-2, libjpeg62-turbo, libgif7
        Maintainer: barsheet <barsheet@localhost>
        Section: video
        Priority: optional
        Description: Timing sheets for frame-by-frame film
         Reads a MIDI score and a director's plan, and writes an exposure-sheet
         workbook, cue files and a review page.
        """
        .formatted(version, architecture);
  }
}
