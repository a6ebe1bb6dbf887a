package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.barsheet.photographs.DemoCard;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command from words to exit status, on a small movement that a copy stand was rendered of. */
class PhotographsCommandTest {

  private static final String PLAN =
      """
      title: The quay
      score: score.mid
      film: {frame-rate: 24, frame-size: 384x216}
      artwork:
        square: 1 in
        squares: 24x13.5
        models:
          small-lamp: {enlarged: 3, backing: green}
      camera: {lens: 50 mm, sensor: 36 mm, pixels: 6000x4000}
      openings:
        bakers-lamp: {left: 4.8, top: 7.2, width: 1.5, height: 1.7, model: small-lamp, hinge: left, to: 60 deg}
      panels:
        - panel: 1
          cue: bar 9
          field: {left: 2.5, top: 6.2, width: 7}
          reveals:
            - {opening: bakers-lamp, photographs: 6, slow: none}
      """;

  @TempDir private static Path made = Path.of("");
  @TempDir private Path folder = Path.of("");

  private final StringWriter said = new StringWriter();
  private final StringWriter told = new StringWriter();

  /** A plan, a card with its photographs, and retakes of the last of them. */
  static void prepare(Path folder) throws IOException {
    Files.writeString(folder.resolve("plan.yaml"), PLAN, UTF_8);
    Path score = folder.resolve("score.mid");
    if (!Files.exists(score)) {
      Files.copy(Path.of("scores/lamplighters-quay.mid"), score);
    }
    DemoCard.take(
        folder.resolve("plan.yaml"),
        "bakers-lamp",
        folder.resolve("card"),
        384,
        0,
        9,
        (number, shot) -> shot.across = number >= 4 ? 1.5 : 0);
    DemoCard.take(
        folder.resolve("plan.yaml"),
        "bakers-lamp",
        folder.resolve("retakes"),
        384,
        2,
        9,
        (number, shot) -> {});
  }

  @BeforeAll
  static void render() throws IOException {
    prepare(made);
  }

  @BeforeEach
  void copy() throws IOException {
    try (Stream<Path> files = Files.walk(made)) {
      for (Path file : files.sorted().toList()) {
        Path to = folder.resolve(made.relativize(file).toString());
        if (!Files.exists(to)) {
          Files.copy(file, to);
        }
      }
    }
  }

  private int run(String... words) {
    said.getBuffer().setLength(0);
    told.getBuffer().setLength(0);
    return Barsheet.run(new PrintWriter(said), new PrintWriter(told), words);
  }

  private int photographs(String card, String... more) {
    String plan = folder.resolve("plan.yaml").toString();
    String from = folder.resolve(card).toString();
    return run(
        Stream.concat(Stream.of("photographs", plan, from, "--of", "bakers-lamp"), Stream.of(more))
            .toArray(String[]::new));
  }

  private Path photograph(String name) {
    return folder.resolve("photographs").resolve(name);
  }

  @Test
  void photographs_are_copied_byte_for_byte_under_their_names_and_the_bump_is_told()
      throws IOException {
    assertThat(photographs("card")).as(told.toString()).isEqualTo(ExitStatus.DONE);
    for (int number = 0; number <= 6; number++) {
      assertThat(photograph("small-lamp 00" + number + ".JPG"))
          .hasSameBinaryContentAs(folder.resolve("card/IMG_" + (4031 + number) + ".JPG"));
    }
    assertThat(said.toString())
        .contains("! small-lamp 004 to 006 lie 1.5 px right off the first photograph")
        .contains("Nothing must be taken again.");
    assertThat(told.toString()).contains("7 photographs copied into");
    assertThat(photograph("small-lamp.json")).content().contains("\"IMG_4035.JPG\"");
  }

