package org.barsheet.adoption;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.barsheet.changes.LaidFilm;
import org.barsheet.cues.MotifSearch;
import org.barsheet.input.InputException;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.MotifRequest.HeardAt;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.plan.edit.Edit;
import org.barsheet.plan.edit.PlanPath;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.revision.Revision;
import org.barsheet.revision.ScoreNotes;

/** A plan on another version of its score. */
public final class Adoption {

  private final Plan plan;
  private final OldMusic old;
  private final FormerAsks asks;
  private final boolean timecodes;
  private final Ledger ledger;
  private boolean adopted;

  /** Motifs whose notes are nowhere in the new version. */
  private final Set<String> unheard = new HashSet<>();

  private Adoption(
      Plan plan, LaidFilm film, OldMusic old, boolean timecodes, boolean scoreIsAdopted) {
    this.plan = plan;
    this.old = old;
    this.asks = new FormerAsks(film.asks(), plan.film().rate());
    this.timecodes = timecodes;
    this.adopted = scoreIsAdopted;
    this.ledger = new Ledger(old);
  }

  /**
   * Finds for everything in a plan where its music is now.
   *
   * @param plan on the score before
   * @param before what was made of that score
   * @param notes of that score
   * @param score reads the new version as asked
   * @param timecodes whether timecodes follow the music too
   * @param scoreIsAdopted whether the plan names the new version already: what it asks for in other
   *     words than before is then asked of that one
   * @throws InputException if the new version cannot be read
   */
  public static Adoption of(
      Plan plan,
      LaidFilm before,
      ScoreNotes notes,
      Function<TempoRequest, Music> score,
      boolean timecodes,
      boolean scoreIsAdopted) {
    Adoption adoption =
        new Adoption(plan, before, new OldMusic(before, notes), timecodes, scoreIsAdopted);
    Music music = adoption.pins(score);
    Revision revision = Revision.between(notes, ScoreNotes.of(music));
    Plan heard = adoption.motifs(music, revision);
    List<Occurrence> found = MotifSearch.of(heard, music).occurrences();
    NewMusic now = new NewMusic(heard, music, found);
    List<Meant> meant =
        before.meant().stream()
            .map(other -> Meant.of(plan, before.meaning(other), other, music, now))
            .toList();
    adoption.panels(revision, now, meant);
    adoption.performers(revision);
    return adoption;
  }

  /** Everything that stands on the music, in the plan's order. */
  public List<Carried> carried() {
    return ledger.carried();
  }

  /** What to change in the plan. */
  public List<Edit> edits() {
    return ledger.edits();
  }

  /** The new version with the pinned bars where they are now. */
  private Music pins(Function<TempoRequest, Music> score) {
    TempoRequest request = plan.music().tempo();
    Music unpinned = score.apply(request.withPins(List.of()));
    NewMusic now = new NewMusic(plan, unpinned, List.of());
    PlaceCarrier places = carrier(Revision.between(old.notes(), ScoreNotes.of(unpinned)), now);
    lookForAdopted(Standing.all(plan), places);
    if (request.pins().isEmpty()) {
      return unpinned;
    }
    List<TempoRequest.Pin> pins = new ArrayList<>();
    List<Standing> standings = Standing.pins(plan);
    for (int i = 0; i < standings.size(); i++) {
      Outcome outcome = carried(standings.get(i), places);
      ledger.add(standings.get(i), outcome, now);
      if (outcome instanceof Outcome.Found found && found.now() instanceof Place.AtBar bar) {
        pins.add(new TempoRequest.Pin(bar.bar(), request.pins().get(i).at()));
      }
    }
    try {
      return score.apply(request.withPins(pins));
    } catch (InputException barsMovedAround) {
      return unpinned; // check tells it, once the plan has its new score
    }
  }

  /** Notices where a plan that was adopted already is adopted again. */
  private void lookForAdopted(List<Standing> standings, PlaceCarrier places) {
    adopted |= standings.stream().anyMatch(one -> asks.isCarried(one, places));
  }

