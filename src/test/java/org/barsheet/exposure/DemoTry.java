package org.barsheet.exposure;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.barsheet.plan.Plan;
import org.barsheet.plan.PlanReader;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.barsheet.timing.TimingPlanner;
import org.barsheet.timing.TimingSheet;
import org.junit.jupiter.api.Test;

class DemoTry {
  @Test
  void run() throws Exception {
    Plan plan =
        PlanReader.read(Path.of(System.getProperty("try", "scores/lamplighters-quay.yaml")));
    Score score = ScoreReader.read(plan.score());
    Music music = MusicFinder.follow(score, plan.music());
    long t0 = System.nanoTime();
    TimingSheet timing = TimingPlanner.plan(plan, music, Map.of());
    long t1 = System.nanoTime();
    FilmSheet film = ExposurePlanner.complete(timing, List.of());
    long t2 = System.nanoTime();
    System.out.println((t1 - t0) / 1000000 + " ms, " + (t2 - t1) / 1000000 + " ms");
    timing
        .shots()
        .forEach(
            s ->
                System.out.println(
                    s.panel().name()
                        + " | "
                        + s.frames().start()
                        + "-"
                        + s.frames().endExclusive()
                        + " | "
                        + s.startsAt()
                        + " | asked "
                        + s.asked()
                        + " | got "
                        + s.got()
                        + " | "
                        + s.reason()
                        + " | "
                        + s.rival().map(r -> r.sentence()).orElse("-")));
    film.reveals()
        .forEach(
            r ->
                System.out.println(
                    r.shot()
                        + " "
                        + r.opening().name()
                        + " "
                        + r.movement()
                        + " layer "
                        + r.layer()
                        + " gap "
                        + r.firstGapFrame()
                        + " half "
                        + r.halfOpenFrame()
                        + " open "
                        + r.fullyOpenFrame()
                        + " "
                        + r.squeeze()));
    film.movements()
        .forEach(
            m ->
                System.out.println(
                    m.name()
                        + " "
                        + m.model()
                        + " "
                        + m.openings()
                        + " "
                        + (m.pictures().size() - 1)));
    film.findings()
        .forEach(
            f ->
                System.out.println(
                    f.severity()
                        + " "
                        + f.concerns()
                        + " "
                        + f.panel()
                        + " ["
                        + f.place()
                        + "] "
                        + f.sentence()
                        + " -> "
                        + f.remedy()));
  }
}
