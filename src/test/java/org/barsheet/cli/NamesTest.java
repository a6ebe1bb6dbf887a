package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names and texts that break careless programs, from the plan, the score and files beside them. */
class NamesTest {

  /** A locale of the POSIX standard, in which names have no letters but those of ASCII. */
  private static final Map<String, String> NO_UTF_8 = Map.of("LC_ALL", "C");

  @TempDir private Path folder = Path.of("set by the test runner");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void writeScore() throws IOException {
    ShortScore.write(folder.resolve("quay.mid"));
  }

  private int run(String... args) {
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  private Path plan(String name, String title, String more, String panel) throws IOException {
    return Files.writeString(
        folder.resolve(name),
        "title: "
            + title
            + "\nscore: quay.mid\nfilm: {frame-rate: 24}\n"
            + more
            + "panels:\n  - "
            + panel
            + "\n",
        UTF_8);
  }

  /** No control character but line ends, nothing that turns the direction of writing. */
  private static void assertPlain(String said) {
    assertThat(said).doesNotContainPattern("[\\p{Cc}&&[^\\n]]");
    assertThat(said).doesNotContainPattern("[\\u200E\\u200F\\u061C\\u202A-\\u202E\\u2066-\\u2069]");
    assertThat(said).doesNotContainPattern("\\p{Cs}");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"\\e[31mred", "\\u202Egnp.gof", "\\x9B2J", "\\ud800 half", "\\a", "\\u2067in"})
  void hostile_texts_and_keys_reach_the_terminal_plain(String text) throws IOException {
    Path value = plan("value.yaml", "\"" + text + "\"", "", "{panel: 1}");
    assertThat(run("check", value.toString())).isIn(ExitStatus.DONE, ExitStatus.BAD_INPUT);
    Path key = plan("key.yaml", "Quay", "\"" + text + "\": 1\n", "{panel: 1}");
    assertThat(run("check", key.toString())).isEqualTo(ExitStatus.BAD_INPUT);
    Path cue = plan("cue.yaml", "Quay", "", "{panel: 1, cue: \"" + text + "\"}");
    assertThat(run("check", cue.toString())).isEqualTo(ExitStatus.BAD_INPUT);
    Path name = plan("name.yaml", "Quay", "", "{panel: \"" + text + "\"}");
    assertThat(run("check", name.toString())).isIn(ExitStatus.DONE, ExitStatus.BAD_INPUT);
    assertPlain(out.toString());
    assertPlain(err.toString());
  }

