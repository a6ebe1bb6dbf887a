package org.barsheet.cues;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.barsheet.motif.Form;
import org.barsheet.motif.Motif;
import org.barsheet.motif.MotifFinder;
import org.barsheet.motif.MotifReliability;
import org.barsheet.motif.NearMiss;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.OccurrenceFinder;
import org.barsheet.motif.PlayedOccurrenceFinder;
import org.barsheet.plan.Plan;
import org.barsheet.pulse.Music;
import org.barsheet.score.Score;

/**
 * Looks for a plan's motifs in its music: by the written beats where the notes sit on them, by the
 * playing alone where they do not.
 */
public final class MotifSearch {

  private static final Set<Form> POSSIBLE = EnumSet.of(Form.ORNAMENTED, Form.SHORTENED);

  private final Score score;
  private final Function<Score, MotifFinder> reading;
  private final MotifFinder finder;
  private final List<Motif> motifs;

  private MotifSearch(
      Score score, Function<Score, MotifFinder> reading, MotifFinder finder, List<Motif> motifs) {
    this.score = score;
    this.reading = reading;
    this.finder = finder;
    this.motifs = motifs;
  }

  /**
   * A search for all motifs of a plan.
   *
   * @throws InputException if a motif cannot be heard where the plan says, or is too plain
   */
  public static MotifSearch of(Plan plan, Music music) {
    FilmClock clock = FilmClock.of(plan.film(), music);
    Seconds end = music.lastSoundingBarEnd().plus(plan.film().tail());
    List<Motif> motifs = MotifResolver.motifs(plan, music, clock, clock.frameAt(end));
    Function<Score, MotifFinder> reading =
        music.isFreelyPlayed() ? PlayedOccurrenceFinder::of : OccurrenceFinder::of;
    return new MotifSearch(music.score(), reading, reading.apply(music.score()), motifs);
  }

  /** The same search that finds ornamented and shortened returns too, as possible ones. */
  public MotifSearch withPossible() {
    List<Motif> wider = motifs.stream().map(MotifSearch::withPossible).toList();
    return new MotifSearch(score, reading, finder, wider);
  }

  private static Motif withPossible(Motif motif) {
    Set<Form> forms = EnumSet.copyOf(POSSIBLE);
    forms.addAll(motif.forms());
    return new Motif(motif.name(), motif.shapes(), motif.accent(), motif.match(), forms);
  }

  /** The plan's motifs, in its order. */
  public List<Motif> motifs() {
    return motifs;
  }

  /** Every return of every motif, in order of time. */
  public List<Occurrence> occurrences() {
    return motifs.stream()
        .flatMap(motif -> finder.find(motif).stream())
        .sorted(Comparator.comparingLong(Occurrence::startTick))
        .toList();
  }

  /** The nearest that a motif comes among what begins from one tick to before another. */
  public Optional<NearMiss> nearest(Motif motif, long fromTick, long toTick) {
    return finder.nearest(motif, fromTick, toTick);
  }

  /** How many of a motif's returns chance alone would show. */
  public MotifReliability reliability(Motif motif) {
    return MotifReliability.of(score, motif, reading);
  }
}
