package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code make --placeholders}, from its words to the files in the folder. */
class PlaceholdersCommandTest {

  @TempDir private Path folder = Path.of("set by the test runner");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path plan = Path.of("");
  private Path sheets = Path.of("");

  @BeforeEach
  void writePlan() throws IOException {
    sheets = folder.resolve("sheets");
    plan = planWith("[{opening: lamp-1, photographs: 6}, {opening: lamp-2, photographs: 4}]");
  }

  /** A small frame, so that drawing it takes no time. */
  private Path planWith(String reveals) throws IOException {
    return Files.writeString(
        folder.resolve("quay.yaml"),
        """
        title: The quay
        score: %s
        film: {frame-rate: 24, frame-size: 320x180}
        motifs:
          glimmer: {heard-at: {place: bar 9, length: 5 beats, part: Celesta}, accent: last}
        artwork: {square: 1 in, squares: 24x13.5, models: {lamp: {enlarged: 3}}}
        openings:
          lamp-1: {left: 3, top: 7, width: 2, height: 4, model: lamp, hinge: left, to: 90 deg}
          lamp-2: {left: 8, top: 7, width: 2, height: 4, model: lamp, hinge: left, to: 90 deg}
        panels:
          - {panel: 1, action: Fog}
          - {panel: 2, action: Two lamps, cue: glimmer 1, reveals: %s}
        """
            .formatted(Path.of("scores", "lamplighters-quay.mid").toAbsolutePath(), reveals),
        UTF_8);
  }

  private int make() {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    return Barsheet.run(
        new PrintWriter(out),
        new PrintWriter(err),
        "make",
        plan.toString(),
        "--out",
        sheets.toString(),
        "--placeholders");
  }

  private Map<String, byte[]> photographs() throws IOException {
    Map<String, byte[]> bytes = new TreeMap<>();
    try (var files = Files.list(sheets.resolve("photographs"))) {
      for (Path file : files.toList()) {
        bytes.put(String.valueOf(file.getFileName()), Files.readAllBytes(file));
      }
    }
    return bytes;
  }

  /** Every name in the table of film frames, with the extension the editor looks for. */
  private Set<String> namesInTheTable() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    String table = Files.readString(sheets.resolve("quay-frames.csv"), UTF_8);
    Set<String> names = new TreeSet<>();
    try (CSVParser rows = format.parse(new StringReader(table.substring(1)))) {
      for (CSVRecord row : rows) {
        names.add(row.get("plate") + ".png");
        names.add(row.get("layer_1") + ".png");
        names.add(row.get("layer_2") + ".png");
      }
    }
    names.remove(".png");
    return names;
  }

  @Test
  void every_photograph_of_the_table_appears_under_its_final_name() throws IOException {
    assertThat(make()).isEqualTo(ExitStatus.DONE);
    assertThat(photographs().keySet())
        .containsAll(namesInTheTable())
        .contains("artwork as in panel 1.png", "lamp 000.png", "lamp 006.png")
        .hasSize(1 + 7);
    assertThat(err.toString())
        .contains("8 placeholders drawn in the folder photographs; 0 photographs there already");
    assertThat(out.toString()).doesNotContain("lamp 000.png");
  }

  @Test
  void a_photograph_that_stands_there_stays_byte_for_byte() throws IOException {
    Path taken = sheets.resolve("photographs").resolve("lamp 003.png");
    Files.createDirectories(sheets.resolve("photographs"));
    ImageIO.write(new BufferedImage(8, 6, BufferedImage.TYPE_INT_RGB), "png", taken.toFile());
    Path edited = Files.write(taken.resolveSibling("lamp 004.png"), new byte[] {1, 2, 3});
    byte[] photograph = Files.readAllBytes(taken);

    assertThat(make()).isEqualTo(ExitStatus.DONE);

    assertThat(taken).hasBinaryContent(photograph);
    assertThat(edited).hasBinaryContent(new byte[] {1, 2, 3});
    assertThat(err.toString())
        .contains("6 placeholders drawn in the folder photographs; 2 photographs there already");
  }

  @Test
  void a_second_run_changes_no_photograph_and_leaves_nothing_beside_them() throws IOException {
    assertThat(make()).isEqualTo(ExitStatus.DONE);
    Map<String, byte[]> first = photographs();
    assertThat(make()).isEqualTo(ExitStatus.DONE);
    assertThat(photographs()).containsExactlyEntriesOf(first);
  }

  @Test
  void without_the_word_no_photograph_is_drawn() {
    int status =
        Barsheet.run(
            new PrintWriter(out),
            new PrintWriter(err),
            "make",
            plan.toString(),
            "--out",
            sheets.toString());
    assertThat(status).isEqualTo(ExitStatus.DONE);
    assertThat(sheets.resolve("photographs")).doesNotExist();
    assertThat(err.toString()).doesNotContain("placeholder");
  }

  @Test
  void a_film_without_reveals_gets_a_plate_for_each_state_of_the_artwork() throws IOException {
    plan = planWith("[]");
    assertThat(make()).isEqualTo(ExitStatus.DONE);
    assertThat(photographs().keySet()).containsExactly("artwork as in panel 1.png");
  }

  @Test
  void a_file_where_the_photographs_are_to_go_is_named_and_nothing_is_written() throws IOException {
    Files.createDirectories(sheets);
    Path inTheWay = Files.writeString(sheets.resolve("photographs"), "a shopping list", UTF_8);
    assertThat(make()).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString())
        .startsWith(inTheWay + ": a file already has this folder's name")
        .contains("move that file away");
    assertThat(inTheWay).hasContent("a shopping list");
    try (var files = Files.list(sheets)) {
      assertThat(files.toList()).containsExactly(inTheWay);
    }
  }

  @Test
  void a_folder_that_cannot_be_made_is_named() throws IOException {
    sheets = Files.writeString(folder.resolve("notes.txt"), "notes", UTF_8).resolve("sheets");
    assertThat(make()).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).startsWith(sheets + ": this folder can't be written");
    assertThat(folder.resolve("notes.txt")).hasContent("notes");
  }
}
