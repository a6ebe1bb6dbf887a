package org.barsheet.production;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Severity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Notes saved from the review page come back as notes of the film. */
class ViewerNotesTest {

  private Path plan = Path.of("");

  @BeforeEach
  void write_a_plan(@TempDir Path folder) throws IOException {
    plan = folder.resolve("quay.yaml");
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), folder.resolve("quay.mid"));
    Files.writeString(
        plan,
        """
        title: Quay
        score: quay.mid
        film: {frame-rate: 24}
        panels:
          - {panel: 1, action: Fog}
          - {panel: 2, action: Roofs, cue: bar 5}
        """);
  }

  private List<Finding> notes(String ending, String text) throws IOException {
    Files.writeString(plan.resolveSibling("quay-notes" + ending), text);
    FilmSheet film = Production.film(plan, Progress.SILENT);
    return film.findings().stream()
        .filter(finding -> finding.sentence().startsWith("viewer's note"))
        .toList();
  }

  @Test
  void a_table_is_read_and_each_note_stands_at_its_place() throws IOException {
    List<Finding> notes =
        notes(
            ".csv",
            """
            frame,timecode,place,panel,note
            "400","00:00:16:16","bar 5 beat 1","2","Too ""early"", I think"
            "10","","","1","'=more fog"
            """
                .replace("\n", "\r\n"));
    assertThat(notes)
        .extracting(Finding::sentence)
        .containsExactly("viewer's note: =more fog", "viewer's note: Too \"early\", I think");
    Finding second = notes.get(1);
    assertThat(second.severity()).isEqualTo(Severity.REMARK);
    assertThat(second.panel()).isEqualTo("2");
    assertThat(second.frame()).hasValue(400);
    assertThat(second.place()).startsWith("bar 5");
    assertThat(second.remedy()).isEmpty();
  }

  @Test
  void the_same_notes_saved_twice_are_listed_once() throws IOException {
    Files.writeString(plan.resolveSibling("quay-notes.csv"), "frame,panel,note\n10,1,More fog\n");
    List<Finding> notes =
        notes(
            ".json",
            "{\"format\":\"barsheet-notes\",\"version\":1,\"notes\":["
                + "{\"frame\":10,\"panel\":\"1\",\"note\":\"More fog\"}]}");
    assertThat(notes).hasSize(1);
  }

  @Test
  void a_note_says_where_its_panel_has_gone() throws IOException {
    List<Finding> notes = notes(".csv", "frame,panel,note\n10,7,Higher\n999999,7,Later\n");
    assertThat(notes)
        .extracting(Finding::remedy)
        .containsExactly(
            "it was written on panel 7; the film ends before it",
            "it was written on panel 7; panel 1 is there now");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        ".csv|frame,note\\nlate,Hm|line 2|'late' is not a film frame",
        ".csv|when,what\\n1,Hm||does not name the columns frame and note",
        ".csv|frame,note\\n1,\"Hm||a quote is not closed",
        ".json|[]||not a list of notes",
        ".json|{\"format\":\"other\"}||not notes from the review page",
        ".json|{\"format\":\"barsheet-notes\",\"notes\":[{\"frame\":-1,\"note\":\"Hm\"}]}|note 1|'-1' is not a film frame",
      })
  void a_damaged_file_or_somebodys_own_is_passed_over_and_told(
      String ending, String text, String where, String sentence) throws IOException {
    Files.writeString(plan.resolveSibling("quay-notes" + ending), text.replace("\\n", "\n"));
    List<Finding> told =
        Production.film(plan, Progress.SILENT).findings().stream()
            .filter(finding -> finding.sentence().contains("-notes"))
            .toList();
    assertThat(told).hasSize(1);
    assertThat(told.get(0).severity()).isEqualTo(Severity.REMARK);
    assertThat(told.get(0).sentence())
        .startsWith("quay-notes" + ending + " is ignored: " + (where == null ? "" : where))
        .contains(sentence);
  }
}
