package org.barsheet.production.editing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.barsheet.input.InputException;
import org.barsheet.plan.begin.BookWriter;
import org.barsheet.plan.edit.PlanEdit;
import org.barsheet.plan.edit.PlanPath;
import org.barsheet.plan.edit.PlanTexts;
import org.barsheet.plan.edit.TreeEdit;
import org.barsheet.plan.edit.Values;
import org.barsheet.plan.edit.whole.NewName;
import org.barsheet.plan.edit.whole.SplitPanel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan that several people edit at once: nothing of anybody's is lost. */
class EditedPlanTest {

  private static final Path DEMO = Path.of("scores/lamplighters-quay.yaml");
  private static final PlanPath PANELS = PlanPath.ROOT.key("panels");

  @TempDir private Path folder;
  private Path plan = Path.of("");
  private String before = "";

  @BeforeEach
  void copyTheDemo() throws IOException {
    before = Files.readString(DEMO);
    plan = Files.writeString(folder.resolve("plan.yaml"), before);
  }

  private static TreeEdit cue(String panel, String cue) {
    return new TreeEdit.Put(PANELS.named("panel", panel).key("cue"), cue);
  }

  private void outside(String text, String now) throws IOException {
    String there = Files.readString(plan);
    assertThat(there).contains(text);
    Files.writeString(plan, there.replace(text, now));
  }

  private List<String> files() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void an_edit_is_written_at_once_and_the_plan_before_is_kept_once() throws IOException {
    EditedPlan edited = EditedPlan.open(plan);
    assertThat(edited.make(cue("5", "bar 12"))).isInstanceOf(Outcome.Written.class);
    assertThat(plan).hasContent(before.replace("cue: bar 11,", "cue: bar 12,"));
    edited.make(cue("7", "bar 16"));
    assertThat(edited.kept()).containsExactly(folder.resolve("plan-kept-1.yaml"));
    assertThat(folder.resolve("plan-kept-1.yaml")).hasContent(before);
    assertThat(files()).containsExactly("plan-kept-1.yaml", "plan.yaml");
  }

  @Test
  void nothing_is_written_without_an_edit() throws IOException {
    FileTime old = FileTime.fromMillis(1_000_000);
    Files.setLastModifiedTime(plan, old);
    EditedPlan edited = EditedPlan.open(plan);
    assertThat(edited.look()).isFalse();
    assertThat(edited.make(cue("5", "bar 11"))).isEqualTo(new Outcome.Unchanged());
    assertThat(edited.undo()).isEqualTo(new Outcome.Unchanged());
    assertThat(Files.getLastModifiedTime(plan)).isEqualTo(old);
    assertThat(files()).containsExactly("plan.yaml");
  }

  @Test
  void undo_brings_back_every_byte_and_redo_makes_it_again() throws IOException {
    EditedPlan edited = EditedPlan.open(plan);
    edited.make(cue("5", "bar 12"));
    edited.make(new SplitPanel("12", "12b", "bar 31"));
    edited.make(new NewName(NewName.Of.MOTIF, "glimmer", "spark"));
    String after = Files.readString(plan);
    while (edited.canUndo()) {
      edited.undo();
    }
    assertThat(plan).hasContent(before);
    while (edited.canRedo()) {
      edited.redo();
    }
    assertThat(plan).hasContent(after);
    edited.undo();
    edited.make(cue("7", "bar 16"));
    assertThat(edited.canRedo()).isFalse();
  }

  @Test
  void what_somebody_else_writes_is_taken_in_and_stays() throws IOException {
    EditedPlan edited = EditedPlan.open(plan);
    PlanTexts seen = edited.now();
    outside("cue: bar 15", "cue: bar 16 # later");
    outside("panels:\n", "panels:\n  - {panel: 0, action: Night}\n");
    assertThat(edited.make(cue("5", "bar 12"), seen)).isInstanceOf(Outcome.Written.class);
    String both =
        before
            .replace("cue: bar 15", "cue: bar 16 # later")
            .replace("panels:\n", "panels:\n  - {panel: 0, action: Night}\n");
    assertThat(plan).hasContent(both.replace("cue: bar 11,", "cue: bar 12,"));
  }

  @Test
  void undo_takes_back_its_own_edit_alone_after_somebody_else_wrote() throws IOException {
    EditedPlan edited = EditedPlan.open(plan);
    edited.make(cue("5", "bar 12"));
    outside("cue: bar 15", "cue: bar 16");
    assertThat(edited.undo()).isInstanceOf(Outcome.Written.class);
    assertThat(plan).hasContent(before.replace("cue: bar 15", "cue: bar 16"));
    edited.redo();
    assertThat(plan)
        .hasContent(
            before.replace("cue: bar 15", "cue: bar 16").replace("cue: bar 11,", "cue: bar 12,"));
  }

  @Test
  void where_both_changed_the_same_place_it_asks_with_both_texts() throws IOException {
    EditedPlan edited = EditedPlan.open(plan);
    PlanTexts seen = edited.now();
    outside("cue: bar 11,", "cue: bar 10,");
    Outcome outcome = edited.make(cue("5", "bar 12"), seen);
    assertThat(outcome).isInstanceOf(Outcome.Question.class);
    Outcome.Question question = (Outcome.Question) outcome;
    assertThat(question.places())
        .containsExactly(new Outcome.BothChanged("panel 5 cue", "bar 12", "bar 10"));
    assertThat(plan).hasContent(before.replace("cue: bar 11,", "cue: bar 10,"));
    assertThat(edited.make(question.edit())).isInstanceOf(Outcome.Written.class);
    assertThat(plan).hasContent(before.replace("cue: bar 11,", "cue: bar 12,"));
    edited.undo();
    assertThat(plan).hasContent(before.replace("cue: bar 11,", "cue: bar 10,"));
  }

