package org.barsheet.adoption;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.barsheet.changes.LaidFilm;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.plan.Plan;
import org.barsheet.plan.edit.Edit;
import org.barsheet.plan.edit.EditedFile;
import org.barsheet.plan.edit.PlanEdits;
import org.barsheet.plan.edit.PlanPath;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A revised score: whatever bar survives keeps its panels, or a person is asked. */
class AdoptionTest {

  @TempDir private Path folder;

  private int places;
  private int asked;
  private final List<String> wrong = new ArrayList<>();

  @Test
  void every_panel_whose_bar_survives_stands_on_it_or_is_asked_about() throws IOException {
    check(1, 30);
  }

  @Test
  @Tag("trial")
  void every_panel_of_many_revisions_stands_on_its_bar_or_is_asked_about() throws IOException {
    check(10_000, 600);
  }

  private void check(int firstSeed, int count) throws IOException {
    for (int seed = firstSeed; seed < firstSeed + count; seed++) {
      revise(seed);
    }
    System.out.printf("%d places, %d asked, wrong %s%n", places, asked, wrong);
    assertThat(wrong).isEmpty();
    assertThat(asked).isLessThan(places / 8);
  }

  private void revise(int seed) throws IOException {
    Random random = new Random(seed);
    ComposedScore before = ComposedScore.invented(random);
    ComposedScore now = before.revised(random);
    before.write(folder.resolve("old.mid"));
    Path revised = folder.resolve("new.mid");
    now.write(revised);
    Path file = folder.resolve("plan.yaml");
    String head = ComposedPlan.head(before, random);
    Files.writeString(file, head);
    Files.writeString(file, head + ComposedPlan.of(before, Production.returns(file), random));
    Optional<FilmSheet> made = film(file);
    if (made.isEmpty()) {
      return;
    }
    LaidFilm laid = made.get().laidDown();
    Adoption adoption =
        Adoption.of(
            made.get().plan(),
            laid,
            laid.music().orElseThrow(),
            request -> Production.music(revised, request),
            false,
            false);
    List<Edit> edits = new ArrayList<>(adoption.edits());
    edits.add(new Edit(PlanPath.ROOT.key("score"), "new.mid"));
    for (EditedFile edited : PlanEdits.of(file, edits)) {
      Files.write(edited.file(), edited.after());
    }
    compare(seed, new Meaning(before, made.get()), now, file, adoption);
  }

  /** The film, where the plan can be. */
  private static Optional<FilmSheet> film(Path plan) {
    try {
      return Optional.of(Production.film(plan, plan.resolveSibling("none"), Progress.SILENT));
    } catch (InputException cannotBe) {
      return Optional.empty();
    }
  }

  /** The adopted plan; a place that is left to decide may stand where another one is now. */
  private static Optional<Plan> read(Path adopted, Adoption adoption) {
    try {
      return Optional.of(PlanReader.read(adopted));
    } catch (InputException twoOnOneCue) {
      assertThat(adoption.carried()).anyMatch(Carried::isAsked);
      return Optional.empty();
    }
  }

  private void compare(
      int seed, Meaning before, ComposedScore now, Path adopted, Adoption adoption) {
    Optional<Plan> read = read(adopted, adoption);
    if (read.isEmpty()) {
      return;
    }
    Plan plan = read.get();
    Optional<FilmSheet> film = film(adopted);
    Meaning original =
        new Meaning(now, plan, Production.music(plan.music().score(), plan.music().tempo()), film);
    Meaning after =
        new Meaning(
            now.asHeard(),
            plan,
            Production.music(plan.music().score(), plan.music().tempo()),
            film);
    for (Carried one : adoption.carried()) {
      if (one.of().startsWith("panel ")) {
        places++;
        asked += one.isAsked() ? 1 : 0;
        Optional<String> meant = before.of(one.of());
        Optional<String> means = after.of(one.of());
        boolean unknown = means.isEmpty() && film.isEmpty() && one.now().contains("into");
        boolean right = meant.equals(means) || meant.equals(original.of(one.of()));
        if (!one.isAsked() && !unknown && !right) {
          wrong.add(
              seed
                  + ": "
                  + one.of()
                  + ": "
                  + one.before()
                  + " → "
                  + one.now()
                  + " "
                  + meant
                  + means);
        }
      }
    }
  }
}