  @Test
  void signs_that_turn_the_direction_and_halves_of_characters_reach_no_file() throws IOException {
    Path plan =
        plan(
            "quay.yaml",
            "\"Qu\\u202Eay \\ud800\"",
            "performers:\n  \"cel\\u2066lo\": {clip: cello.mov}\n",
            "{panel: 1, action: \"Fog \\u202Egnp\\u202C and \\udc00\"}");
    Files.writeString(
        folder.resolve("quay-notes.json"),
        "{\"format\":\"barsheet-notes\",\"notes\":[{\"frame\":3,\"note\":\"half \\ud800 \\u202E\"}]}");
    assertThat(run("make", plan.toString(), "--placeholders")).as(err.toString()).isZero();
    try (Stream<Path> files = Files.walk(folder.resolve("quay-sheets"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (!file.toString().matches(".*\\.(xlsx|png|mid)")) {
          assertThat(Files.readString(file, UTF_8))
              .as(file.toString())
              .doesNotContainPattern(
                  "[\\u202A-\\u202E\\u2066-\\u2069]|\\\\u202[a-eA-E]|\\\\ud[8c]00");
        }
      }
    }
    assertThat(folder.resolve("quay-sheets/calls/cello.html"))
        .content(UTF_8)
        .contains("Quay \uFFFD");
    assertPlain(err.toString());
  }

  /** RFC 8259, 8.2, leaves open what a reader does with unpaired surrogates. */
  @Test
  void half_a_character_in_an_earlier_timing_file_is_told_as_damage() throws IOException {
    Path plan = plan("quay.yaml", "Quay", "", "{panel: 1, action: Fog}");
    assertThat(run("make", plan.toString())).isZero();
    Path timing = folder.resolve("quay-sheets/timing.json");
    String text = Files.readString(timing, UTF_8);
    Files.writeString(timing, text.replace("\"panel\": \"1\"", "\"panel\": \"\\u202E1\""));
    assertThat(run("compare", timing.toString(), plan.toString())).as(err.toString()).isZero();
    Files.writeString(timing, text.replace("\"panel\": \"1\"", "\"panel\": \"\\ud800\""));
    assertThat(run("compare", timing.toString(), plan.toString())).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains(timing + ": the file is damaged: this is not JSON");
    assertThat(run("make", plan.toString())).isZero();
    assertPlain(out.toString() + err);
  }

  @Test
  void an_emoji_in_a_message_is_whole() throws IOException {
    Path plan = plan("quay.yaml", "Quay", "", "{panel: 1, cue: 🚢 leaves}");
    assertThat(run("check", plan.toString())).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("no place begins with '🚢'");
  }

  /** YAML 1.2.2, 5.7: escaped line separator and paragraph separator. */
  @Test
  void the_escapes_of_yaml_for_separators_part_words() throws IOException {
    Path plan =
        plan("quay.yaml", "\"The\\Lquay\\Pat \\\\L\"", "", "{panel: 1, action: 'C:\\Lamp'}");
    assertThat(run("make", plan.toString())).as(err.toString()).isZero();
    assertThat(folder.resolve("quay-sheets/timing.json"))
        .content(UTF_8)
        .contains("\"title\": \"The quay at \\\\L\"")
        .contains("C:\\\\Lamp");
  }

  @Test
  void a_long_name_of_a_part_leaves_its_table_readable() throws Exception {
    Sequence sequence = MidiSystem.getSequence(folder.resolve("quay.mid").toFile());
    byte[] name = "Lamps and shutters ".repeat(600).getBytes(UTF_8);
    sequence.getTracks()[0].add(new MidiEvent(new MetaMessage(3, name, name.length), 0));
    Path score = folder.resolve("long.mid");
    MidiSystem.write(sequence, 1, score.toFile());
    assertThat(run("about", score.toString())).isZero();
    String rows = out.toString().lines().collect(Collectors.joining("\n"));
    assertThat(rows).contains("Lamps and shutters Lamps").contains("…  ");
    assertThat(rows.lines().mapToInt(String::length).max().orElse(0)).isLessThan(160);
  }

  @Test
  void a_plan_with_too_long_a_name_is_refused_and_nothing_is_left_behind() throws IOException {
    Path plan = plan("q".repeat(245) + ".yaml", "Quay", "", "{panel: 1}");
    assertThat(run("make", plan.toString())).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(run("make", plan.toString(), "--out", folder.resolve("sheets").toString()))
        .isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("the plan's name is too long", "rename the plan");
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactlyInAnyOrder(plan, folder.resolve("quay.mid"));
    }
    Path fits = plan("q".repeat(200) + ".yaml", "Quay", "", "{panel: 1}");
    assertThat(run("make", fits.toString(), "--out", folder.resolve("sheets").toString())).isZero();
    assertThat(folder.resolve("sheets/.barsheet.lock")).doesNotExist();
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void without_utf_8_a_name_that_cannot_be_spelled_is_told_with_what_to_do() throws Exception {
    Path plan = plan("quay.yaml", "Quay", "performers:\n  célesta: {clip: c.mov}\n", "{panel: 1}");
    ChildProgram made = ChildProgram.run(NO_UTF_8, List.of(), "make", plan.toString());
    assertThat(made.said())
        .contains("calls/célesta.html: this system can't spell this file name")
        .contains("set a UTF-8 one (LC_ALL=C.UTF-8)")
        .doesNotContain("Exception", "\tat ");
    assertThat(made.status()).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(folder.resolve("quay-sheets/quay.xlsx")).doesNotExist();
    assertThat(folder.resolve("quay-sheets/.barsheet.lock")).doesNotExist();
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void without_utf_8_a_plan_that_cannot_be_named_is_told_with_what_to_do() throws Exception {
    assertThat(Charset.forName(System.getProperty("sun.jnu.encoding"))).isEqualTo(UTF_8);
    Path plan = plan("chaloupé.yaml", "Quay", "", "{panel: 1}");
    ChildProgram checked = ChildProgram.run(NO_UTF_8, List.of(), "check", plan.toString());
    assertThat(checked.said())
        .contains("' can't be a file name", "set a UTF-8 one (LC_ALL=C.UTF-8)")
        .doesNotContain("Exception", "java.", "\tat ");
    assertThat(checked.status()).isEqualTo(ExitStatus.USAGE);
  }
}
