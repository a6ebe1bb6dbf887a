package org.barsheet.image;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.barsheet.cli.Barsheet;
import picocli.AutoComplete;
import picocli.CommandLine;

/**
 * Writes what people install: the program with a runtime of its own, the demo, completions, manual
 * pages and licenses, as {@code barsheet-<version>-<platform>.zip} and {@code .tar.gz}, and as
 * {@code .deb} where dpkg-deb is at hand.
 */
final class WriteImage {

  private static final Path DEMO = Path.of("scores");
  private static final Path LAUNCHER = Path.of("src", "main", "launcher");

  private final Path target;
  private final String version;
  private final Instant time;
  private final Path image;

  private WriteImage(Path target, String version, Instant time) {
    this.target = target;
    this.version = version;
    this.time = time;
    this.image = target.resolve("image").resolve("barsheet-" + version);
  }

  /**
   * Writes the archives.
   *
   * @param args the folder that holds the jar and takes the archives, the version, the time every
   *     file in them bears
   */
  public static void main(String[] args) throws Exception {
    TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
    WriteImage writer = new WriteImage(Path.of(args[0]), args[1], Instant.parse(args[2]));
    writer.writeImage();
    writer.writeArchives();
  }

  /** {@code linux-x64}, {@code macos-aarch64}, {@code windows-x64}. */
  static String platform() {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    String name =
        system.startsWith("win") ? "windows" : system.startsWith("mac") ? "macos" : "linux";
    return name + "-" + System.getProperty("os.arch", "").replaceAll("amd64|x86_64", "x64");
  }

  private void writeImage() throws IOException, InterruptedException {
    Folders.delete(target.resolve("image"));
    Files.createDirectories(image);
    boolean windows = platform().startsWith("windows");
    copy(LAUNCHER.resolve(windows ? "barsheet.cmd" : "barsheet"));
    OwnRuntime.write(
        target.resolve("barsheet.jar"),
        version,
        image.resolve("runtime"),
        LauncherOptions.of(LAUNCHER.resolve("barsheet")),
        DEMO.resolve("lamplighters-quay.yaml"));
    Folders.copy(DEMO, image.resolve("demo"));
    CommandLine program = new CommandLine(Barsheet.class);
    write("completions/barsheet", AutoComplete.bash("barsheet", program));
    for (ManualPage page : ManualPage.all(program, version)) {
      write("man/man1/" + page.name() + ".1", page.text());
    }
    write("LICENSES.txt", Licenses.of(target.resolve("barsheet.jar")));
    copy(Path.of("README.md"));
  }

  private void copy(Path file) throws IOException {
    Path copy = image.resolve(String.valueOf(file.getFileName()));
    Files.copy(file, copy, StandardCopyOption.COPY_ATTRIBUTES);
  }

  private void write(String name, String text) throws IOException {
    Path file = image.resolve(name);
    Files.createDirectories(file.resolveSibling(""));
    Files.writeString(file, text);
  }

  private void writeArchives() throws IOException, InterruptedException, GeneralSecurityException {
    String name = "barsheet-" + version + "-" + platform();
    List<Path> archives = new ArrayList<>();
    archives.add(Archives.zip(image, target.resolve(name + ".zip"), time));
    archives.add(Archives.tarGz(image, target.resolve(name + ".tar.gz"), time));
    DebPackage.write(image, target, version, time).ifPresent(archives::add);
    StringBuilder sums = new StringBuilder();
    for (Path archive : archives) {
      sums.append(sha256(archive)).append("  ").append(archive.getFileName()).append('\n');
    }
    Files.writeString(target.resolve("SHA256SUMS"), sums, StandardCharsets.UTF_8);
    System.out.print(sums);
  }

  private static String sha256(Path file) throws IOException, GeneralSecurityException {
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
    return HexFormat.of().formatHex(digest);
  }

  /** The options the launcher gives to Java, which the runtime is to give to itself. */
  private static final class LauncherOptions {
    static String of(Path launcher) throws IOException {
      try (Stream<String> lines = Files.lines(launcher)) {
        return lines
            .filter(line -> line.startsWith("options=\""))
            .map(line -> line.substring("options=\"".length(), line.length() - 1))
            .findFirst()
            .orElseThrow();
      }
    }
  }
}
