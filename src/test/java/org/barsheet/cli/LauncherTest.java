package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The small script beside the jar, with a Java that only says what it is asked for. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "it is a script for sh")
class LauncherTest {

  private static final List<String> OPTIONS =
      List.of(
          "-XX:TieredStopAtLevel=1",
          "-XX:+UseSerialGC",
          "-Xms128m",
          "-Xlog:disable",
          "-Xlog:all=error:stderr");

  @TempDir Path folder;

  private Path target;
  private Path link;

  @BeforeEach
  void build() throws IOException {
    target = Files.createDirectories(folder.resolve("a build")).toRealPath();
    Path launcher = target.resolve("barsheet");
    Files.copy(Path.of("src", "main", "launcher", "barsheet"), launcher);
    assertThat(launcher.toFile().setExecutable(true)).isTrue();
    Files.writeString(target.resolve("barsheet.jar"), "");
    Path tools = Files.createDirectories(folder.resolve("tools"));
    for (String tool : List.of("dirname", "readlink", "sed", "mv", "rm", "touch")) {
      Path path = tools.resolve(tool);
      Files.writeString(path, "#!/bin/sh\nexec " + whereIs(tool) + " \"$@\"\n");
      assertThat(path.toFile().setExecutable(true)).isTrue();
    }
    link = Files.createSymbolicLink(folder.resolve("linked"), launcher);
  }

  private static Path whereIs(String tool) {
    return Stream.of(System.getenv("PATH").split(":"))
        .map(path -> Path.of(path, tool))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow();
  }

  /** A Java that ends with status 3 and makes the class data it is asked for. */
  private Path writeJava(Path home, String version) throws IOException {
    Path java = Files.createDirectories(home).resolve("java");
    Files.writeString(
        java,
        """
        #!/bin/sh
        case $1 in
          -version) echo 'openjdk version "%s" 2025-04-15' >&2; exit 0 ;;
          -Xshare:dump) touch "${4#*=}"; exit 0 ;;
        esac
        printf '%%s\\n' "$@"
        exit 3
        """
            .formatted(version));
    assertThat(java.toFile().setExecutable(true)).isTrue();
    return java;
  }

  /**
   * What a run said, and with which status it ended.
   *
   * @param said on both outputs
   */
  private record Run(List<String> said, int status) {}

