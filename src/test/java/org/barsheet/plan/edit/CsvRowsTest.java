package org.barsheet.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.input.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Panels and keys put into a table of panels in text and taken out: those fields only. */
class CsvRowsTest {

  private static final PlanPath PANELS = PlanPath.ROOT.key("panels");

  private static final String TABLE =
      """
      panel;action;cue;opening;slow;mood
      1;"Fog; thick";bar 1;lamp;end;grey
      ;;;door;;

      2;Dawn;bar 5
      3;Day;"bar 9";;;
      """;

  @TempDir private Path folder;

  private String edited(String table, PlanEdit edit) throws IOException {
    Path plan = Files.writeString(folder.resolve("plan.yaml"), "title: x\npanels: panels.csv\n");
    Files.writeString(folder.resolve("panels.csv"), table);
    PlanTexts before = PlanTexts.read(plan);
    List<EditedFile> files = before.with(edit).since(before);
    assertThat(files).hasSize(1);
    assertThat(files.get(0).file()).isEqualTo(folder.resolve("panels.csv"));
    return new String(files.get(0).after(), StandardCharsets.UTF_8);
  }

  private static PlanPath panel(String name) {
    return PANELS.named("panel", name);
  }

  @Test
  void a_key_is_a_field_in_its_column_which_is_begun_where_it_is_missing() throws IOException {
    assertThat(edited(TABLE, new TreeEdit.Put(panel("1").key("cue"), "bar 2; beat 2")))
        .isEqualTo(TABLE.replace("bar 1", "\"bar 2; beat 2\""));
    assertThat(edited(TABLE, new TreeEdit.Put(panel("2").key("length"), "4 bars")))
        .isEqualTo(TABLE.replace("mood\n", "mood;length\n").replace("bar 5", "bar 5;;;;4 bars"));
    assertThat(edited(TABLE, new TreeEdit.Remove(panel("3").key("cue"))))
        .isEqualTo(TABLE.replace("\"bar 9\"", "\"\""));
  }

  @Test
  void a_panel_more_is_a_line_more_and_one_less_a_line_less() throws IOException {
    TreeEdit insert =
        new TreeEdit.Insert(PANELS.item(1), Values.keyed("panel", "1b", "cue", "bar 3"));
    assertThat(edited(TABLE, insert))
        .isEqualTo(TABLE.replace(";;;door;;\n", ";;;door;;\n1b;;bar 3;;;\n"));
    assertThat(edited(TABLE, new TreeEdit.Remove(panel("1"))))
        .isEqualTo(TABLE.replace("1;\"Fog; thick\";bar 1;lamp;end;grey\n;;;door;;\n", ""));
    String lines = TABLE.stripTrailing().replace("\n", "\r\n");
    TreeEdit last = new TreeEdit.Insert(PANELS.item(3), Values.keyed("panel", "4"));
    assertThat(edited(lines, last)).isEqualTo(lines + "\r\n4;;;;;");
  }

  @Test
  void a_reveal_more_is_a_row_that_adds_to_its_panel() throws IOException {
    TreeEdit reveal =
        new TreeEdit.Insert(panel("1").key("reveals").item(2), Values.keyed("opening", "x"));
    assertThat(edited(TABLE, reveal))
        .isEqualTo(TABLE.replace(";;;door;;\n", ";;;door;;\n;;;x;;\n"));
    TreeEdit first =
        new TreeEdit.Insert(panel("2").key("reveals").item(0), Values.keyed("opening", "x"));
    assertThat(edited(TABLE, first)).isEqualTo(TABLE.replace("bar 5", "bar 5;x"));
  }

  @Test
  void panels_that_change_places_keep_what_people_wrote_beside_them_or_stay() throws IOException {
    assertThat(edited(TABLE, new TreeEdit.Move(panel("3"), 1)))
        .isEqualTo(TABLE.replace("2;Dawn;bar 5\n3;Day;\"bar 9\"", "3;Day;bar 9\n2;Dawn;\"bar 5\""));
    InputException refused =
        catchThrowableOfType(
            InputException.class, () -> edited(TABLE, new TreeEdit.Move(panel("1"), 1)));
    assertThat(refused.problems()).singleElement().asString().contains("line 2, column mood");
  }
}
