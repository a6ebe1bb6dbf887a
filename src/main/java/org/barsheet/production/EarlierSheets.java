package org.barsheet.production;

import java.nio.file.Path;
import java.util.Optional;
import org.barsheet.align.Kept;
import org.barsheet.changes.LaidFilm;
import org.barsheet.handoff.TimingJsonReader;
import org.barsheet.input.InputException;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.production.publish.LastSheets;

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