  private Run run(String home, String... words) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(link.toString());
    builder.command().addAll(List.of(words));
    builder.environment().remove("JAVA_HOME");
    if (!home.isEmpty()) {
      builder.environment().put("JAVA_HOME", home);
    }
    builder.environment().put("PATH", folder.resolve("bin") + ":" + folder.resolve("tools"));
    Process process = builder.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    return new Run(said.lines().toList(), process.waitFor());
  }

  private List<String> jar(String... words) {
    return Stream.of(
            OPTIONS, List.of("-jar", target.resolve("barsheet.jar").toString()), List.of(words))
        .flatMap(List::stream)
        .toList();
  }

  private Path classes() {
    return target.resolve(".barsheet-java-17.0.15.jsa");
  }

  private List<String> hidden() throws IOException {
    try (Stream<Path> files = Files.list(target)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(n -> n.startsWith("."))
          .toList();
    }
  }

  @Test
  void it_runs_the_jar_beside_it_with_the_words_and_status_unchanged() throws Exception {
    writeJava(folder.resolve("bin"), "17.0.15");
    assertThat(run("", "check", "my plan.yaml", "--out", "*"))
        .isEqualTo(new Run(jar("check", "my plan.yaml", "--out", "*"), 3));
    assertThat(hidden()).isEmpty();
  }

  @Test
  void it_prefers_the_java_of_java_home() throws Exception {
    writeJava(folder.resolve("bin"), "17.0.15");
    writeJava(folder.resolve("my java/bin"), "1.8.0_392");
    assertThat(run(folder.resolve("my java").toString(), "about").said().get(0))
        .startsWith("barsheet: Java 8 is too old: ")
        .endsWith("my java/bin/java");
    assertThat(run(folder.resolve("nothing there").toString(), "about").status()).isEqualTo(3);
  }

  @Test
  void a_java_that_says_its_version_in_a_file_is_not_asked() throws Exception {
    writeJava(folder.resolve("home/bin"), "9");
    Files.writeString(folder.resolve("home/release"), "JAVA_VERSION=\"21-ea\"\n");
    assertThat(run(folder.resolve("home").toString(), "about").said()).isEqualTo(jar("about"));
  }

  @Test
  void it_says_which_java_it_needs_where_there_is_none() throws Exception {
    assertThat(run("", "about"))
        .isEqualTo(
            new Run(
                List.of(
                    "barsheet: No Java found.",
                    "  Install Java 17 or later, or set JAVA_HOME to the folder of one."),
                69));
  }

  @Test
  void it_says_which_java_it_needs_where_there_is_an_old_one_or_a_broken_one() throws Exception {
    Path old = writeJava(folder.resolve("bin"), "11.0.2");
    assertThat(run("", "about").said()).contains("barsheet: Java 11 is too old: " + old);
    Files.writeString(old, "#!/bin/sh\nexit 1\n");
    assertThat(run("", "about").said())
        .contains("barsheet: No Java found: " + old + " does not run.");
    assertThat(run("", "about").status()).isEqualTo(69);
  }

  @Test
  void a_runtime_that_came_with_it_comes_first() throws Exception {
    writeJava(target.resolve("runtime/bin"), "17.0.15");
    assertThat(run("/nowhere", "about", "a b").said())
        .isEqualTo(List.of("-m", "barsheet/org.barsheet.cli.Barsheet", "about", "a b"));
  }

  @Test
  void the_first_make_leaves_class_data_that_later_runs_start_from() throws Exception {
    writeJava(folder.resolve("bin"), "17.0.15");
    Run first = run("", "make", "plan.yaml");
    assertThat(first.status()).isEqualTo(3);
    assertThat(first.said()).contains("make", "plan.yaml");
    assertThat(first.said().get(OPTIONS.size())).startsWith("-XX:DumpLoadedClassList=");
    for (int wait = 0;
        wait < 500 && !hidden().equals(List.of(".barsheet-java-17.0.15.jsa"));
        wait++) {
      Thread.sleep(10);
    }
    assertThat(hidden()).containsExactly(".barsheet-java-17.0.15.jsa");
    Files.setLastModifiedTime(
        target.resolve("barsheet.jar"), FileTime.from(Instant.EPOCH.plusSeconds(1)));
    assertThat(run("", "make", "plan.yaml").said())
        .contains("-XX:SharedArchiveFile=" + classes())
        .noneMatch(word -> word.startsWith("-XX:DumpLoadedClassList"));
  }

  @Test
  void class_data_older_than_the_jar_are_made_anew() throws Exception {
    writeJava(folder.resolve("bin"), "17.0.15");
    Files.writeString(classes(), "");
    Files.setLastModifiedTime(classes(), FileTime.from(Instant.EPOCH.plusSeconds(1)));
    assertThat(run("", "check").said()).isEqualTo(jar("check"));
    assertThat(run("", "make").said().get(OPTIONS.size())).startsWith("-XX:DumpLoadedClassList=");
  }

  /** It cannot be run here; it must say the same. */
  @Test
  void the_file_for_windows_says_and_asks_the_same() throws IOException {
    String ours = Files.readString(Path.of("src", "main", "launcher", "barsheet"));
    String theirs = Files.readString(Path.of("src", "main", "launcher", "barsheet.cmd"));
    assertThat(theirs).contains(String.join(" ", OPTIONS) + " -jar \"%~dp0barsheet.jar\" %*");
    for (String both :
        List.of(
            "No Java found",
            "is too old: ",
            "  Install Java 17 or later, or set JAVA_HOME to the folder of one.",
            "-m barsheet/org.barsheet.cli.Barsheet ",
            "69")) {
      assertThat(ours).contains(both);
      assertThat(theirs).contains(both);
    }
    List<String> lines = theirs.lines().map(String::strip).toList();
    assertThat(lines.stream().filter(line -> line.endsWith("(")).count())
        .isEqualTo(lines.stream().filter(line -> line.equals(")")).count());
    assertThat(lines).contains("goto install", ":install");
  }

  /** Java spells file names in the encoding of the locale; containers often come without one. */
  @Test
  void it_asks_for_utf_8_where_the_locale_has_none_and_leaves_any_other() throws Exception {
    assertThat(localeSeen(Map.of())).isEqualTo("C.UTF-8");
    assertThat(localeSeen(Map.of("LC_ALL", "C", "LANG", "en_US.UTF-8"))).isEqualTo("C.UTF-8");
    assertThat(localeSeen(Map.of("LANG", "de_DE@euro"))).isEqualTo("C.UTF-8");
    assertThat(localeSeen(Map.of("LANG", "tr_TR.utf8"))).isEmpty();
    assertThat(localeSeen(Map.of("LC_CTYPE", "UTF-8", "LANG", "C"))).isEmpty();
  }

  /** What {@code java} finds in LC_ALL. */
  private String localeSeen(Map<String, String> locale) throws Exception {
    Path java = Files.createDirectories(folder.resolve("bin")).resolve("java");
    Files.writeString(
        java,
        """
        #!/bin/sh
        case $1 in -version) echo 'openjdk version "17.0.15" 2025-04-15' >&2; exit 0 ;; esac
        printf %s "$LC_ALL"
        """);
    assertThat(java.toFile().setExecutable(true)).isTrue();
    ProcessBuilder builder = new ProcessBuilder(link.toString(), "about");
    Map<String, String> environment = builder.environment();
    environment
        .keySet()
        .removeIf(
            name -> name.startsWith("LC_") || name.equals("LANG") || name.equals("JAVA_HOME"));
    environment.putAll(locale);
    environment.put("PATH", folder.resolve("bin") + ":" + System.getenv("PATH"));
    return new String(builder.start().getInputStream().readAllBytes(), UTF_8);
  }
}
