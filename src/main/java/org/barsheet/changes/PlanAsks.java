package org.barsheet.changes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.changes.LaidAsk.Kind;
import org.barsheet.cues.Cue;
import org.barsheet.cues.Cues;
import org.barsheet.cues.FilmClock;
import org.barsheet.cues.MusicRuler;
import org.barsheet.cues.PlaceResolver;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Where;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.TempoRequest;

/** Gathers every place that a plan asks for, with the music it means. */
public final class PlanAsks {

  private final Plan plan;
  private final Music music;
  private final PlaceResolver places;
  private final Map<String, Cue> got;
  private final List<LaidAsk> asks = new ArrayList<>();

  private PlanAsks(Plan plan, Music music, List<Occurrence> returns, Map<String, Cue> got) {
    FilmClock clock = FilmClock.of(plan.film(), music);
    MusicRuler ruler = new MusicRuler(music, clock);
    long frames = clock.frameAt(music.lastSoundingBarEnd().plus(plan.film().tail()));
    this.plan = plan;
    this.music = music;
    this.got = new HashMap<>(got);
    this.places =
        new PlaceResolver(
            music, plan.film(), clock, new Cues(music, ruler, returns), Math.max(1, frames));
  }

  /**
   * All places: of motifs, of pins, then of panels in story order.
   *
   * @param returns every return of the plan's motifs
   * @param got the cues that panels have got, by panel name; none where the plan cannot be
   */
  public static List<LaidAsk> of(
      Plan plan, Music music, List<Occurrence> returns, Map<String, Cue> got) {
    PlanAsks gathered = new PlanAsks(plan, music, returns, got);
    plan.motifs().forEach(gathered::motif);
    plan.music().tempo().pins().forEach(gathered::pin);
    plan.panels().forEach(gathered::panel);
    return List.copyOf(gathered.asks);
  }

  private void motif(MotifRequest motif) {
    for (MotifRequest.Shape shape : motif.shapes()) {
      if (shape instanceof MotifRequest.HeardAt heard) {
        add(Kind.MOTIF, "", motif.name(), heard.place(), "", find(heard.place()));
      }
    }
  }

  private void pin(TempoRequest.Pin pin) {
    Place bar = new Place.AtBar(pin.bar(), OptionalInt.empty(), BigFraction.ONE);
    add(Kind.PIN, "", pin.at().toString(), bar, "", find(bar));
  }

  private void panel(Panel panel) {
    boolean photographed = panel.reveals().stream().anyMatch(Reveal::photographed);
    String held = panel.locked() ? "locked" : photographed ? "photographed" : "";
    Optional<Cue> cue = Optional.ofNullable(got.get(panel.name())).or(() -> find(panel.cue()));
    if (cue.isPresent() || !(panel.cue() instanceof Place.IntoPanel)) {
      add(Kind.CUE, panel.name(), "", panel.cue(), held, cue);
    }
    if (panel.cut() instanceof Panel.AtPlace at) {
      add(Kind.CUT, panel.name(), "", at.place(), held, find(at.place()));
    }
    for (Reveal reveal : panel.reveals()) {
      if (reveal.landsOn() instanceof Reveal.OnPlace on) {
        String kept = panel.locked() ? "locked" : reveal.photographed() ? "photographed" : "";
        add(Kind.REVEAL, panel.name(), reveal.opening(), on.place(), kept, find(on.place()));
      }
    }
  }

  /** The one cue a place means by itself. */
  private Optional<Cue> find(Place place) {
    if (place instanceof Place.Anywhere || place instanceof Place.IntoPanel) {
      return Optional.empty();
    }
    List<Cue> found = places.resolve(place, new Where(plan.text().file().toString(), ""));
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  private void add(
      Kind kind, String panel, String of, Place place, String held, Optional<Cue> cue) {
    boolean firm = isFirm(place);
    if (firm || !held.isEmpty()) {
      Optional<BigFraction> quarters =
          cue.filter(c -> !c.isBeforeMusic())
              .map(c -> music.tempo().tickAt(c.at()).divide(music.score().ticksPerQuarter()));
      asks.add(
          new LaidAsk(
              kind,
              panel,
              of,
              place.toString(),
              firm,
              held,
              quarters,
              cue.map(Cue::id).orElse("")));
    }
  }

  private static boolean isFirm(Place place) {
    if (place instanceof Place.OfMotif motif) {
      return motif.number().isPresent() || motif.nearBar().isPresent();
    }
    return !(place instanceof Place.Anywhere || place instanceof Place.AtTimecode);
  }
}
