package org.barsheet.plan.edit.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.barsheet.input.InputException;
import org.barsheet.plan.edit.PlanEdit;
import org.barsheet.plan.edit.PlanTexts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Edits that concern several places of a plan. */
class WholeEditsTest {

  private static final String PLAN =
      """
      motifs:
        glimmer: {notes: A3/4 C4/8}   # the lamp
        glimmer-2: {notes: A3/4 D4/8}
      artwork:
        models:
          lamp: {enlarged: 3}
      openings:
        door: {left: 1, top: 2, width: 1, height: 1, model: lamp}
      performers:
        flute: {part: Flute}
      clips: {flute: {file: a.mov}}
      panels:
        - panel: 1
          action: Fog
          cue: glimmer 1
          length: 4 bars
          field:
            from: whole
            to: {left: 1, top: 1, width: 4}
          reveals: {opening: door}   # at last
        - panel: 2
          action: Light
          cue: glimmer near bar 9
          cut: 1 beat before
          reveals:
            - {opening: door, moves: closes}
            - {opening: door, lands-on: glimmer-2 in Flute near bar 12}
          appears:
            - {performer: flute, opening: door}
        - {panel: 3, action: Dawn, cue: 2 bars into panel 2}
      """;

  @TempDir private Path folder;

  private String edited(String plan, PlanEdit edit) throws IOException {
    PlanTexts before = PlanTexts.read(Files.writeString(folder.resolve("plan.yaml"), plan));
    return new String(before.with(edit).since(before).get(0).after(), StandardCharsets.UTF_8);
  }

  @Test
  void a_motif_has_its_new_name_in_every_place_that_asks_for_it() throws IOException {
    assertThat(edited(PLAN, new NewName(NewName.Of.MOTIF, "glimmer", "spark")))
        .isEqualTo(
            PLAN.replace("  glimmer:", "  spark:")
                .replace("glimmer 1", "spark 1")
                .replace("glimmer near", "spark near"));
    assertThat(edited(PLAN, new NewName(NewName.Of.MOTIF, "glimmer-2", "tide")))
        .isEqualTo(PLAN.replace("glimmer-2", "tide"));
  }

  @Test
  void openings_models_performers_and_panels_have_theirs() throws IOException {
    assertThat(edited(PLAN, new NewName(NewName.Of.OPENING, "door", "gate")))
        .isEqualTo(PLAN.replace("door", "gate"));
    assertThat(edited(PLAN, new NewName(NewName.Of.MODEL, "lamp", "small-lamp")))
        .isEqualTo(
            PLAN.replace("    lamp:", "    small-lamp:")
                .replace("model: lamp", "model: small-lamp"));
    assertThat(edited(PLAN, new NewName(NewName.Of.PERFORMER, "flute", "piccolo")))
        .isEqualTo(PLAN.replace("flute", "piccolo"));
    assertThat(edited(PLAN, new NewName(NewName.Of.PANEL, "2", "2A")))
        .isEqualTo(PLAN.replace("panel: 2", "panel: 2A").replace("panel 2}", "panel 2A}"));
  }

  @Test
  void a_name_that_is_taken_is_refused_with_its_place() {
    NewName taken = new NewName(NewName.Of.MOTIF, "glimmer", "glimmer-2");
    InputException refused = catchThrowableOfType(InputException.class, () -> edited(PLAN, taken));
    assertThat(refused.problems())
        .singleElement()
        .asString()
        .contains("line 3")
        .contains("'glimmer-2' is already there");
  }

  @Test
  void a_split_panel_keeps_what_moves_and_its_second_half_shows_what_it_ended_with()
      throws IOException {
    String second =
        """
        - panel: 1b
          action: Fog
          cue: bar 4
          field: {left: 1, top: 1, width: 4}
        """
            .indent(2);
    assertThat(edited(PLAN, new SplitPanel("1", "1b", "bar 4")))
        .isEqualTo(
            PLAN.replace("    length: 4 bars\n", "")
                .replace("   # at last\n", "   # at last\n" + second));
  }

  @Test
  void joined_panels_are_one_and_reveals_go_on_landing_where_they_did() throws IOException {
    String joined = edited(PLAN, new JoinPanels("2"));
    assertThat(joined)
        .isEqualTo(
            PLAN.replace("action: Light", "action: Light; Dawn")
                .replace("  - {panel: 3, action: Dawn, cue: 2 bars into panel 2}\n", ""));
    String all = edited(joined, new JoinPanels("1"));
    assertThat(all)
        .contains("action: Fog; Light; Dawn\n")
        .contains("- {opening: door, moves: closes, lands-on: glimmer near bar 9}")
        .contains("- {opening: door, lands-on: glimmer-2 in Flute near bar 12}")
        .contains("- {performer: flute, opening: door}")
        .doesNotContain("length: 4 bars")
        .doesNotContain("panel: 2");
    assertThat(catchThrowableOfType(InputException.class, () -> edited(all, new JoinPanels("1"))))
        .hasMessageContaining("no panel comes after panel 1");
  }
}
