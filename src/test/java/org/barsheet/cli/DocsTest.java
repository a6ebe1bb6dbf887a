package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.barsheet.clock.FrameRate;
import org.barsheet.plan.Place;
import org.barsheet.plan.source.PlanKey;
import org.barsheet.plan.source.PlanKeys;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** What README, DEVELOPERS and the help texts show is so. */
class DocsTest {

  private static final Path README = Path.of("README.md");
  private static final Path DEVELOPERS = Path.of("DEVELOPERS.md");
  private static final Pattern CODE = Pattern.compile("`([^`\n]+)`");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private static CommandLine program() {
    return new CommandLine(new Barsheet());
  }

  private static List<String> code(Path file) throws IOException {
    return found(CODE, Files.readString(file, StandardCharsets.UTF_8));
  }

  private static List<String> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(result -> result.group(1)).toList();
  }

  private static String[] words(String line) {
    return WORD.matcher(line)
        .results()
        .map(DocsTest::word)
        .takeWhile(word -> !word.matches("[>&|].*|<\\(.*"))
        .toArray(String[]::new);
  }

  private static String word(MatchResult found) {
    return Objects.requireNonNullElse(found.group(1), Objects.toString(found.group(2), ""));
  }

  private static void assertIsCommand(String line) {
    assertThatCode(() -> program().parseArgs(words(line)))
        .as("barsheet %s", line)
        .doesNotThrowAnyException();
  }

  @Test
  void every_command_in_the_readme_can_be_typed() throws IOException {
    List<String> commands =
        code(README).stream()
            .filter(
                code ->
                    code.matches("(barsheet )?(about|begin|beats|check|find|make|pack|where) .*"))
            .map(code -> code.replaceFirst("^barsheet ", ""))
            .toList();
    assertThat(commands).hasSizeGreaterThan(6);
    for (String command : commands) {
      boolean whole = command.matches(".*\\.(yaml|mid|xlsx).*");
      String level = command.endsWith("--fail-on") ? " error" : "";
      assertIsCommand(whole ? command : command + level + " plan.yaml");
    }
  }

  @Test
  void every_option_in_the_readme_is_one() throws IOException {
    Set<String> options = new TreeSet<>();
    for (CommandLine command : program().getSubcommands().values()) {
      command.getCommandSpec().options().forEach(option -> options.addAll(List.of(option.names())));
    }
    String readme = Files.readString(README, StandardCharsets.UTF_8);
    assertThat(options).containsAll(found(Pattern.compile("`[^`\n]*?(--[a-z-]+)"), readme));
  }

  @Test
  void every_example_in_the_help_texts_can_be_typed() {
    int examples = 0;
    for (CommandLine command : program().getSubcommands().values()) {
      for (String line : command.getCommandSpec().usageMessage().footer()) {
        String typed = line.strip();
        if (typed.startsWith("barsheet ")) {
          assertIsCommand(typed.replaceFirst("^barsheet ", "").replaceFirst("  +.*", ""));
          examples++;
        }
      }
    }
    assertThat(examples).isGreaterThan(20);
    for (String line : program().getCommandSpec().usageMessage().description()) {
      if (line.strip().startsWith("barsheet ")) {
        assertIsCommand(line.strip().replaceFirst("^barsheet ", "").replaceFirst("  +.*", ""));
      }
    }
  }

  @Test
  void every_default_in_the_help_texts_is_the_default() {
    Pattern pattern = Pattern.compile("(\\S+) \\(default\\)");
    Map<String, String> said = new TreeMap<>();
    Map<String, String> so = new TreeMap<>();
    for (CommandLine command : program().getSubcommands().values()) {
      for (OptionSpec option : command.getCommandSpec().options()) {
        for (String value : found(pattern, String.join(" ", option.description()))) {
          String name = command.getCommandName() + " " + option.longestName();
          said.put(name, value);
          so.put(name, String.valueOf(option.defaultValue()));
        }
      }
    }
    assertThat(said).isNotEmpty().isEqualTo(so);
  }

  @Test
  void every_command_says_what_it_does_and_gives_an_example() {
    program()
        .getSubcommands()
        .forEach(
            (name, command) -> {
              var usage = command.getCommandSpec().usageMessage();
              assertThat(usage.header()).as(name).isNotEmpty();
              if (!name.equals("help")) {
                assertThat(String.join("\n", usage.footer())).as(name).contains("Examples:");
              }
              for (OptionSpec option : command.getCommandSpec().options()) {
                assertThat(String.join(" ", option.description()))
                    .as("%s %s", name, option.longestName())
                    .isNotBlank();
              }
            });
  }

  @Test
  void every_exit_status_is_told() throws IOException {
    String help = String.join(" ", program().getCommandSpec().usageMessage().footer());
    for (String text : List.of(help, Files.readString(README, StandardCharsets.UTF_8))) {
      assertThat(text)
          .contains(
              ExitStatus.DONE + " done",
              ExitStatus.FINDINGS + " findings",
              ExitStatus.USAGE + " wrong usage",
              ExitStatus.BAD_INPUT + " bad input",
              ExitStatus.OWN_FAULT + " an internal error");
    }
  }

  @Test
  void the_status_of_our_own_faults_is_told_to_contributors() throws IOException {
    assertThat(Files.readString(DEVELOPERS, StandardCharsets.UTF_8))
        .contains("ends with status " + ExitStatus.OWN_FAULT + ".");
  }

  /** A sentence in quotation marks is something barsheet says, and a test somewhere holds it. */
  @Test
  void every_sentence_quoted_in_the_readme_is_held_by_a_test() throws IOException {
    String prose =
        Files.readString(README, StandardCharsets.UTF_8)
            .replaceAll("(?s)```.*?```", "")
            .replaceAll("`[^`\n]*`", "");
    List<String> quoted = found(Pattern.compile("\"([^\"]+)\""), prose);
    assertThat(quoted).isNotEmpty();
    String held = told();
    for (String sentence : quoted) {
      assertThat(held.contains(sentence.replaceAll("\\s+", " "))).as(sentence).isTrue();
    }
  }

  /** All that the tests and the golden conversations say, texts written in parts joined. */
  private static String told() throws IOException {
    StringBuilder told = new StringBuilder();
    try (Stream<Path> files = Files.walk(Path.of("src", "test"))) {
      for (Path file : files.filter(one -> one.toString().matches(".*\\.(java|txt)")).toList()) {
        told.append(Files.readString(file, StandardCharsets.UTF_8)).append('\n');
      }
    }
    return told.toString().replaceAll("\"\\s*\\+\\s*\"", "");
  }

  @Test
  void every_key_of_a_plan_in_the_readme_is_one() throws IOException {
    Set<String> keys = new TreeSet<>();
    for (List<PlanKey> section :
        List.of(
            PlanKeys.ROOT,
            PlanKeys.FILM,
            PlanKeys.MUSIC,
            PlanKeys.PERFORMER,
            PlanKeys.PANEL,
            PlanKeys.REVEAL)) {
      section.forEach(key -> keys.add(key.name()));
    }
    List<String> shown =
        code(README).stream()
            .filter(code -> code.matches("[a-z-]+: .*"))
            .map(code -> code.substring(0, code.indexOf(':')))
            .toList();
    assertThat(shown).contains("locked", "photographed");
    assertThat(keys).containsAll(shown);
  }

  @Test
  void every_place_in_the_readme_can_be_read() throws IOException {
    List<String> places =
        code(README).stream()
            .filter(code -> code.matches("(glimmer\\b|bar |mark |\\d+ bars into |\\d\\d:).*"))
            .toList();
    assertThat(places).hasSizeGreaterThan(4);
    places.forEach(place -> Place.parse(place, FrameRate.FPS_24));
  }

  /** But for what people save themselves: viewers' notes, what was taken, and kept workbooks. */
  @Test
  void every_file_in_the_readme_is_made_for_the_demo() throws IOException {
    List<String> missing = new ArrayList<>();
    for (String code : code(README)) {
      boolean saved = code.matches(".*-(kept-|notes\\.|taken\\.).*");
      if (code.startsWith("<name>") && !saved) {
        Path file = Path.of("sheets", code.replace("<name>", "lamplighters-quay"));
        if (!Files.exists(file)) {
          missing.add(code);
        }
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void every_class_named_for_contributors_exists() throws IOException {
    Set<String> classes = new TreeSet<>();
    for (Path root : List.of(Path.of("src/main/java"), Path.of("src/test/java"))) {
      try (Stream<Path> files = Files.walk(root)) {
        files
            .map(file -> String.valueOf(file.getFileName()))
            .filter(name -> name.endsWith(".java"))
            .forEach(name -> classes.add(name.replace(".java", "")));
      }
    }
    List<String> named =
        code(DEVELOPERS).stream()
            .map(code -> code.replaceAll("[.(].*", ""))
            .filter(code -> code.matches("([A-Z][a-z]+){1,}"))
            .toList();
    assertThat(named).isNotEmpty();
    assertThat(classes).containsAll(named);
  }
}
