package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.barsheet.score.MidiBytes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A composer sends another version after the sheets were made. */
class RevisedScoreTest {

  private static final int QUARTER = 480;
  private static final int BAR = 4 * QUARTER;

  /** Bars of the horn by their lowest note; at 0 the oboe plays the motif. */
  private static final List<Integer> FIRST =
      List.of(40, 41, 0, 43, 44, 45, 46, 0, 48, 49, 50, 51, 52, 53, 54, 55);

  private static final String PLAN =
      """
      title: The new version
      score: music.mid
      film: {frame-rate: 24}
      motifs:
        glimmer: {notes: "C5/4 E5/8 G5/8 F5/4 D5/4", accent: first}
      openings:
        flap: {left: 1, top: 1, width: 2, height: 2, hinge: left, to: 90 deg}
      panels:
        - {panel: 1, action: The quay}
        - {panel: 2, action: A lamp, cue: glimmer 1}
        - {panel: 3, action: Another lamp, cue: glimmer 2, reveals: [{opening: flap, photographs: 4%s}]}
        - {panel: 4, action: The ferry, cue: bar 12}
      """;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path plan = Path.of("");

  @BeforeEach
  void sheetsOfTheFirstVersion() throws IOException {
    plan = Files.writeString(folder.resolve("film.yaml"), PLAN.formatted(""));
    score(FIRST);
    assertThat(run("make")).as("%s", err).isEqualTo(ExitStatus.DONE);
    clear();
  }

