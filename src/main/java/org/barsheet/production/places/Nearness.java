package org.barsheet.production.places;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.cues.Cue;
import org.barsheet.motif.Motif;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.find.NearMiss;
import org.barsheet.plan.Place;
import org.barsheet.plan.Place.AtBar;
import org.barsheet.pulse.Music;
import org.barsheet.score.Bar;

/**
 * How near each motif comes to a place: to a whole bar, or within half a felt beat of a moment.
 *
 * @param music where it is
 * @param place as people say it
 * @param motifs one a motif, in the plan's order
 */
public record Nearness(Music music, String place, List<OfMotif> motifs) {

  public Nearness {
    motifs = List.copyOf(motifs);
  }

  /**
   * How near one motif comes.
   *
   * @param motif its name
   * @param sounding its returns that begin there, or began before and sound on
   * @param nearest the nearest thing to it that begins there; empty if there is none
   */
  public record OfMotif(String motif, List<Occurrence> sounding, Optional<NearMiss> nearest) {
    public OfMotif {
      sounding = List.copyOf(sounding);
    }

    /** The return that the nearest thing is, if it counts as one. */
    public Optional<Occurrence> counted() {
      return sounding.stream()
          .filter(found -> nearest.filter(n -> n.startTick() == found.startTick()).isPresent())
          .findFirst();
    }
  }

  /** Looks around a cue; a bar asked for as a whole is looked at as a whole. */
  public static Nearness of(Returns returns, Place asked, Cue cue) {
    Music music = returns.music();
    BigFraction tick = music.tempo().tickAt(cue.at());
    Bar bar = music.bars().barAt(tick.longValue());
    boolean whole = asked instanceof AtBar at && at.beat().equals(BigFraction.ONE);
    long half = bar.lengthTicks() / bar.fullBeats() / 2;
    long from = whole ? bar.startTick() : Math.max(0, tick.longValue() - half);
    long to = whole ? bar.endTick() : tick.longValue() + half;
    List<OfMotif> motifs =
        returns.search().motifs().stream().map(motif -> of(returns, motif, from, to)).toList();
    return new Nearness(music, cue.title(), motifs);
  }

  private static OfMotif of(Returns returns, Motif motif, long from, long to) {
    List<Occurrence> sounding =
        returns.counted(motif.name()).stream()
            .filter(found -> found.startTick() < to && found.notes().endTick() > from)
            .toList();
    return new OfMotif(motif.name(), sounding, returns.search().nearest(motif, from, to));
  }
}
