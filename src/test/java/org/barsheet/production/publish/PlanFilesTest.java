package org.barsheet.production.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.input.InputException;
import org.barsheet.plan.edit.Edit;
import org.barsheet.plan.edit.EditedFile;
import org.barsheet.plan.edit.PlanEdits;
import org.barsheet.plan.edit.PlanPath;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanFilesTest {

  private static final String BEFORE = "title: Quay\nscore: old.mid # first\n";

  @TempDir private Path folder;
  private Path plan = Path.of("");

  @BeforeEach
  void writePlan() throws IOException {
    plan = Files.writeString(folder.resolve("plan.yaml"), BEFORE);
  }

  private static List<EditedFile> edited(Path plan) {
    return PlanEdits.of(plan, List.of(new Edit(PlanPath.ROOT.key("score"), "new.mid")));
  }

  @Test
  void the_plan_before_is_kept_beside_it_each_time_under_another_name() throws IOException {
    assertThat(PlanFiles.write(edited(plan))).containsExactly(folder.resolve("plan-kept-1.yaml"));
    assertThat(plan).hasContent("title: Quay\nscore: new.mid # first\n");
    assertThat(folder.resolve("plan-kept-1.yaml")).hasContent(BEFORE);
    Files.writeString(plan, BEFORE);
    assertThat(PlanFiles.write(edited(plan))).containsExactly(folder.resolve("plan-kept-2.yaml"));
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(3);
    }
  }

  @Test
  void a_plan_that_changed_meanwhile_is_left_alone() throws IOException {
    List<EditedFile> files = edited(plan);
    Files.writeString(plan, BEFORE + "film: {frame-rate: 24}\n");
    InputException refused =
        catchThrowableOfType(InputException.class, () -> PlanFiles.write(files));
    assertThat(refused.problems()).singleElement().asString().contains("changed while it was read");
    assertThat(plan).hasContent(BEFORE + "film: {frame-rate: 24}\n");
    assertThat(folder.resolve("plan-kept-1.yaml")).doesNotExist();
  }

  @Test
  void a_plan_behind_a_link_is_changed_where_it_lies() throws IOException {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Path link = Files.createSymbolicLink(elsewhere.resolve("film.yaml"), plan);
    assertThat(PlanFiles.write(edited(link)))
        .containsExactly(folder.toRealPath().resolve("plan-kept-1.yaml"));
    assertThat(link).isSymbolicLink();
    assertThat(plan).hasContent("title: Quay\nscore: new.mid # first\n");
    assertThat(folder.resolve("plan-kept-1.yaml")).hasContent(BEFORE);
  }
}