  /** What becomes of a place; once adopted, words that are new stay. */
  private Outcome carried(Standing standing, PlaceCarrier places) {
    return adopted && asks.isReworded(standing)
        ? new Outcome.Found(standing.place(), false)
        : places.carry(standing.place());
  }

  private PlaceCarrier carrier(Revision revision, NewMusic now) {
    return new PlaceCarrier(plan, revision, old, now, timecodes);
  }

  /** The plan with its motifs heard where their notes are now, without those that are nowhere. */
  private Plan motifs(Music music, Revision revision) {
    NewMusic now = new NewMusic(plan, music, List.of());
    HeardCarrier heard = new HeardCarrier(revision, old, now);
    PlaceCarrier places = new PlaceCarrier(plan, revision, old, now, true);
    List<MotifRequest> motifs = new ArrayList<>();
    for (MotifRequest motif : plan.motifs()) {
      List<MotifRequest.Shape> shapes = new ArrayList<>();
      for (int i = 0; i < motif.shapes().size(); i++) {
        MotifRequest.Shape shape = motif.shapes().get(i);
        if (shape instanceof HeardAt at) {
          Standing standing = Standing.heard(motif.name(), i, at.place());
          Outcome place = carried(standing, places);
          Optional<HeardAt> there =
              adopted && asks.isReworded(standing)
                  ? Optional.of(at)
                  : heard.carry(motif.name(), at, place);
          addHeard(motif.name(), i, at, there, place, now);
          there.ifPresent(shapes::add);
        } else {
          shapes.add(shape);
        }
      }
      if (shapes.size() == motif.shapes().size()) {
        motifs.add(motif.with(shapes));
      } else {
        unheard.add(motif.name());
      }
    }
    return plan.withMotifs(motifs);
  }

  private void addHeard(
      String motif, int shape, HeardAt was, Optional<HeardAt> is, Outcome place, NewMusic now) {
    Standing standing = Standing.heard(motif, shape, was.place());
    if (is.isEmpty()) {
      List<String> nearest = place instanceof Outcome.Asked asked ? asked.nearest() : List.of();
      String sentence = "the new score doesn't play the notes of " + motif;
      ledger.add(standing, new Outcome.Asked(sentence, nearest), now);
      return;
    }
    boolean time = was.place() instanceof Place.AtTimecode && !timecodes;
    Outcome outcome = new Outcome.Found(is.get().place(), false);
    if (time && !is.get().place().equals(was.place())) {
      String sentence = "motif " + motif + " is heard at another time now";
      outcome = new Outcome.Asked(sentence, List.of(is.get().place().toString()));
    }
    ledger.add(standing, outcome, now);
    ledger.setting(
        Standing.shape(motif, shape).key("part"),
        "motif " + motif + " part",
        was.part(),
        is.get().part());
  }

  private void panels(Revision revision, NewMusic now, List<Meant> meant) {
    PlaceCarrier places = carrier(revision, now);
    List<Standing> standings = Standing.panels(plan);
    lookForAdopted(standings, places);
    for (Standing standing : standings) {
      Optional<String> lost = standing.place().motifName().filter(unheard::contains);
      Outcome outcome =
          lost.isPresent()
              ? new Outcome.Asked(
                  "the new score doesn't play the notes of " + lost.get(), List.of())
              : carried(standing, Meant.carrier(meant, standing).orElse(places));
      ledger.add(standing, outcome, now);
    }
  }

  private void performers(Revision revision) {
    for (Performer performer : plan.performers()) {
      if (!performer.part().isEmpty()) {
        ledger.setting(
            PlanPath.ROOT.key("performers").key(performer.name()).key("part"),
            "performer " + performer.name() + " part",
            performer.part(),
            old.partNow(performer.part(), revision));
      }
    }
  }
}
