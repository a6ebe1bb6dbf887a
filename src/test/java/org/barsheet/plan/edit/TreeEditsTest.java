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

/** Keys and items put into a plan in YAML, taken out, moved and renamed: all else as it was. */
class TreeEditsTest {

  private static final PlanPath PANELS = PlanPath.ROOT.key("panels");

  private static final String PLAN =
      """
      title: Quay  # working title
      motifs:
          glimmer:   {notes: "A3/4 C4/8"}

      # the first act
      panels:
      - panel: 1
        action: 'Fog'
        field: {left: 1, top: 2}  # wide
        # not sure about this one

      # the baker
      - panel: 2
        action: 'Lamp'
        reveals:
        - {opening: lamp, slow: end}   # at last
      - {panel: 3, action: 'Dawn', cue: bar 9}
      """;

  @TempDir private Path folder;

  private String edited(String plan, PlanEdit edit) throws IOException {
    Path file = Files.writeString(folder.resolve("plan.yaml"), plan);
    PlanTexts before = PlanTexts.read(file);
    List<EditedFile> files = before.with(edit).since(before);
    return files.isEmpty() ? plan : new String(files.get(0).after(), StandardCharsets.UTF_8);
  }

  private static PlanPath panel(String name) {
    return PANELS.named("panel", name);
  }

  @Test
  void a_key_is_put_where_people_write_it_in_the_neighbors_quotes() throws IOException {
    assertThat(edited(PLAN, new TreeEdit.Put(panel("2").key("cue"), "glimmer 1")))
        .isEqualTo(PLAN.replace("  action: 'Lamp'\n", "  action: 'Lamp'\n  cue: glimmer 1\n"));
    assertThat(edited(PLAN, new TreeEdit.Put(panel("3").key("cut"), "on cue")))
        .isEqualTo(PLAN.replace("cue: bar 9}", "cue: bar 9, cut: on cue}"));
  }

  @Test
  void a_table_keeps_what_it_has_in_common_with_the_one_before() throws IOException {
    TreeEdit moved =
        new TreeEdit.Put(panel("1").key("field"), Values.keyed("left", "3", "top", "2"));
    assertThat(edited(PLAN, moved)).isEqualTo(PLAN.replace("left: 1", "left: 3"));
    TreeEdit whole = new TreeEdit.Put(panel("1").key("field"), "whole");
    assertThat(edited(PLAN, whole)).isEqualTo(PLAN.replace("{left: 1, top: 2}", "whole"));
  }

  @Test
  void a_new_item_is_laid_out_as_the_one_before_it() throws IOException {
    TreeEdit lines =
        new TreeEdit.Insert(PANELS.item(2), Values.keyed("panel", "2b", "action", "It"));
    assertThat(edited(PLAN, lines))
        .isEqualTo(PLAN.replace("# at last\n", "# at last\n- panel: 2b\n  action: 'It'\n"));
    TreeEdit braces =
        new TreeEdit.Insert(PANELS.item(3), Values.keyed("panel", "4", "cue", "bar 9"));
    assertThat(edited(PLAN, braces)).isEqualTo(PLAN + "- {panel: 4, cue: bar 9}\n");
  }

  @Test
  void a_new_list_is_laid_out_as_those_beside_it() throws IOException {
    PlanPath first = panel("1").key("reveals").item(0);
    assertThat(edited(PLAN, new TreeEdit.Insert(first, Values.keyed("opening", "gate"))))
        .isEqualTo(
            PLAN.replace(
                "  # not sure about this one\n",
                "  reveals:\n  - {opening: gate}\n  # not sure about this one\n"));
  }

  @Test
  void an_item_moves_with_its_comments() throws IOException {
    int baker = PLAN.indexOf("# the baker");
    int dawn = PLAN.indexOf("- {panel: 3");
    int fog = PLAN.indexOf("- panel: 1");
    String first = PLAN.substring(fog, PLAN.indexOf("\n\n# the baker"));
    String moved =
        PLAN.substring(0, fog)
            + PLAN.substring(baker, dawn).stripTrailing()
            + "\n\n"
            + first
            + "\n"
            + PLAN.substring(dawn);
    assertThat(edited(PLAN, new TreeEdit.Move(panel("2"), 0))).isEqualTo(moved);
  }

  @Test
  void what_is_taken_out_goes_alone() throws IOException {
    assertThat(edited(PLAN, new TreeEdit.Remove(panel("3"))))
        .isEqualTo(PLAN.substring(0, PLAN.indexOf("- {panel: 3")));
    assertThat(edited(PLAN, new TreeEdit.Remove(panel("2").key("reveals").item(0))))
        .isEqualTo(
            PLAN.replace(":\n  - {opening: lamp, slow: end}   # at last", ": []   # at last"));
    assertThat(edited(PLAN, new TreeEdit.Remove(panel("2").key("cut")))).isEqualTo(PLAN);
  }

  @Test
  void a_key_is_renamed_with_its_value_as_it_was() throws IOException {
    TreeEdit rename = new TreeEdit.Rename(PlanPath.ROOT.key("motifs").key("glimmer"), "spark");
    assertThat(edited(PLAN, rename)).isEqualTo(PLAN.replace("glimmer:", "spark:"));
  }

  @Test
  void a_section_that_is_not_there_is_begun() throws IOException {
    PlanPath rate = PlanPath.ROOT.key("film").key("frame-rate");
    assertThat(edited(PLAN, new TreeEdit.Put(rate, "24")))
        .isEqualTo(PLAN.replace("title\nm", "title\nfilm: {frame-rate: 24}\nm"));
    PlanPath tide = PlanPath.ROOT.key("motifs").key("tide").key("notes");
    assertThat(edited(PLAN, new TreeEdit.Put(tide, "D4/2")))
        .isEqualTo(PLAN.replace("C4/8\"}\n", "C4/8\"}\n    tide: {notes: D4/2}\n"));
  }

  @Test
  void a_repeated_table_is_refused_with_its_line() {
    String plan = "title: x\npanels:\n- &p {panel: 1}\n- *p\n";
    TreeEdit put = new TreeEdit.Put(PANELS.item(0).key("cue"), "bar 3");
    InputException refused = catchThrowableOfType(InputException.class, () -> edited(plan, put));
    assertThat(refused.problems()).singleElement().asString().contains("line 4").contains("alias");
  }
}
