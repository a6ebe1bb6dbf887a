package org.barsheet.production;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.adoption.Adoption;
import org.barsheet.adoption.Carried;
import org.barsheet.changes.LaidFilm;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Plan;
import org.barsheet.plan.edit.Edit;
import org.barsheet.plan.edit.EditedFile;
import org.barsheet.plan.edit.PlanEdits;
import org.barsheet.plan.edit.PlanPath;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.production.publish.PlanFiles;
import org.barsheet.revision.ScoreNotes;

/** Moves a plan onto another version of its score. */
final class Adopting {

  private Adopting() {}

  static Adopted adopt(Path planFile, Path score, Path folder, boolean timecodes, boolean write) {
    Plan plan = PlanReader.read(planFile);
    LaidFilm before = before(planFile, folder);
    ScoreNotes notes = before.music().orElseThrow(() -> noNotes(planFile, folder));
    Adoption adoption =
        Adoption.of(
            plan,
            before,
            notes,
            asked -> Production.music(score, asked),
            timecodes,
            isAdopted(plan, before, score));
    List<Carried> carried = new ArrayList<>();
    List<Edit> edits = new ArrayList<>(adoption.edits());
    String named = FirstPlans.seenFrom(planFile, score);
    String was = FirstPlans.seenFrom(planFile, plan.music().score());
    carried.add(new Carried("score", was, "", named, "", false, "", List.of()));
    if (!named.equals(was)) {
      edits.add(new Edit(PlanPath.ROOT.key("score"), named));
    }
    carried.addAll(adoption.carried());
    List<EditedFile> files = edits.isEmpty() ? List.of() : PlanEdits.of(planFile, edits);
    return new Adopted(carried, write ? PlanFiles.write(files) : List.of());
  }

  /** Whether the plan names the new version, and its sheets were made of a file of another name. */
  private static boolean isAdopted(Plan plan, LaidFilm before, Path score) {
    String name = String.valueOf(score.getFileName());
    return String.valueOf(plan.music().score().getFileName()).equals(name)
        && before.inputs().stream().noneMatch(input -> input.file().equals(name));
  }

  private static LaidFilm before(Path plan, Path folder) {
    EarlierSheets earlier = EarlierSheets.in(folder);
    earlier
        .damage()
        .ifPresent(
            damaged -> {
              throw damaged;
            });
    return earlier.film().orElseThrow(() -> noSheets(plan, folder));
  }

  private static InputException noSheets(Path plan, Path folder) {
    String sentence = "adopt needs the sheets made from the old score; " + folder + " has none";
    return new InputException(Problem.ofFile(plan.toString(), sentence, remedy(plan)));
  }

  private static InputException noNotes(Path plan, Path folder) {
    String sentence = "the sheets in " + folder + " don't hold the notes of the old score";
    return new InputException(Problem.ofFile(plan.toString(), sentence, remedy(plan)));
  }

  private static String remedy(Path plan) {
    return "put the old score back and run: barsheet make "
        + plan
        + "; or name the folder of its sheets with --out";
  }
}
