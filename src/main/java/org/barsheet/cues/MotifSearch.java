package org.barsheet.cues;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.barsheet.input.InputException;
import org.barsheet.motif.Form;
import org.barsheet.motif.Motif;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.find.MotifFinder;
import org.barsheet.motif.find.MotifReliability;
import org.barsheet.motif.find.NearMiss;
import org.barsheet.motif.find.OccurrenceFinder;
import org.barsheet.motif.find.PlayedOccurrenceFinder;
import org.barsheet.notation.WrittenMusic;
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
  private final List<PlainMotif> tooPlain;

  private MotifSearch(
      Score score,
      Function<Score, MotifFinder> reading,
      MotifFinder finder,
      List<Motif> motifs,
      List<PlainMotif> tooPlain) {
    this.score = score;
    this.reading = reading;
    this.finder = finder;
    this.motifs = motifs;
    this.tooPlain = tooPlain;
  }

  /**
   * A search for all motifs of a plan that are not too plain.
   *
   * @throws InputException if a motif cannot be heard where the plan says
   */
  public static MotifSearch of(Plan plan, Music music) {
    MotifResolver.Resolved heard = MotifResolver.resolve(plan, music);
    Function<Score, MotifFinder> reading = reading(music);
    return new MotifSearch(
        music.score(), reading, reading.apply(music.score()), heard.motifs(), heard.tooPlain());
  }

  /** How the notes of music are compared: by written beats, or by the playing alone. */
  public static Function<Score, MotifFinder> reading(Music music) {
    return isPlayedFreely(music) ? PlayedOccurrenceFinder::of : OccurrenceFinder::of;
  }

  /** Whether notes keep to the beats of the ticks too loosely to be written down by them. */
  public static boolean isPlayedFreely(Music music) {
    return music.isFreelyPlayed() && !WrittenMusic.of(music.score()).isOnBeats();
  }

  /**
   * The motifs of a plan that are too plain to be looked for, without a search.
   *
   * @throws InputException if a motif cannot be heard where the plan says
   */
  public static List<PlainMotif> tooPlain(Plan plan, Music music) {
    return MotifResolver.resolve(plan, music).tooPlain();
  }

  /** The same search that finds ornamented and shortened returns too, as possible ones. */
  public MotifSearch withPossible() {
    List<Motif> wider = motifs.stream().map(MotifSearch::withPossible).toList();
    return new MotifSearch(score, reading, finder, wider, tooPlain);
  }

  private static Motif withPossible(Motif motif) {
    Set<Form> forms = EnumSet.copyOf(POSSIBLE);
    forms.addAll(motif.forms());
    return new Motif(motif.name(), motif.shapes(), motif.accent(), motif.match(), forms);
  }

  /** The plan's motifs that are looked for, in its order. */
  public List<Motif> motifs() {
    return motifs;
  }

  /** Those that are too plain to be looked for. */
  public List<PlainMotif> tooPlain() {
    return tooPlain;
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