  @Test
  void check_says_first_which_panels_stand_on_other_music() throws IOException {
    score(withNewReturn());
    assertThat(run("check")).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString().lines().limit(2))
        .containsExactly(
            "director",
            "  ! panel 3: asks for glimmer 2: that was Oboe in bar 8, which is glimmer 3 in bar 10"
                + " now; glimmer 2 is a new return, Oboe in bar 5");
    assertThat(out.toString())
        .contains("! panel 4: asks for bar 12: that is bar 14 now; bar 12 was bar 10")
        .contains("barsheet adopt");
  }

  @Test
  void what_make_left_standing_on_other_music_is_told_until_the_plan_is_put_right()
      throws IOException {
    score(withNewReturn());
    run("make");
    assertThat(err.toString()).contains("panel 3 asks for glimmer 2: that was Oboe in bar 8");
    clear();
    run("check");
    assertThat(out.toString()).contains("panel 3: asks for glimmer 2: that was Oboe in bar 8");
    clear();
    String right = PLAN.formatted("").replace("glimmer 2", "glimmer 3").replace("bar 12", "bar 14");
    Files.writeString(plan, right);
    run("check");
    assertThat(out.toString()).doesNotContain("that was").doesNotContain("that is");
  }

  @Test
  void adopt_puts_the_plan_right_even_after_sheets_were_made_from_the_new_version()
      throws IOException {
    score(withNewReturn());
    run("make");
    clear();
    String music = folder.resolve("music.mid").toString();
    assertThat(
            Barsheet.run(
                new PrintWriter(out), new PrintWriter(err), "adopt", plan.toString(), music))
        .as("%s", err)
        .isEqualTo(ExitStatus.DONE);
    assertThat(plan).content().contains("cue: glimmer 3", "cue: bar 14");
    clear();
    run("check");
    assertThat(out.toString()).doesNotContain("asks for");
  }

  @Test
  void a_plan_that_cannot_be_any_more_is_told_together_with_its_cause() throws IOException {
    Files.writeString(plan, PLAN.formatted(", photographed: yes"));
    score(withNewReturn());
    assertThat(run("check")).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString())
        .contains("panel 3 asks for glimmer 2: that was Oboe in bar 8")
        .contains("; its photographs are taken")
        .contains("flap in panel 3 was photographed to land on frame");
  }

  @Test
  void an_unchanged_score_on_other_ticks_in_another_order_of_tracks_is_no_finding()
      throws IOException {
    String before = found();
    write(FIRST, 960, true);
    assertThat(found()).isEqualTo(before);
  }

  @Test
  void a_motif_that_is_heard_otherwise_is_told_on_an_unchanged_score() throws IOException {
    Files.writeString(
        plan, PLAN.formatted("").replace("C5/4 E5/8 G5/8 F5/4 D5/4", "G4/4 A4/4 B4/4 C5/4"));
    run("check");
    assertThat(err.toString())
        .contains(
            "panel 2 asks for glimmer 1: that was Oboe in bar 3, where glimmer no longer returns"
                + " (bar 3 now)");
  }

  @Test
  void a_note_typed_beside_a_return_follows_it_to_its_new_number() throws IOException {
    type("Cues", "glimmer-2", "slow lamp");
    type("Timeline", "panel 3", "ask the carpenter");
    type("Timeline", "panel 2", "fog machine");
    score(withNewReturn());
    assertThat(run("make")).isEqualTo(ExitStatus.DONE);
    assertThat(typed("Cues", "glimmer-3")).isEqualTo("slow lamp");
    assertThat(typed("Cues", "glimmer-2")).isEmpty();
    assertThat(typed("Timeline", "panel 3")).isEqualTo("ask the carpenter (older)");
    assertThat(typed("Timeline", "panel 2")).isEqualTo("fog machine");
  }

  @Test
  void notes_follow_their_returns_through_ten_revisions_in_a_row() throws IOException {
    String oneFreePanel = PLAN.formatted("").replaceAll("(?m)^  - \\{panel: [234].*\n", "");
    Files.writeString(plan, oneFreePanel);
    run("make");
    type("Cues", "glimmer-2", "slow lamp");
    List<Integer> bars = new ArrayList<>(FIRST);
    for (int revision = 1; revision <= 10; revision++) {
      bars.addAll(
          revision % 2 == 0 ? 1 : 4, List.of(revision % 3 == 0 ? 0 : 70 - revision, 80 - revision));
      score(bars);
      assertThat(run("make")).as("%s", err).isEqualTo(ExitStatus.DONE);
    }
    long before = bars.subList(0, bars.indexOf(48)).stream().filter(bar -> bar == 0).count();
    assertThat(typed("Cues", "glimmer-" + before)).isEqualTo("slow lamp");
  }

  private Path book() {
    return folder.resolve("film-sheets").resolve("film.xlsx");
  }

  private void type(String sheet, String rowName, String words) throws IOException {
    try (InputStream in = Files.newInputStream(book());
        XSSFWorkbook open = new XSSFWorkbook(in)) {
      note(open.getSheet(sheet), rowName).setCellValue(words);
      try (OutputStream out = Files.newOutputStream(book())) {
        open.write(out);
      }
    }
  }

  private String typed(String sheet, String rowName) throws IOException {
    try (InputStream in = Files.newInputStream(book());
        XSSFWorkbook open = new XSSFWorkbook(in)) {
      return note(open.getSheet(sheet), rowName).getStringCellValue();
    }
  }

  /** The cell for notes in the row of a permanent name, which is the row's last text. */
  private static Cell note(Sheet sheet, String rowName) {
    int column = -1;
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (column < 0 && cell.toString().equals("notes")) {
          column = cell.getColumnIndex();
        }
        if (cell.toString().equals(rowName) && column >= 0) {
          return row.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
        }
      }
    }
    throw new AssertionError("no row " + rowName + " on " + sheet.getSheetName());
  }

  private String found() {
    clear();
    run("check");
    return out.toString();
  }

  private static List<Integer> withNewReturn() {
    List<Integer> bars = new ArrayList<>(FIRST);
    bars.addAll(4, List.of(0, 60));
    return bars;
  }

  private void score(List<Integer> bars) throws IOException {
    write(bars, QUARTER, false);
  }

  private void write(List<Integer> bars, int ticks, boolean turned) throws IOException {
    MidiBytes.Track horn =
        new MidiBytes.Track().text(0, 3, turned ? "Hrn." : "Horn").tempo(0, 500_000);
    MidiBytes.Track oboe = new MidiBytes.Track().text(0, 3, turned ? "Ob." : "Oboe");
    int scale = ticks / QUARTER;
    for (int bar = 0; bar < bars.size(); bar++) {
      long start = (long) bar * BAR * scale;
      if (bars.get(bar) == 0) {
        long[] at = {0, 480, 720, 960, 1440, 1920};
        int[] pitches = {72, 76, 79, 77, 74};
        for (int i = 0; i < pitches.length; i++) {
          oboe.note(start + at[i] * scale, start + at[i + 1] * scale, 1, pitches[i]);
        }
      } else {
        for (int beat = 0; beat < 4; beat++) {
          long on = start + (long) beat * QUARTER * scale;
          horn.note(on, on + (long) QUARTER * scale, 0, bars.get(bar) + 5 * (beat % 2));
        }
      }
    }
    MidiBytes file =
        turned
            ? MidiBytes.file().division(ticks).track(oboe).track(horn)
            : MidiBytes.file().division(ticks).track(horn).track(oboe);
    Files.copy(
        file.into(Files.createTempDirectory(folder, "written")),
        folder.resolve("music.mid"),
        StandardCopyOption.REPLACE_EXISTING);
  }

  private int run(String command) {
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), command, plan.toString());
  }

  private void clear() {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
  }
}
