package org.barsheet.motif.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Motif;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.match.Intervals;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/**
 * How many returns chance alone would show: what decoys find, lines with the motif's own rhythm and
 * its intervals shuffled.
 *
 * @param chanceFinds how many certain and likely returns a decoy has in the score, on average
 */
public record MotifReliability(double chanceFinds) {

  private static final int DECOYS = 12;
  private static final int TRIES = 40;

  /** As many notes as are looked at, and as many of them in a row. */
  private static final int MOST_NOTES = 10_000;

  private static final int STRETCH = 500;

  private static final long SEED = 20_250_301;

  /** From this many on a motif is too plain to be believed. */
  private static final double TOO_PLAIN = 0.5;

  /**
   * Measures one motif in one score; the same always gives the same. Of a long score a part is
   * looked at.
   *
   * @param reading how the score is read: {@code OccurrenceFinder::of} as written
   */
  public static MotifReliability of(
      Score score, Motif motif, Function<Score, ? extends MotifFinder> reading) {
    List<Note> sample = sample(score.notes());
    MotifFinder finder = reading.apply(score.withNotes(sample));
    double share = (double) sample.size() / Math.max(1, score.notes().size());
    SplittableRandom random = new SplittableRandom(SEED);
    List<MotifNote> shape = motif.shapes().get(0);
    int found = 0;
    for (int decoy = 0; decoy < DECOYS; decoy++) {
      Motif shuffled =
          new Motif(
              motif.name(),
              List.of(shuffled(shape, random)),
              Accent.FIRST,
              motif.match(),
              motif.forms());
      found += (int) finder.find(shuffled).stream().filter(o -> o.number() > 0).count();
    }
    return new MotifReliability(found / (DECOYS * Math.max(share, Double.MIN_NORMAL)));
  }

  /** Stretches of notes spread over a long score; all of a short one. */
  private static List<Note> sample(List<Note> notes) {
    int step = (notes.size() + MOST_NOTES - 1) / MOST_NOTES;
    return step <= 1
        ? notes
        : IntStream.range(0, notes.size())
            .filter(i -> i / STRETCH % step == 0)
            .mapToObj(notes::get)
            .toList();
  }

  public boolean isTooPlain() {
    return chanceFinds >= TOO_PLAIN;
  }

  /** "too plain: expect about 3 chance matches", or that none is to be expected. */
  public String sentence() {
    if (!isTooPlain()) {
      return "distinct: chance matches are unlikely";
    }
    long about = Math.max(1, Math.round(chanceFinds));
    return String.format(
        Locale.ROOT,
        "too plain: expect about %d chance %s",
        about,
        about == 1 ? "match" : "matches");
  }

  /** The same rhythm over intervals in another order and direction, unlike the motif itself. */
  private static List<MotifNote> shuffled(List<MotifNote> shape, SplittableRandom random) {
    List<MotifNote> decoy = shape;
    for (int tries = 0; tries < TRIES && resembles(shape, decoy); tries++) {
      decoy = onceShuffled(shape, random);
    }
    return decoy;
  }

  private static List<MotifNote> onceShuffled(List<MotifNote> shape, SplittableRandom random) {
    List<Integer> intervals = new ArrayList<>();
    for (int i = 1; i < shape.size(); i++) {
      int interval = shape.get(i).pitch() - shape.get(i - 1).pitch();
      int turned = random.nextInt(2) == 0 ? interval : -interval;
      intervals.add(random.nextInt(intervals.size() + 1), turned);
    }
    List<MotifNote> line = new ArrayList<>(List.of(shape.get(0)));
    for (int i = 1; i < shape.size(); i++) {
      int pitch = line.get(i - 1).pitch() + intervals.get(i - 1);
      line.add(at(shape.get(i), Math.max(0, Math.min(127, pitch))));
    }
    return line;
  }

  private static MotifNote at(MotifNote note, int pitch) {
    BigFraction onset = note.onset();
    return new MotifNote(onset, note.length(), pitch);
  }

  /** Whether fewer than two intervals differ by scale steps. */
  private static boolean resembles(List<MotifNote> shape, List<MotifNote> decoy) {
    int differing = 0;
    for (int i = 1; i < shape.size(); i++) {
      int asked = shape.get(i).pitch() - shape.get(i - 1).pitch();
      int other = decoy.get(i).pitch() - decoy.get(i - 1).pitch();
      differing += Intervals.stepsApart(asked, other) > 0 ? 1 : 0;
    }
    return differing < 2;
  }
}
