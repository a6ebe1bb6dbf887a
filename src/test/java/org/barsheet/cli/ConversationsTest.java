package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole conversations of directors with the program, from a first evening to a film under way. In a
 * conversation's file {@code $ save NAME} is followed by what a person typed into a file, and
 * {@code $ barsheet …} by everything the program answered. With {@code -Dgolden=write} the answers
 * in the files are written anew, to be read before they are kept. Which files {@code make} wrote is
 * left to other tests.
 */
class ConversationsTest {

  private static final Path SOURCES =
      Path.of("src/test/resources/org/barsheet/cli/conversations").toAbsolutePath();

  @TempDir private Path folder = Path.of("");

  static Stream<Path> conversations() throws IOException, URISyntaxException {
    Path folder =
        Path.of(
            Objects.requireNonNull(ConversationsTest.class.getResource("conversations")).toURI());
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList().stream();
    }
  }

  @Test
  void there_are_ten_of_them() throws IOException, URISyntaxException {
    assertThat(conversations()).hasSize(10);
  }

  @ParameterizedTest
  @MethodSource("conversations")
  void goes_as_it_is_written(Path conversation) throws IOException {
    Files.copy(Path.of("scores/lamplighters-quay.mid"), folder.resolve("quay.mid"));
    String written = Files.readString(conversation, UTF_8);
    String spoken = spoken(written);
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(SOURCES.resolve(String.valueOf(conversation.getFileName())), spoken, UTF_8);
    }
    assertThat(spoken).isEqualTo(written);
  }

  /** The conversation held again: what the person does as written, the answers as they come. */
  private String spoken(String written) throws IOException {
    StringBuilder spoken = new StringBuilder();
    for (String turn : written.split("(?m)^(?=\\$ )", -1)) {
      String first = turn.lines().findFirst().orElse("");
      if (first.startsWith("$ save ")) {
        String text = turn.substring(first.length() + 1);
        Files.writeString(folder.resolve(first.substring("$ save ".length())), text, UTF_8);
        spoken.append(turn);
      } else if (first.startsWith("$ barsheet ")) {
        spoken.append(first).append('\n').append(answer(first.substring("$ barsheet ".length())));
      } else {
        spoken.append(turn);
      }
    }
    return spoken.toString();
  }

  private String answer(String words) {
    StringWriter said = new StringWriter();
    PrintWriter writer = new PrintWriter(said);
    int status = Barsheet.run(writer, writer, inFolder(words));
    String text = said.toString().replace(folder + "/", "");
    if (words.startsWith("make ") && status == 0) {
      return "";
    }
    return status == 0 ? text : text + "[status " + status + "]\n";
  }

  /** The words as arguments, with names of files seen from the conversation's folder. */
  private String[] inFolder(String words) {
    List<String> arguments = new ArrayList<>();
    for (String word : words.split(" ", -1)) {
      boolean file = word.matches(".*\\.(yaml|mid|csv)|sheets");
      arguments.add(file ? folder.resolve(word).toString() : word);
    }
    return arguments.toArray(String[]::new);
  }
}