  @Test
  void a_card_taken_in_twice_changes_nothing() throws IOException {
    photographs("card");
    List<String> before = names();
    byte[] report = Files.readAllBytes(photograph("small-lamp.json"));
    assertThat(photographs("card")).isEqualTo(ExitStatus.DONE);
    assertThat(names()).isEqualTo(before);
    assertThat(photograph("small-lamp.json")).hasBinaryContent(report);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("photographs"))) {
      return files.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    }
  }

  @Test
  void retakes_keep_what_was_there_and_are_compared_with_the_first_photograph() throws IOException {
    photographs("card");
    byte[] old = Files.readAllBytes(photograph("small-lamp 004.JPG"));
    assertThat(photographs("retakes", "--from", "2")).as(told.toString()).isZero();
    assertThat(photograph("small-lamp 004-kept-1.JPG")).hasBinaryContent(old);
    assertThat(photograph("small-lamp 004.JPG"))
        .hasSameBinaryContentAs(folder.resolve("retakes/IMG_4035.JPG"));
    assertThat(said.toString()).doesNotContain("! small-lamp");
    assertThat(photograph("small-lamp.json"))
        .content()
        .contains("small-lamp 000")
        .doesNotContain("\"camera\"");
  }

  @Test
  void evened_copies_lie_where_the_first_photograph_has_them() throws IOException {
    assertThat(photographs("card", "--even")).isEqualTo(ExitStatus.DONE);
    assertThat(told.toString()).contains("small-lamp 005: moved back from 1.5 px right");
    assertThat(photograph("small-lamp 005.JPG"))
        .hasSameBinaryContentAs(folder.resolve("card/IMG_4036.JPG"));
    Path evened = photograph("evened");
    int status =
        run(
            "photographs",
            folder.resolve("plan.yaml").toString(),
            evened.toString(),
            "--of",
            "bakers-lamp",
            "--accept");
    assertThat(status).as(told.toString()).isEqualTo(ExitStatus.DONE);
    assertThat(said.toString()).doesNotContain("! ");
  }

  @Test
  void the_workbook_gets_a_contact_sheet_and_check_tells_the_fault() throws IOException {
    photographs("card");
    String plan = folder.resolve("plan.yaml").toString();
    run("check", plan, "--all");
    assertThat(said.toString()).contains("small-lamp 004 to 006 lie 1.5 px right");
    assertThat(run("make", plan)).as(told.toString()).isEqualTo(ExitStatus.DONE);
    Path book = folder.resolve("plan-sheets/plan.xlsx");
    try (InputStream in = Files.newInputStream(book);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      assertThat(workbook.getSheet("Photographs").getDrawingPatriarch().getShapes()).hasSize(7);
      assertThat(workbook.getAllPictures())
          .allSatisfy(one -> assertThat(one.getMimeType()).isEqualTo("image/jpeg"));
    }
  }

  @Test
  void several_missing_one_after_another_are_told_in_one_sentence() throws IOException {
    for (int file = 4033; file <= 4035; file++) {
      Files.delete(folder.resolve("card/IMG_" + file + ".JPG"));
    }
    assertThat(photographs("card")).isEqualTo(ExitStatus.FINDINGS);
    assertThat(said.toString()).contains("? small-lamp 002 to 004 are missing.");
  }

  @Test
  void one_missing_is_told_and_nothing_is_copied_until_it_is_accepted() throws IOException {
    Files.delete(folder.resolve("card/IMG_4034.JPG"));
    assertThat(photographs("card")).isEqualTo(ExitStatus.FINDINGS);
    assertThat(said.toString())
        .contains(
            "? small-lamp 003 is missing: from IMG_4033.JPG to IMG_4035.JPG is a double step.");
    assertThat(told.toString()).contains("add --accept");
    assertThat(folder.resolve("photographs")).doesNotExist();
    assertThat(photographs("card", "--accept")).isEqualTo(ExitStatus.DONE);
    assertThat(photograph("small-lamp 003.JPG")).doesNotExist();
    assertThat(photograph("small-lamp 004.JPG"))
        .hasSameBinaryContentAs(folder.resolve("card/IMG_4035.JPG"));
  }

  @Test
  void files_of_other_kinds_are_told_with_what_to_do() throws IOException {
    Files.write(
        folder.resolve("card/IMG_5000.HEIC"), "\0\0\0\u0018ftypheic\0\0\0\0".getBytes(UTF_8));
    Files.writeString(folder.resolve("card/list.txt"), "a list");
    assertThat(photographs("card")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(told.toString())
        .contains("IMG_5000.HEIC: the photograph is a HEIC image")
        .contains("save it as JPEG or PNG");
    Files.delete(folder.resolve("card/IMG_5000.HEIC"));
    assertThat(photographs("card")).isEqualTo(ExitStatus.DONE);
    assertThat(told.toString()).contains("Not photographs, skipped: list.txt");
  }

  @Test
  void a_photograph_cut_short_is_told_by_name() throws IOException {
    Path file = folder.resolve("card/IMG_4033.JPG");
    byte[] whole = Files.readAllBytes(file);
    Files.write(file, java.util.Arrays.copyOf(whole, whole.length / 2));
    assertThat(photographs("card")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(told.toString()).contains("IMG_4033.JPG: the photograph is damaged or cut short");
  }

  @Test
  void a_name_that_is_not_planned_is_told_with_the_nearest() {
    int status =
        run(
            "photographs",
            folder.resolve("plan.yaml").toString(),
            folder.resolve("card").toString(),
            "--of",
            "bakers-lmap");
    assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(told.toString()).contains("bakers-lamp");
  }
}
