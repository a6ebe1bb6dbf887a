package org.barsheet.image;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.barsheet.score.MidiBytes;
import org.barsheet.sound.SoundFontBytes;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The archives as a person meets them: {@code mvn -Pimage verify}, after they are built. */
@Tag("image")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ImageTest {

  private static final Path TARGET = Path.of("target").toAbsolutePath();

  private Path folder = TARGET;
  private Path tools = TARGET;
  private Path program = TARGET;

  /**
   * What a program printed, on both outputs, and its exit status.
   *
   * @param said all of it
   */
  private record Run(String said, int status) {}

  @BeforeAll
  void unpack(@TempDir Path anywhere) throws Exception {
    folder = anywhere;
    tools = Files.createDirectories(folder.resolve("tools"));
    linkTools(tools);
    Path home = Files.createDirectories(folder.resolve("my programs"));
    assertThat(run(home, "tar", "xzf", archive(".tar.gz").toString()).status()).isZero();
    program = onlyFolder(home);
  }

  private static Path archive(String ending) throws IOException {
    try (Stream<Path> files = Files.list(TARGET)) {
      return files.filter(file -> file.toString().endsWith(ending)).findFirst().orElseThrow();
    }
  }

  private static Path onlyFolder(Path home) throws IOException {
    try (Stream<Path> files = Files.list(home)) {
      return files.findFirst().orElseThrow();
    }
  }

  /** Runs a program where no Java is to be found. */
  private Run run(Path in, String... command) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(command).directory(in.toFile());
    builder.environment().remove("JAVA_HOME");
    builder.environment().put("PATH", tools.toString());
    Process process = builder.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    return new Run(said, process.waitFor());
  }

  private static void linkTools(Path tools) throws IOException {
    for (String tool : List.of("sh", "dirname", "readlink", "tar", "gzip", "sha256sum")) {
      Path there =
          Stream.of(System.getenv("PATH").split(":", -1))
              .map(path -> Path.of(path, tool))
              .filter(Files::isExecutable)
              .findFirst()
              .orElseThrow();
      Path link = tools.resolve(tool);
      Files.writeString(link, "#!/bin/sh\nexec " + there + " \"$@\"\n");
      assertThat(link.toFile().setExecutable(true)).isTrue();
    }
  }

  private Run barsheet(String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of(program.resolve("barsheet").toString()));
    command.addAll(List.of(words));
    return run(folder, command.toArray(String[]::new));
  }

  @Test
  void it_makes_the_demo_byte_for_byte_in_a_folder_with_spaces_and_without_a_java()
      throws Exception {
    String plan = program.resolve("demo/lamplighters-quay.yaml").toString();
    Run made = barsheet("make", plan, "--out", "the sheets");
    assertThat(made.status()).as(made.said()).isZero();
    for (Path file : Folders.files(folder.resolve("the sheets"))) {
      Path name = folder.resolve("the sheets").relativize(file);
      assertThat(file).hasSameBinaryContentAs(Path.of("sheets").resolve(name.toString()));
    }
  }

  @Test
  void it_tells_its_version() throws Exception {
    String version = String.valueOf(program.getFileName());
    assertThat(barsheet("--version")).isEqualTo(new Run(version.replace('-', ' ') + "\n", 0));
  }

  /** {@code -Xshare:on} ends with an error where the class data cannot be used. */
  @Test
  void its_class_data_can_be_used_where_it_was_unpacked() throws Exception {
    String java = program.resolve("runtime/bin/java").toString();
    Run run =
        run(
            folder,
            java,
            "-Xshare:on",
            "-Xlog:class+load:stdout",
            "-m",
            "barsheet/org.barsheet.cli.Barsheet",
            "--version");
    assertThat(run.status()).as(run.said()).isZero();
    assertThat(run.said()).containsPattern("org.barsheet.cli.Barsheet source: shared objects file");
  }

  @Test
  void it_plays_the_guide_with_the_synthesizer_of_its_own_runtime() throws Exception {
    Path film = Files.createDirectories(folder.resolve("film"));
    MidiBytes.write(film, MidiBytes.file().track(MidiBytes.Track.scale(480)).bytes());
    Path score = Folders.files(film).get(0);
    Path plan = film.resolve("plan.yaml");
    Files.writeString(
        plan,
        "title: Quay\nscore: "
            + score.getFileName()
            + "\nfilm: {frame-rate: 24}\npanels: [{panel: 1}]\n");
    Path bank = film.resolve("tone.sf2");
    Files.write(bank, SoundFontBytes.of(List.of(new SoundFontBytes.Preset(0, 0, "Tone"))));
    Run made = barsheet("make", plan.toString(), "--sound-bank", bank.toString());
    assertThat(made.said()).contains("plan-guide.wav", "the guide is played with tone.sf2");
    assertThat(made.status()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {".zip", ".tar.gz"})
  void the_checksums_are_those_of_the_archives(String ending) throws Exception {
    assertThat(Files.readString(TARGET.resolve("SHA256SUMS")))
        .contains("  " + archive(ending).getFileName() + "\n");
    assertThat(run(TARGET, "sha256sum", "--check", "SHA256SUMS").status()).isZero();
  }

  @Test
  void every_command_has_a_manual_page_and_every_library_a_license() throws IOException {
    assertThat(program.resolve("man/man1/barsheet.1")).exists();
    assertThat(Files.readString(program.resolve("man/man1/barsheet-make.1")))
        .contains(".TH BARSHEET-MAKE 1", ".SH SYNOPSIS", "\\-\\-sound\\-bank");
    assertThat(Files.readString(program.resolve("LICENSES.txt")))
        .contains("picocli-", "poi-ooxml-", "gson-", "snakeyaml-engine-", "Apache License")
        .doesNotContain("junit");
    assertThat(program.resolve("completions/barsheet")).isNotEmptyFile();
    assertThat(program.resolve("runtime/legal/java.base")).isNotEmptyDirectory();
  }
}
