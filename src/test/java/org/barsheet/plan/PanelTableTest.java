package org.barsheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.input.InputException;
import org.barsheet.plan.begin.BookWriter;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.plan.read.PlanSource;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelTableTest {

  private static final String PLAN =
      """
      title: Quay
      score: quay.mid
      film: {frame-rate: 24}
      motifs: {glimmer: {notes: C5/4 E5/4}}
      openings: {lamp: {left: 1, top: 1, width: 2, height: 2, iris: 100 %}}
      performers: {cello: {}, flute: {}}
      panels: panels.csv
      """;

  private static final String TABLE =
      """
      panel,action,cue,field,opening,photographs,performer,seen-in,mood
      1,"Fog, then light",,whole,,,,,calm
      1.10,"The ""big"" lamp
      is lit",glimmer 1,left 1 top 2 width 4,lamp,9,cello,lamp,

      ,,,,lamp,5,flute,lamp,
      12A,Dawn,bar 40,,,,,,
      """;

  @TempDir private Path folder;
  private Path plan = Path.of("");

  @BeforeEach
  void writePlan() throws IOException {
    plan = folder.resolve("plan.yaml");
    Files.writeString(plan, PLAN);
  }

  private void writeTable(String text) throws IOException {
    Files.writeString(folder.resolve("panels.csv"), text);
  }

  private List<String> told() {
    InputException wrong = catchThrowableOfType(InputException.class, () -> PlanReader.read(plan));
    assertThat(wrong).isNotNull();
    return wrong.problems().stream()
        .map(
            one ->
                Path.of(one.file()).getFileName() + ", " + one.position() + ": " + one.sentence())
        .toList();
  }

  @Test
  void a_table_holds_panels_and_rows_without_a_number_add_to_the_panel_above() throws IOException {
    writeTable(TABLE);
    List<Panel> panels = PlanReader.read(plan).panels();
    assertThat(panels).extracting(Panel::name).containsExactly("1", "1.10", "12A");
    assertThat(panels.get(0).action()).isEqualTo("Fog, then light");
    Panel lamp = panels.get(1);
    assertThat(lamp.action()).isEqualTo("The \"big\" lamp is lit");
    assertThat(lamp.reveals()).extracting(Reveal::photographs).containsExactly(9, 5);
    assertThat(lamp.appears())
        .containsExactly(new Panel.Appears("cello", "lamp"), new Panel.Appears("flute", "lamp"));
    assertThat(lamp.where().position()).isEqualTo("line 3");
  }

  @ParameterizedTest
  @CsvSource({"semicolons, ;", "tabs, '\t'", "commas, ','"})
  void the_sign_between_columns_is_found_and_said(String name, String sign) throws IOException {
    writeTable("panel" + sign + "action\n1" + sign + "\"Fog; or, rain\"\n");
    Plan read = PlanReader.read(plan);
    assertThat(read.panels().get(0).action()).isEqualTo("Fog; or, rain");
    assertThat(read.text().notes())
        .extracting(PlanNote::sentence)
        .containsExactly("the columns are separated by " + name);
  }

  @Test
  void a_byte_order_mark_does_no_harm_and_a_column_of_ones_own_is_said() throws IOException {
    Files.write(folder.resolve("panels.csv"), ("\uFEFF" + TABLE).getBytes(StandardCharsets.UTF_8));
    assertThat(PlanReader.read(plan).text().notes())
        .extracting(PlanNote::sentence)
        .contains("the column 'mood' is ignored");
  }

  @Test
  void mistakes_are_told_with_line_and_column_of_the_table() throws IOException {
    writeTable("panel,action,cue\n1,Fog,glimer 2\n,Who,\n1,Dawn,bar\n");
    assertThat(told())
        .containsExactly(
            "panels.csv, line 2, column cue: no motif is called glimer",
            "panels.csv, line 3: this row has no 'panel'",
            "panels.csv, line 4, column panel: two panels are called 1",
            "panels.csv, line 4, column cue: cue: the bar's number is missing here");
  }

  @Test
  void a_table_that_cannot_be_read_is_told_beside_everything_else() throws IOException {
    Files.writeString(plan, PLAN.replace("frame-rate: 24", "frame-rate: 23"));
    assertThat(told())
        .containsExactly(
            "plan.yaml, line 3, column 20: frame-rate: '23' isn't a frame rate",
            "panels.csv, : there is no such file");
    writeTable("panel,action\n1,\"Fog\n");
    assertThat(told().get(1)).contains("a quote is not closed");
    writeTable("number,action\n1,Fog\n");
    assertThat(told().get(1)).contains("there is no column 'panel'");
    writeTable("panel,action\n" + "1,x\n".repeat(30_000));
    assertThat(told().get(1)).contains("the table has more than 20000 rows");
  }

  @Test
  void panels_may_stand_in_a_workbook_of_their_own() throws IOException {
    writeTable(TABLE);
    Entry.Keyed tree = PlanSource.read(new PlanReading(plan));
    Files.write(folder.resolve("story.xlsx"), new BookWriter(tree, List.of()).bytes());
    List<Panel> fromCsv = PlanReader.read(plan).panels();
    Files.writeString(plan, PLAN.replace("panels.csv", "story.xlsx"));
    assertThat(PlanReader.read(plan).panels())
        .usingRecursiveComparison()
        .ignoringFieldsOfTypes(Where.class)
        .isEqualTo(fromCsv);
  }
}
