package org.barsheet.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.align.places.PhotographRun;
import org.barsheet.align.places.RevealRoom;
import org.barsheet.clock.FrameSpan;
import org.barsheet.exposure.PlannedReveal.Squeeze;
import org.barsheet.exposure.Steps.Step;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.Cycle;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.timing.Shot;

/** Spreads one reveal over the frames of its shot. */
public final class RevealPlanner {

  private final Shot shot;
  private final RevealRoom room;
  private final Reveal reveal;
  private final Opening opening;
  private final Movement movement;
  private final PhotographRun asked;
  private final PhotographRun way;
  private final List<Step> steps;

  public RevealPlanner(Shot shot, Shot.Landing landing, Opening opening, Movement movement) {
    this.shot = shot;
    this.room = landing.room();
    this.reveal = room.reveal();
    this.asked = PhotographRun.asAsked(reveal);
    this.opening = opening;
    this.movement = movement;
    this.way = landing.way();
    this.steps = Steps.of(room, way);
  }

  /** First frame of the first moved photograph. */
  long firstGapFrame() {
    return steps.get(0).frame();
  }

  /**
   * The reveal's exposures over a part of its shot: the whole shot, or what another reveal of the
   * same opening leaves.
   */
  List<Exposure> exposures(FrameSpan part) {
    List<Exposure> exposures = new ArrayList<>();
    Photograph resting = photograph(0);
    long start = part.start();
    for (Step step : steps) {
      add(exposures, start, step.frame(), resting);
      resting = photograph(step.photograph());
      start = step.frame();
    }
    long landed =
        reveal.cycle().isPresent() ? start + way.framesPerPhotograph() : part.endExclusive();
    add(exposures, start, Math.min(landed, part.endExclusive()), resting);
    reveal.cycle().ifPresent(cycle -> addCycle(exposures, cycle, landed, part.endExclusive()));
    return List.copyOf(exposures);
  }

  /** Repeats photographs to the end; the one that has just been shown is not shown again. */
  private void addCycle(List<Exposure> exposures, Cycle cycle, long from, long end) {
    int place = cycle.last() == reveal.photographs() ? cycle.last() - cycle.first() + 1 : 0;
    for (long frame = from; frame < end; frame += way.framesPerPhotograph()) {
      Photograph photograph = photograph(cycle.photographAt(place % cycle.length()));
      add(exposures, frame, Math.min(end, frame + way.framesPerPhotograph()), photograph);
      place++;
    }
  }

  private void add(List<Exposure> exposures, long start, long end, Photograph photograph) {
    if (end > start) {
      exposures.add(new Exposure(new FrameSpan(start, end), photograph, progress(photograph)));
    }
  }

  /** The photograph for one of the photographs asked for; a closing shows them backwards. */
  private Photograph photograph(int asked) {
    int photographed = movement.photographs().size() - 1;
    int forward = reveal.way() == Way.CLOSES ? reveal.photographs() - asked : asked;
    return new Photograph(
        movement.name(), PhotographRun.photograph(photographed, reveal.photographs(), forward));
  }

  private double progress(Photograph photograph) {
    return movement.photographs().get(photograph.number()).progress();
  }

  private double amount(Photograph photograph) {
    return movement.photographs().get(photograph.number()).measures().amount();
  }

  /** Share of the movement done, whether it opens or closes. */
  private double done(Photograph photograph) {
    return reveal.way() == Way.CLOSES ? 1 - progress(photograph) : progress(photograph);
  }

  /** First frame of the first photograph at half the movement or more. */
  long halfOpenFrame() {
    for (Step step : steps) {
      if (done(photograph(step.photograph())) >= 0.5) {
        return step.frame();
      }
    }
    return fullyOpenFrame();
  }

  long fullyOpenFrame() {
    return steps.get(steps.size() - 1).frame();
  }

  /** What was given up, if the reveal is not shown as asked. */
  Optional<Squeeze> squeeze() {
    int shown = steps.size();
    boolean asAsked = way.equals(asked) && shown == expectedSteps();
    if (asAsked) {
      return Optional.empty();
    }
    return Optional.of(
        new Squeeze(
            way.framesPerPhotograph(), shown, worstError(), SqueezeWords.of(reveal, way, shown)));
  }

  /** Steps of the reveal as asked; notes may share a photograph, or stand on one frame. */
  private int expectedSteps() {
    return room.keys().isPresent()
        ? (int) Steps.of(room, asked).stream().map(Step::photograph).distinct().count()
        : reveal.photographs();
  }

  /** Largest difference, frame by frame, from what the movement as asked would show. */
  private double worstError() {
    List<Step> wantedSteps = Steps.of(room, asked);
    double worst = 0;
    for (long f = shot.frames().start(); f < shot.frames().endExclusive(); f++) {
      double wanted = amount(photographAt(wantedSteps, f));
      worst = Math.max(worst, Math.abs(wanted - amount(photographAt(steps, f))));
    }
    return worst;
  }

  private Photograph photographAt(List<Step> run, long frame) {
    int photograph = 0;
    for (Step step : run) {
      if (step.frame() > frame) {
        break;
      }
      photograph = step.photograph();
    }
    return photograph(photograph);
  }

  RevealRoom room() {
    return room;
  }

  Opening opening() {
    return opening;
  }

  Movement movement() {
    return movement;
  }
}
