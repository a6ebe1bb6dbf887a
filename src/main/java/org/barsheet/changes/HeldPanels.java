package org.barsheet.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.changes.LaidFilm.LaidAppearance;
import org.barsheet.changes.LaidFilm.LaidReveal;
import org.barsheet.changes.LaidFilm.LaidShot;
import org.barsheet.input.Problem;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Plan;

/** Whether locked panels show, frame by frame, what they showed when they were locked. */
public final class HeldPanels {

  private static final String REMEDY =
      "unlock the panel (locked: no), or undo the change that moved it";

  private HeldPanels() {}

  /** What is shown otherwise in locked panels, a problem each; panels that were not there pass. */
  public static List<Problem> moved(LaidFilm before, LaidFilm now, Plan plan) {
    List<Problem> problems = new ArrayList<>();
    Map<String, LaidShot> was = before.shotsByPanel();
    Map<String, LaidShot> is = now.shotsByPanel();
    for (Panel panel : plan.panels()) {
      Optional<LaidShot> earlier = Optional.ofNullable(was.get(panel.name()));
      Optional<LaidShot> later = Optional.ofNullable(is.get(panel.name()));
      if (panel.locked() && earlier.isPresent() && later.isPresent()) {
        reveals(earlier.get(), later.get()).forEach(words -> problems.add(problem(panel, words)));
        appearances(before, now, panel.name())
            .forEach(words -> problems.add(problem(panel, words)));
      }
    }
    return List.copyOf(problems);
  }

  private static Problem problem(Panel panel, String words) {
    String sentence = "panel " + panel.name() + " is locked, but " + words;
    return Problem.at(panel.where().file(), panel.where().position(), sentence, REMEDY);
  }

  private static List<String> reveals(LaidShot was, LaidShot is) {
    List<String> moved = new ArrayList<>();
    for (LaidReveal reveal : was.reveals()) {
      is.reveals().stream()
          .filter(now -> now.opening().equals(reveal.opening()) && now.layer() == reveal.layer())
          .filter(now -> !now.exposures().equals(reveal.exposures()))
          .forEach(now -> moved.add(reveal.opening() + " would move differently in it"));
    }
    return moved;
  }

  private static List<String> appearances(LaidFilm before, LaidFilm now, String panel) {
    List<String> moved = new ArrayList<>();
    for (LaidAppearance was : before.appearances()) {
      now.appearances().stream()
          .filter(is -> was.panel().equals(panel) && is.isOf(was) && !is.equals(was))
          .forEach(
              is ->
                  moved.add(
                      was.performer()
                          + " would be seen in it on frames "
                          + frames(is)
                          + " instead of "
                          + frames(was)));
    }
    return moved;
  }

  private static String frames(LaidAppearance seen) {
    return seen.frames().start() + " to " + (seen.frames().endExclusive() - 1);
  }
}
