package org.barsheet.production;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.align.Kept;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidMusic;
import org.barsheet.changes.OtherMusic;
import org.barsheet.handoff.TimingJsonReader;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.production.publish.LastSheets;
import org.barsheet.timing.Finding;

/**
 * The film as an earlier run left it in a folder, read once, so that all that is taken from it is
 * of one film.
 *
 * @param film where there is one that can be read
 * @param damage why it cannot be read, where it cannot
 */
record EarlierSheets(Optional<LaidFilm> film, Optional<InputException> damage) {

  static final String TIMING = "timing.json";

  static EarlierSheets in(Path folder) {
    try {
      return new EarlierSheets(
          LastSheets.read(folder, TIMING, TimingJsonReader::read), Optional.empty());
    } catch (InputException damaged) {
      return new EarlierSheets(Optional.empty(), Optional.of(damaged));
    }
  }

  /** A refusal together with what a plan gets other music for, which is often its cause. */
  InputException toldBeside(InputException refused, Plan plan, LaidMusic now) {
    String file = plan.text().file().toString();
    List<Problem> problems = new ArrayList<>();
    film.map(LaidFilm::standpoints)
        .map(before -> OtherMusic.between(before, now).findings())
        .orElse(List.of())
        .forEach(
            found ->
                problems.add(
                    Problem.at(file, position(plan, found), found.inFull(), found.remedy())));
    problems.addAll(refused.problems());
    return new InputException(problems);
  }

  private static String position(Plan plan, Finding found) {
    return plan.panels().stream()
        .filter(panel -> panel.name().equals(found.panel()))
        .map(panel -> panel.where().position())
        .findFirst()
        .orElse("");
  }

  /**
   * What locked panels and photographed reveals keep of it.
   *
   * @throws InputException if something is to be kept and the film cannot be read
   */
  Kept kept(Plan plan) {
    boolean keeps =
        plan.panels().stream()
            .anyMatch(
                panel -> panel.locked() || panel.reveals().stream().anyMatch(Reveal::photographed));
    if (!keeps) {
      return Kept.NOTHING;
    }
    damage.ifPresent(
        damaged -> {
          throw damaged;
        });
    return film.map(LaidFilm::kept).orElse(Kept.NOTHING);
  }
}