  @Test
  void an_edit_of_what_somebody_else_deleted_is_a_question() throws IOException {
    EditedPlan edited = EditedPlan.open(plan);
    PlanTexts seen = edited.now();
    int from = before.indexOf("  - {panel: 5,");
    Files.writeString(
        plan, before.substring(0, from) + before.substring(before.indexOf("  - panel: 6")));
    Outcome.Question question = (Outcome.Question) edited.make(cue("5", "bar 12"), seen);
    assertThat(question.places())
        .containsExactly(new Outcome.BothChanged("panel 5 cue", "bar 12", ""));
  }

  @Test
  void a_plan_that_could_not_be_understood_is_not_written() throws IOException {
    EditedPlan edited = EditedPlan.open(plan);
    InputException refused =
        catchThrowableOfType(InputException.class, () -> edited.make(cue("5", "glimer 3")));
    assertThat(refused.problems()).singleElement().asString().contains("glimer");
    PlanEdit gone = new TreeEdit.Remove(PANELS.named("panel", "18"));
    refused = catchThrowableOfType(InputException.class, () -> edited.make(gone));
    assertThat(refused.problems()).singleElement().asString().contains("panel 18");
    assertThat(plan).hasContent(before);
  }

  @Test
  void a_plan_that_is_wrong_already_can_still_be_edited() throws IOException {
    outside("cue: bar 15", "cue: bar fifteen");
    EditedPlan edited = EditedPlan.open(plan);
    assertThat(edited.make(cue("5", "bar 12"))).isInstanceOf(Outcome.Written.class);
  }

  @Test
  void a_file_that_is_no_plan_for_the_moment_is_left_alone() throws IOException {
    EditedPlan edited = EditedPlan.open(plan);
    String broken = before.replace("panels:\n", "panels:\n- [\n");
    Files.writeString(plan, broken);
    assertThat(catchThrowableOfType(InputException.class, () -> edited.make(cue("5", "bar 12"))))
        .isNotNull();
    assertThat(plan).hasContent(broken);
    Files.writeString(plan, before);
    assertThat(edited.make(cue("5", "bar 12"))).isInstanceOf(Outcome.Written.class);
  }

  @Test
  void random_edits_are_undone_to_the_byte_whatever_is_left_of_them() throws IOException {
    Random random = new Random(7);
    EditedPlan edited = EditedPlan.open(plan);
    List<String> states = new ArrayList<>(List.of(before));
    for (int i = 0; i < 25; i++) {
      String panel = "" + (1 + random.nextInt(26));
      PlanPath at = PANELS.named("panel", panel);
      PlanEdit edit =
          switch (random.nextInt(4)) {
            case 0 -> new TreeEdit.Put(at.key("action"), "Action " + i);
            case 1 ->
                new TreeEdit.Put(
                    at.key("field"), Values.keyed("left", "1", "top", "2", "width", "9"));
            case 2 -> new TreeEdit.Remove(at.key("drawing"));
            default -> new TreeEdit.Put(at.key("locked"), random.nextBoolean() ? "yes" : "no");
          };
      if (edited.make(edit) instanceof Outcome.Written) {
        states.add(Files.readString(plan));
      }
    }
    assertThat(states).hasSizeGreaterThan(15);
    for (int i = states.size() - 2; i >= 0; i--) {
      edited.undo();
      assertThat(plan).hasContent(states.get(i));
    }
    assertThat(edited.canUndo()).isFalse();
  }

  @Test
  void edits_of_a_workbook_and_of_a_table_are_undone_to_the_byte() throws IOException {
    Path book = folder.resolve("book.xlsx");
    Files.write(book, new BookWriter(PlanTexts.read(plan).tree(), List.of()).bytes());
    Path table = Files.writeString(folder.resolve("panels.csv"), "panel;cue;mood\n1;bar 1;\n2\n");
    String head = before.substring(0, before.indexOf("panels:\n"));
    Files.writeString(plan, head + "panels: panels.csv\n");
    for (Path file : List.of(book, table)) {
      byte[] was = Files.readAllBytes(file);
      EditedPlan edited = EditedPlan.open(file.equals(table) ? plan : file);
      assertThat(edited.make(cue("2", "bar 3"))).isInstanceOf(Outcome.Written.class);
      PlanPath first = PANELS.item(0);
      edited.make(new TreeEdit.Insert(first, Values.keyed("panel", "0", "action", "Night")));
      edited.make(new TreeEdit.Remove(PANELS.named("panel", "1")));
      byte[] is = Files.readAllBytes(file);
      assertThat(is).isNotEqualTo(was);
      while (edited.canUndo()) {
        edited.undo();
      }
      assertThat(Files.readAllBytes(file)).isEqualTo(was);
      while (edited.canRedo()) {
        edited.redo();
      }
      assertThat(Files.readAllBytes(file)).isEqualTo(is);
      assertThat(edited.kept()).hasSize(1);
    }
  }
}
