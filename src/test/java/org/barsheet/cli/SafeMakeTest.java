package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code make} in a folder where something stands in its way: nothing of anybody's is lost. */
class SafeMakeTest {

  @TempDir private Path folder = Path.of("set by the test runner");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path plan = Path.of("");
  private Path sheets = Path.of("");

  @BeforeEach
  void writePlan() throws IOException {
    sheets = folder.resolve("sheets");
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), folder.resolve("quay.mid"));
    plan = planOf("Fog");
  }

  private Path planOf(String action) throws IOException {
    return Files.writeString(
        folder.resolve("quay.yaml"),
        """
        title: The quay
        score: quay.mid
        film: {frame-rate: 24}
        performers:
          cello: {}
        panels:
          - {panel: 1, action: %s}
          - {panel: 2, action: A lamp, cue: bar 6}
        """
            .formatted(action),
        UTF_8);
  }

  private int run(String... words) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), words);
  }

  private int make(String... more) {
    List<String> words =
        new ArrayList<>(List.of("make", plan.toString(), "--out", sheets.toString()));
    words.addAll(List.of(more));
    return run(words.toArray(String[]::new));
  }

  private static Map<String, String> everything(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (var walk = Files.walk(folder)) {
      for (Path file : walk.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString(), content(file));
      }
    }
    return files;
  }

  /** Its size and a digest: its bytes would drown what a failure tells. */
  private static String content(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    return bytes.length + " " + Arrays.hashCode(bytes);
  }

  @ParameterizedTest
  @ValueSource(strings = {".~lock.quay.xlsx#", "~$quay.xlsx"})
  void a_workbook_open_in_a_spreadsheet_program_stops_make_before_it_writes(String mark)
      throws IOException {
    assertThat(make()).isEqualTo(ExitStatus.DONE);
    Files.writeString(sheets.resolve(mark), "somebody");
    Map<String, String> before = everything(folder);
    planOf("More fog");
    before.put("quay.yaml", content(plan));

    assertThat(make()).isEqualTo(ExitStatus.BAD_INPUT);

    assertThat(err.toString())
        .startsWith(
            sheets.resolve("quay.xlsx")
                + ": this workbook is open in a spreadsheet program ("
                + mark
                + " is beside it)")
        .contains("close it there, or go on with --anyway");
    assertThat(everything(folder)).isEqualTo(before);

    assertThat(make("--anyway")).isEqualTo(ExitStatus.DONE);
    assertThat(Files.readString(sheets.resolve("timing.json"))).contains("More fog");
    assertThat(sheets.resolve(mark)).hasContent("somebody");
  }

  @Test
  void a_mark_of_another_workbook_is_no_hindrance() throws IOException {
    Files.createDirectories(sheets);
    Files.writeString(sheets.resolve(".~lock.other.xlsx#"), "somebody");
    assertThat(make()).isEqualTo(ExitStatus.DONE);
  }

  @Test
  void a_plan_that_the_workbook_would_replace_is_refused_by_name() throws IOException {
    assertThat(run("begin", folder.resolve("quay.mid").toString(), "--out", xlsx().toString()))
        .isEqualTo(ExitStatus.DONE);
    Map<String, String> before = everything(folder);

    for (String here : List.of(".", "sub/..", "link")) {
      Files.createDirectories(folder.resolve("sub"));
      if (here.equals("link") && !Files.exists(folder.resolve("link"))) {
        Files.createSymbolicLink(folder.resolve("link"), folder);
      }
      int status = run("make", xlsx().toString(), "--out", folder.resolve(here).toString());
      assertThat(status).as(here).isEqualTo(ExitStatus.BAD_INPUT);
      assertThat(err.toString())
          .startsWith(xlsx() + ": make reads this file and would overwrite it")
          .contains("name another folder with --out");
      assertThat(everything(folder)).isEqualTo(before);
    }
  }

  private Path xlsx() {
    return folder.resolve("plan.xlsx");
  }

  @Test
  void a_score_and_a_drawing_that_files_would_replace_are_all_named() throws IOException {
    Path score = Files.move(folder.resolve("quay.mid"), folder.resolve("quay-cues.mid"));
    Path drawing = Files.writeString(folder.resolve("quay-artwork.svg"), "<svg/>", UTF_8);
    Files.writeString(
        plan,
        """
        title: The quay
        score: quay-cues.mid
        film: {frame-rate: 24}
        panels:
          - {panel: 1, action: Fog, drawing: quay-artwork.svg}
        """,
        UTF_8);
    Map<String, String> before = everything(folder);

    assertThat(run("make", plan.toString(), "--out", folder.toString()))
        .isEqualTo(ExitStatus.BAD_INPUT);

    assertThat(err.toString())
        .contains(score + ": make reads this file")
        .contains(drawing + ": make reads this file");
    assertThat(everything(folder)).isEqualTo(before);
  }

  @Test
  void a_link_in_the_place_of_a_file_is_replaced_and_what_it_leads_to_stays() throws IOException {
    Path theirs = Files.writeString(folder.resolve("diary.txt"), "a diary", UTF_8);
    Files.createDirectories(sheets);
    Files.createSymbolicLink(sheets.resolve("quay.html"), theirs);
    assertThat(make()).isEqualTo(ExitStatus.DONE);
    assertThat(theirs).hasContent("a diary");
    assertThat(sheets.resolve("quay.html")).isRegularFile();
    assertThat(Files.isSymbolicLink(sheets.resolve("quay.html"))).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        ".quay.html.part",
        ".quay.xlsx.part",
        ".timing.json.part",
        ".barsheet.lock",
        ".barsheet",
        ".barsheet/new/quay.html",
        ".barsheet/new",
        ".barsheet/old",
        ".barsheet/journal.json.part",
      })
  void a_planted_link_leads_nobody_to_write_elsewhere(String planted) throws IOException {
    Path theirs = Files.createDirectories(folder.resolve("theirs"));
    Files.writeString(theirs.resolve("diary.txt"), "a diary", UTF_8);
    Path link = sheets.resolve(planted);
    Files.createDirectories(link.getParent());
    boolean folders = planted.endsWith("new") || planted.endsWith("old");
    Files.createSymbolicLink(link, folders ? theirs : theirs.resolve("diary.txt"));

    int status = make();

    assertThat(everything(theirs)).containsOnlyKeys("diary.txt");
    assertThat(theirs.resolve("diary.txt")).hasContent("a diary");
    if (status != ExitStatus.DONE) {
      assertThat(err.toString()).contains(link + ": ").contains("move it, or name another folder");
      assertThat(sheets.resolve("timing.json")).doesNotExist();
    }
  }

  @Test
  void a_link_in_the_place_of_a_folder_of_ours_is_refused() throws IOException {
    Path theirs = Files.createDirectories(folder.resolve("theirs"));
    Files.createDirectories(sheets);
    Files.createSymbolicLink(sheets.resolve("calls"), theirs);
    assertThat(make()).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString())
        .startsWith(sheets.resolve("calls") + ": a link already has this folder's name");
    assertThat(theirs).isEmptyDirectory();
    assertThat(everything(sheets)).isEmpty();
  }

  @Test
  void a_file_that_cannot_be_replaced_stops_all_of_them() throws Exception {
    assertThat(make()).isEqualTo(ExitStatus.DONE);
    Path book = sheets.resolve("quay.xlsx");
    assumeTrue(chattr("+i", book), "needs chattr");
    try {
      Map<String, String> before = everything(sheets);
      planOf("More fog");
      assertThat(make()).isEqualTo(ExitStatus.BAD_INPUT);
      assertThat(err.toString()).startsWith(book + ": this file cannot be replaced");
      assertThat(everything(sheets)).isEqualTo(before);
    } finally {
      assertThat(chattr("-i", book)).isTrue();
    }
    assertThat(make()).isEqualTo(ExitStatus.DONE);
    assertThat(Files.readString(sheets.resolve("timing.json"))).contains("More fog");
  }

  private static boolean chattr(String flag, Path file) throws InterruptedException {
    try {
      return new ProcessBuilder("chattr", flag, file.toString())
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException noSuchProgram) {
      return false;
    }
  }

  @Test
  void a_plan_that_cannot_be_made_leaves_no_folder_behind() throws IOException {
    Files.delete(folder.resolve("quay.mid"));
    assertThat(make()).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(sheets).doesNotExist();
  }

  @Test
  void begin_leaves_a_link_alone_whatever_it_leads_to() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("first.yaml"), folder.resolve("gone"));
    assertThat(run("begin", folder.resolve("quay.mid").toString(), "--out", link.toString()))
        .isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Files.exists(folder.resolve("gone"), LinkOption.NOFOLLOW_LINKS)).isFalse();
  }
}
