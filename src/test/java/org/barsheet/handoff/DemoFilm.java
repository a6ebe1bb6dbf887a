package org.barsheet.handoff;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.align.places.Kept;
import org.barsheet.cues.MotifSearch;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.InputFile;
import org.barsheet.plan.Plan;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.barsheet.timing.TimingPlanner;

/** The film sheet of a plan in a file, made the whole way. */
public final class DemoFilm {

  static final Path PLAN = Path.of("scores", "lamplighters-quay.yaml");

  private DemoFilm() {}

  public static FilmSheet sheet() {
    return sheet(PLAN);
  }

  public static FilmSheet sheet(Path file) {
    Plan plan = PlanReader.read(file);
    Score score = ScoreReader.read(plan.music().score());
    Music music = MusicFinder.follow(score, plan.music().tempo());
    return FilmPlanner.complete(
        TimingPlanner.plan(plan, music, MotifSearch.of(plan, music).occurrences(), Kept.NOTHING),
        List.of(
            new InputFile("plan", "plan.yaml", "0".repeat(64)),
            new InputFile("score", "score.mid", "1".repeat(64))));
  }
}
