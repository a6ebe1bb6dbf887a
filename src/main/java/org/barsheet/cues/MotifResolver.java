package org.barsheet.cues;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.barsheet.input.Nearest;
import org.barsheet.input.Problem;
import org.barsheet.motif.Motif;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.find.MotifHearing;
import org.barsheet.plan.Length;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.MotifRequest.HeardAt;
import org.barsheet.plan.MotifRequest.Shape;
import org.barsheet.plan.MotifRequest.Written;
import org.barsheet.plan.Place.AtTimecode;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Where;
import org.barsheet.pulse.Music;
import org.barsheet.score.Part;
import org.jspecify.annotations.Nullable;

/** Turns the motifs a plan asks for into notes to look for. */
final class MotifResolver {

  private final Music music;
  private final MusicRuler ruler;
  private final FilmClock clock;
  private final PlaceResolver places;
  private final List<Problem> problems = new ArrayList<>();
  private @Nullable MotifHearing hearing;
  private final List<PlainMotif> tooPlain = new ArrayList<>();

  private MotifResolver(Plan plan, Music music, FilmClock clock, long filmFrames) {
    this.music = music;
    this.clock = clock;
    this.ruler = new MusicRuler(music, clock);
    Cues marksOnly = new Cues(music, ruler, List.of());
    this.places = new PlaceResolver(music, plan.film(), clock, marksOnly, filmFrames);
  }

  /**
   * The motifs of a plan that can be looked for, and those that can't.
   *
   * @param motifs in the plan's order
   * @param tooPlain too plain to look for, in the plan's order
   */
  record Resolved(List<Motif> motifs, List<PlainMotif> tooPlain) {
    Resolved {
      motifs = List.copyOf(motifs);
      tooPlain = List.copyOf(tooPlain);
    }
  }

  /**
   * The plan's motifs.
   *
   * @throws InputException with every motif that cannot be heard where the plan says
   */
  static Resolved resolve(Plan plan, Music music) {
    FilmClock clock = FilmClock.of(plan.film(), music);
    Seconds end = music.lastSoundingBarEnd().plus(plan.film().tail());
    MotifResolver resolver = new MotifResolver(plan, music, clock, clock.frameAt(end));
    List<Motif> motifs = new ArrayList<>();
    for (MotifRequest request : plan.motifs()) {
      resolver.resolve(request).ifPresent(motifs::add);
    }
    if (!resolver.problems.isEmpty()) {
      throw new InputException(resolver.problems);
    }
    return new Resolved(motifs, resolver.tooPlain);
  }

  private Optional<Motif> resolve(MotifRequest request) {
    List<List<MotifNote>> shapes = new ArrayList<>();
    List<Problem> plain = new ArrayList<>();
    for (Shape shape : request.shapes()) {
      List<MotifNote> notes =
          shape instanceof HeardAt heard ? heard(heard) : ((Written) shape).notes();
      Optional<Problem> refusal = notes.isEmpty() ? Optional.empty() : MotifHearing.refusal(notes);
      refusal.ifPresent(plain::add);
      if (!notes.isEmpty() && refusal.isEmpty()) {
        shapes.add(notes);
      }
    }
    boolean isRestFound = !shapes.isEmpty();
    plain.stream()
        .limit(isRestFound ? plain.size() : 1)
        .forEach(why -> tooPlain.add(new PlainMotif(request, isRestFound, why)));
    return shapes.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Motif(request.name(), shapes, request.accent(), request.match(), request.forms()));
  }

  /** The notes of a shape; none, with a problem noted, if they cannot be had. */
  private List<MotifNote> heard(HeardAt shape) {
    List<Cue> found = places.resolve(shape.place(), shape.where());
    problems.addAll(places.takeProblems());
    Optional<Part> part = part(shape);
    if (found.isEmpty() || part.isEmpty()) {
      return List.of();
    }
    try {
      Seconds from = found.get(0).at();
      Length length = shape.length();
      Seconds to = ruler.advance(from, length.unit(), length.most());
      return hearing().hear(part.get(), firstTick(shape, from), firstTick(shape, to));
    } catch (InputException unheard) {
      unheard.problems().forEach(problem -> note(shape.where(), problem));
      return List.of();
    }
  }

  private MotifHearing hearing() {
    if (hearing == null) {
      hearing = MotifHearing.of(music.score());
    }
    return hearing;
  }

  /** A timecode means its frame, and a note counts for the frame nearest to it. */
  private long firstTick(HeardAt shape, Seconds at) {
    Seconds half = clock.rate().frameDuration().times(BigFraction.of(1, 2));
    Seconds from = shape.place() instanceof AtTimecode ? at.minus(half) : at;
    BigFraction tick = music.tempo().tickAt(from);
    var parts = tick.getNumerator().divideAndRemainder(tick.getDenominator());
    return parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
  }

  private Optional<Part> part(HeardAt shape) {
    List<Part> parts = music.score().parts();
    for (Part part : parts) {
      if (part.name().equalsIgnoreCase(shape.part().strip())) {
        return Optional.of(part);
      }
    }
    String names =
        String.join(
            ", ",
            Nearest.ranked(
                shape.part(),
                parts.stream().map(Part::name).toList(),
                PlaceResolver.NAMES_OFFERED));
    String remedy =
        names.isEmpty() ? "the score has no parts" : "parts that look like it: " + names;
    problems.add(
        Problem.at(
            shape.where().file(),
            shape.where().position(),
            "the score has no part '" + shape.part() + "'",
            remedy));
    return Optional.empty();
  }

  private void note(Where where, Problem problem) {
    problems.add(
        new Problem(
            where.file(),
            where.position(),
            problem.sentence(),
            problem.remedy(),
            problem.excerpt()));
  }
}
