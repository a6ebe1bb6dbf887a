package org.barsheet.production;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.align.places.Kept;
import org.barsheet.changes.HeldPanels;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidMusic;
import org.barsheet.changes.OtherMusic;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.LaidDown;
import org.barsheet.handoff.TimingJsonReader;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.production.publish.LastSheets;
import org.barsheet.timing.Finding;

/**
 * The film as an earlier run left it in a folder, read once, so that all that is taken from it is
 * of one film.
 *
 * @param folder where it lies
 * @param film where there is one that can be read
 * @param damage why it cannot be read, where it cannot
 */
record EarlierSheets(Path folder, Optional<LaidFilm> film, Optional<InputException> damage) {

  static final String TIMING = "timing.json";

  static EarlierSheets in(Path folder) {
    try {
      return new EarlierSheets(
          folder, LastSheets.read(folder, TIMING, TimingJsonReader::read), Optional.empty());
    } catch (InputException damaged) {
      return new EarlierSheets(folder, Optional.empty(), Optional.of(damaged));
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

  /**
   * Refuses a film in which something inside a locked panel is shown otherwise than before.
   *
   * @param returns every return of the plan's motifs
   */
  void requireHeld(FilmSheet now, List<Occurrence> returns) {
    List<Problem> moved =
        film.map(before -> HeldPanels.moved(before, now.laidDown(), now.plan())).orElse(List.of());
    if (!moved.isEmpty()) {
      LaidMusic music = LaidDown.music(now.plan(), now.timing().music(), returns);
      throw toldBeside(new InputException(moved), now.plan(), music);
    }
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
   * @throws InputException if something is to be kept and the film cannot be read, or lies in
   *     another folder beside this one
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
    if (film.isEmpty()) {
      SheetsElsewhere.refuse(folder, plan);
    }
    return film.map(LaidFilm::kept).orElse(Kept.NOTHING);
  }
}
