package org.barsheet.findings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.OfShot;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** What is doubtful or wrong about openings, performers and the photograph as a whole. */
public final class FilmFindings {

  private final TimingSheet timing;
  private final Plan plan;
  private final List<PlannedReveal> reveals;
  private final List<OpeningState> states;
  private final List<Appearance> appearances;
  private final Findings findings = new Findings();

  public FilmFindings(
      TimingSheet timing,
      List<PlannedReveal> reveals,
      List<OpeningState> states,
      List<Appearance> appearances) {
    this.timing = timing;
    this.plan = timing.plan();
    this.reveals = reveals;
    this.states = states;
    this.appearances = appearances;
  }

  /** These findings together with those about the timing, worst first. */
  public List<Finding> withTiming(List<Finding> more) {
    findings.addAll(timing.findings());
    findings.addAll(more);
    addStates();
    appearances.forEach(this::addAppearance);
    plan.workshop().openings().forEach(this::addUnfilled);
    plan.performers().forEach(this::addPerformer);
    return findings.worstFirst();
  }

  private Shot shot(int index) {
    return timing.shots().get(index);
  }

  /** A reveal begins where the one before it left the opening; else something is missing. */
  private void addStates() {
    Map<String, Double> before = new HashMap<>();
    Map<String, String> since = new HashMap<>();
    for (OpeningState state : states) {
      double was = before.getOrDefault(state.opening(), 0.0);
      if (was != state.atFirstFrame() && !isUnderWay(state, was)) {
        addJump(state, was, since.getOrDefault(state.opening(), ""));
      }
      if (was != state.atLastFrame()) {
        since.put(state.opening(), shot(state.shot()).panel().name());
      }
      before.put(state.opening(), state.atLastFrame());
    }
  }

  /**
   * Whether a movement that found too few frames begins on a moved photograph, as it was bound to.
   */
  private boolean isUnderWay(OpeningState state, double was) {
    Way way = state.atFirstFrame() > was ? Way.OPENS : Way.CLOSES;
    return OfShot.reveals(reveals, state.shot()).stream()
        .filter(r -> r.opening().name().equals(state.opening()))
        .findFirst()
        .filter(r -> r.squeeze().isPresent() && r.reveal().way() == way)
        .isPresent();
  }

  private void addJump(OpeningState state, double was, String since) {
    boolean open = was > state.atFirstFrame();
    String sentence =
        open
            ? state.opening() + " has been open since panel " + since + ", and starts closed here"
            : state.opening() + " is closed, and starts open here";
    String remedy =
        open
            ? "close it first (moves: closes), or drop this reveal; paper rarely closes"
                + " cleanly"
            : "open it first, or drop this closing";
    findings.add(Severity.ERROR, Concerns.ANIMATOR, shot(state.shot()), sentence, remedy);
  }

  private void addAppearance(Appearance appearance) {
    Shot shot = shot(appearance.shot());
    String name = appearance.performer().name();
    String where = appearance.opening().name();
    if (isClosed(appearance)) {
      String sentence =
          name + " is due to appear in " + where + ", but it stays closed in this shot";
      String remedy = "let " + where + " open here or earlier, or take " + name + " out";
      findings.add(Severity.ERROR, Concerns.EDITOR, shot, sentence, remedy);
    } else if (!appearance.performer().part().isEmpty() && appearance.sounding() == 0) {
      String sentence = name + " is on screen while the part rests";
      String remedy = "show somebody else here, or move " + name + " to where the part plays";
      findings.add(Severity.WARNING, Concerns.PERFORMERS, shot, sentence, remedy);
    }
  }

  private boolean isClosed(Appearance appearance) {
    String opening = appearance.opening().name();
    boolean moves =
        OfShot.reveals(reveals, appearance.shot()).stream()
            .anyMatch(r -> r.opening().name().equals(opening));
    boolean closed =
        OfShot.states(states, appearance.shot()).stream()
            .filter(s -> s.opening().equals(opening))
            .allMatch(s -> s.atFirstFrame() == 0);
    return appearance.frames().length() == 0 || (closed && !moves);
  }

  private void addUnfilled(Opening opening) {
    boolean opens =
        reveals.stream().anyMatch(reveal -> reveal.opening().name().equals(opening.name()));
    boolean filled = appearances.stream().anyMatch(a -> a.opening().name().equals(opening.name()));
    if (!opens) {
      String sentence = "no panel opens " + opening.name();
      findings.add(Severity.REMARK, Concerns.DIRECTOR, opening.name(), sentence, "");
      findings.alike("openings are never opened", opening.name());
    } else if (!filled && !plan.performers().isEmpty()) {
      String sentence = opening.name() + " opens, but nobody appears in it";
      findings.add(Severity.REMARK, Concerns.DIRECTOR, opening.name(), sentence, "");
      findings.alike("openings show nobody", opening.name());
    }
  }

  private void addPerformer(Performer performer) {
    boolean plays =
        timing.music().score().parts().stream()
            .anyMatch(part -> part.name().equals(performer.part()));
    if (!performer.part().isEmpty() && !plays) {
      String sentence =
          performer.name() + " plays '" + performer.part() + "', which the score does not have";
      String remedy = "name one of the score's parts";
      findings.add(Severity.WARNING, Concerns.PERFORMERS, "", sentence, remedy);
    }
    if (appearances.stream().noneMatch(a -> a.performer().name().equals(performer.name()))) {
      findings.add(
          Severity.REMARK, Concerns.PERFORMERS, "", performer.name() + " is never seen", "");
    }
  }
}
