package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** Every example of the help texts runs as it is written, in a folder with the files it names. */
class ExamplesTest {

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern FILE =
      Pattern.compile("\\S+\\.(mid|yaml|xlsx|zip|json|wav)|sheets|plan-sheets|card|retakes");

  @TempDir private static Path made = Path.of("");

  /**
   * Those that run until they are stopped (a desk is stopped at once), that a shell completes, that
   * need a large bank, or that draw a whole film.
   */
  private static boolean isAlone(String example) {
    return !example.matches(".*(--watch|--sound-bank|completion|--movie$|--guide-videos).*");
  }

  static Stream<String> examples() {
    CommandLine program = new CommandLine(new Barsheet());
    return Stream.concat(Stream.of(program), program.getSubcommands().values().stream())
        .map(CommandLine::getCommandSpec)
        .flatMap(
            command ->
                Stream.concat(
                    Stream.of(command.usageMessage().description()),
                    Stream.of(command.usageMessage().footer())))
        .filter(line -> line.startsWith("  barsheet "))
        .map(line -> line.strip().replaceFirst("\\s{2,}.*", ""))
        .filter(ExamplesTest::isAlone)
        .distinct();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void runs_as_it_is_written(String example, @TempDir Path folder) throws IOException {
    prepare(folder);
    if (example.startsWith("barsheet photographs ")) {
      PhotographsCommandTest.prepare(folder);
    }
    if (example.startsWith("barsheet follow ")) {
      FollowCommandTest.prepare(folder);
    }
    if (example.startsWith("barsheet begin ")) {
      Files.delete(folder.resolve("plan.yaml"));
    }
    StringWriter said = new StringWriter();
    PrintWriter writer = new PrintWriter(said);
    int status = Barsheet.run(writer, writer, () -> false, arguments(example, folder));
    assertThat(status).as(said.toString()).isIn(ExitStatus.DONE, ExitStatus.FINDINGS);
    assertThat(said.toString()).isNotBlank();
  }

  private static String[] arguments(String example, Path folder) {
    List<String> arguments = new ArrayList<>();
    WORD.matcher(example.substring("barsheet ".length()))
        .results()
        .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
        .takeWhile(word -> !word.matches("[>&|].*"))
        .map(word -> FILE.matcher(word).matches() ? folder.resolve(word).toString() : word)
        .forEach(arguments::add);
    return arguments.toArray(String[]::new);
  }

  /** The files examples name; what they write is not there, unless they ask for sheets. */
  private static void prepare(Path folder) throws IOException {
    Path score = Path.of("scores/lamplighters-quay.mid");
    for (String name : List.of("score.mid", "played.mid", "old.mid", "new.mid")) {
      Files.copy(score, folder.resolve(name));
    }
    Files.writeString(folder.resolve("plan.yaml"), plan(), UTF_8);
    Files.writeString(folder.resolve("new-plan.yaml"), plan(), UTF_8);
    if (!Files.exists(made.resolve("timing.json"))) {
      PrintWriter nobody = new PrintWriter(new StringWriter());
      Barsheet.run(
          nobody,
          nobody,
          "make",
          folder.resolve("plan.yaml").toString(),
          "--out",
          made.toString(),
          "--issue",
          "second draft");
    }
    for (String sheets : List.of("plan-sheets", "sheets", "monday", "tuesday")) {
      Files.createDirectories(folder.resolve(sheets));
      Files.copy(made.resolve("timing.json"), folder.resolve(sheets).resolve("timing.json"));
    }
  }

  private static String plan() {
    StringBuilder plan =
        new StringBuilder(
            """
            title: The quay
            score: score.mid
            film: {frame-rate: 24}
            motifs:
              glimmer: {heard-at: {place: bar 9, length: 5 beats, part: Celesta}}
            panels:
            """);
    for (int panel = 1; panel <= 17; panel++) {
      plan.append("  - {panel: ").append(panel).append(", cue: bar ");
      plan.append(1 + 4 * panel).append("}\n");
    }
    return plan.toString();
  }
}
