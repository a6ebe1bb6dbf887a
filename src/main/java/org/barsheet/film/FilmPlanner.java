package org.barsheet.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.cues.MusicRuler;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Appearances;
import org.barsheet.exposure.Movements;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.OpeningStates;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.exposure.RevealPlanner;
import org.barsheet.exposure.ShotReveals;
import org.barsheet.exposure.ShownSteps;
import org.barsheet.findings.ArtworkFindings;
import org.barsheet.findings.ClapFindings;
import org.barsheet.findings.ClipFindings;
import org.barsheet.findings.FilmFindings;
import org.barsheet.findings.FlashFindings;
import org.barsheet.findings.InsertFindings;
import org.barsheet.findings.KeyFindings;
import org.barsheet.findings.MovementFindings;
import org.barsheet.findings.RevealFindings;
import org.barsheet.findings.RevealFramingFindings;
import org.barsheet.findings.SamenessFindings;
import org.barsheet.findings.SetupFindings;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.received.ReceivedClip;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** Completes a timing sheet into the film sheet: the front door of this package. */
public final class FilmPlanner {

  private final TimingSheet timing;
  private final Plan plan;
  private final MusicRuler ruler;
  private final Movements movements;

  private FilmPlanner(TimingSheet timing) {
    this.timing = timing;
    this.plan = timing.plan();
    this.ruler = new MusicRuler(timing.music(), timing.clock());
    this.movements = new Movements(plan, timing.shots());
  }

  /**
   * Spreads every reveal over its frames and works out everything that follows from it.
   *
   * @param inputs the files the film was made from: the plan, then the score
   */
  public static FilmSheet complete(TimingSheet timing, List<InputFile> inputs) {
    return complete(timing, inputs, List.of());
  }

  /**
   * The same, with what has come of the performers' clips.
   *
   * @param inputs the files the film was made from: the plan, then the score
   * @param clips one a performer whose clip was looked for
   */
  public static FilmSheet complete(
      TimingSheet timing, List<InputFile> inputs, List<ReceivedClip> clips) {
    return new FilmPlanner(timing).sheet(inputs, clips);
  }

  private FilmSheet sheet(List<InputFile> inputs, List<ReceivedClip> clips) {
    List<PlannedReveal> reveals = new ArrayList<>();
    timing.shots().forEach(shot -> reveals.addAll(revealsOf(shot)));
    List<OpeningState> states = OpeningStates.of(timing, reveals);
    List<Appearance> appearances = new Appearances(timing, ruler, reveals, states).all();
    ShootingPlan shooting = ShootingPlan.of(timing, movements.all(), reveals, states);
    FilmFindings findings = new FilmFindings(timing, reveals, states, appearances);
    return new FilmSheet(
        inputs,
        timing,
        reveals,
        movements.all(),
        shooting,
        states,
        appearances,
        clips,
        new SheetNotes(timing, ruler, reveals).all(),
        findings.withTiming(more(reveals, appearances, clips, shooting)),
        Optional.empty());
  }

  /** What is found about single parts of the film; each class says what it looks at. */
  private List<Finding> more(
      List<PlannedReveal> reveals,
      List<Appearance> appearances,
      List<ReceivedClip> clips,
      ShootingPlan shooting) {
    List<Finding> more = new ArrayList<>(new RevealFindings(timing, movements, reveals).all());
    more.addAll(new MovementFindings(plan).of(movements.all()));
    more.addAll(new ShownSteps(timing).of(reveals, movements));
    more.addAll(new ArtworkFindings(plan).all());
    more.addAll(new KeyFindings(plan, appearances).all());
    more.addAll(new SamenessFindings(timing, reveals, movements.all()).all());
    more.addAll(new RevealFramingFindings(timing, reveals, shooting).all());
    more.addAll(SetupFindings.of(shooting));
    more.addAll(new FlashFindings(timing, ruler, reveals).all());
    more.addAll(new InsertFindings(timing, appearances).all());
    more.addAll(new ClapFindings(timing).all(clips));
    more.addAll(new ClipFindings(timing, appearances, clips).all());
    return more;
  }

  private List<PlannedReveal> revealsOf(Shot shot) {
    List<RevealPlanner> planners = new ArrayList<>();
    for (Shot.Landing landing : shot.reveals()) {
      Reveal reveal = landing.room().reveal();
      planners.add(
          new RevealPlanner(shot, landing, movements.openingOf(reveal), movements.of(reveal)));
    }
    return new ShotReveals(shot, planners).all();
  }
}
