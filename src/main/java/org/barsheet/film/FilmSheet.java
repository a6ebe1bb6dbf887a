package org.barsheet.film;

import java.util.List;
import java.util.Optional;
import org.barsheet.calls.Call;
import org.barsheet.calls.Calls;
import org.barsheet.changes.Changes;
import org.barsheet.changes.LaidFilm;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.OfShot;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.exposure.Uncovering;
import org.barsheet.photographs.TakenPhotographs;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Plan;
import org.barsheet.received.ClipVerdict;
import org.barsheet.received.ReceivedClip;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.ticks.Taken;
import org.barsheet.ticks.TakenFindings;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Findings;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/**
 * The one result everything is printed from.
 *
 * @param inputs the files it was made from: the plan, then the score, then the panels' own table
 * @param timing panels on frames
 * @param reveals every reveal on its frames, in order of shot and layer
 * @param movements what has to be photographed, in story order
 * @param shooting the movements in the order of work
 * @param states every opening in every shot, in order of shot
 * @param appearances in order of shot
 * @param clips what has come of the performers' clips, in the plan's order; empty where nobody
 *     looked
 * @param notes what is written beside the frames, in order of frame and column
 * @param findings all findings about the film, worst first
 * @param changes what moved since an earlier run, where it is compared with one
 * @param issued what was sent out under names
 * @param taken the photographs that are there
 * @param ticks what people say has been photographed so far
 */
public record FilmSheet(
    List<InputFile> inputs,
    TimingSheet timing,
    List<PlannedReveal> reveals,
    List<Movement> movements,
    ShootingPlan shooting,
    List<OpeningState> states,
    List<Appearance> appearances,
    List<ReceivedClip> clips,
    List<SheetNote> notes,
    List<Finding> findings,
    Optional<Changes> changes,
    Issued issued,
    TakenPhotographs taken,
    Taken ticks) {

  public FilmSheet {
    inputs = List.copyOf(inputs);
    reveals = List.copyOf(reveals);
    movements = List.copyOf(movements);
    states = List.copyOf(states);
    appearances = List.copyOf(appearances);
    clips = List.copyOf(clips);
    notes = List.copyOf(notes);
    findings = List.copyOf(findings);
  }

  /** A film of which nothing was sent out under a name and nothing was photographed. */
  public FilmSheet(
      List<InputFile> inputs,
      TimingSheet timing,
      List<PlannedReveal> reveals,
      List<Movement> movements,
      ShootingPlan shooting,
      List<OpeningState> states,
      List<Appearance> appearances,
      List<ReceivedClip> clips,
      List<SheetNote> notes,
      List<Finding> findings,
      Optional<Changes> changes) {
    this(
        inputs,
        timing,
        reveals,
        movements,
        shooting,
        states,
        appearances,
        clips,
        notes,
        findings,
        changes,
        Issued.NOTHING,
        TakenPhotographs.NONE,
        Taken.nothing(shooting, timing.plan()));
  }

  /** The movement of a permanent name. */
  public Movement movement(String name) {
    return movements.stream()
        .filter(movement -> movement.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no movement is called " + name));
  }

  /** The reveals of a shot, in order of layer. */
  public List<PlannedReveal> revealsOf(Shot shot) {
    return OfShot.reveals(reveals, shot.index());
  }

  /** The openings in a shot, in the plan's order. */
  public List<OpeningState> statesOf(Shot shot) {
    return OfShot.states(states, shot.index());
  }

  /** How much of an opening's hole is uncovered, frame by frame. */
  public Uncovering uncovering(String opening) {
    return Uncovering.of(reveals, movements, opening);
  }

  /** What this run laid down, for a later one to be compared with. */
  public LaidFilm laidDown() {
    return LaidDown.of(this);
  }

  /** A call for each performer, in the plan's order. */
  public List<Call> calls() {
    List<Call> calls = Calls.of(timing, reveals, appearances);
    return news()
        .map(
            news ->
                calls.stream()
                    .map(call -> call.withNews(news.since(), news.of(call.performer().name())))
                    .toList())
        .orElse(calls);
  }

  /** What differs from the last issue, or where nothing was issued from the run before. */
  public Optional<News> news() {
    return issued
        .since()
        .map(since -> new News(issued.last().orElseThrow(), since))
        .or(() -> changes.map(since -> new News("the sheets before", since)));
  }

  /**
   * What is said of a performer's clip.
   *
   * @param heldAgainst the appearances it is held against; none for a performer who is only heard
   * @return nothing where nobody looked for their clip
   */
  public Optional<ClipVerdict> verdictOn(Performer performer, List<Appearance> heldAgainst) {
    return clips.stream()
        .filter(clip -> clip.performer().name().equals(performer.name()))
        .findFirst()
        .map(clip -> ClipVerdict.of(clip, timing, heldAgainst));
  }

  /** The plan it was made from. */
  public Plan plan() {
    return timing.plan();
  }

  /** The same film, compared with what an earlier run laid down. */
  public FilmSheet since(LaidFilm earlier) {
    Changes since = Changes.between(earlier, laidDown());
    List<Finding> others = Findings.of(since.otherMusic().findings(), findings);
    return with(others, Optional.of(since), issued, taken, ticks);
  }

  /**
   * The same film, sent out under a name or not.
   *
   * @param name as {@code make --issue} was told, or ""
   * @param earlier the run before, where there is one
   */
  public FilmSheet issued(String name, Optional<LaidFilm> earlier) {
    return with(findings, changes, Issued.of(name, earlier, laidDown()), taken, ticks);
  }

  /** The same sheet with other findings. */
  public FilmSheet withFindings(List<Finding> others) {
    return with(others, changes, issued, taken, ticks);
  }

  /** The same film with the photographs that are there, and what is wrong with them. */
  public FilmSheet with(TakenPhotographs photographs) {
    List<Finding> others = Findings.of(PhotographFindings.of(photographs), findings);
    return with(others, changes, issued, photographs, ticks);
  }

  /** The same sheet with what people say has been photographed, and what follows from it. */
  public FilmSheet withTicks(Taken now) {
    return with(Findings.of(TakenFindings.of(now), findings), changes, issued, taken, now);
  }

  /** What is planned stays; what is said of it is another. */
  private FilmSheet with(
      List<Finding> others,
      Optional<Changes> since,
      Issued sent,
      TakenPhotographs photographs,
      Taken ticked) {
    return new FilmSheet(
        inputs,
        timing,
        reveals,
        movements,
        shooting,
        states,
        appearances,
        clips,
        notes,
        others,
        since,
        sent,
        photographs,
        ticked);
  }
}
