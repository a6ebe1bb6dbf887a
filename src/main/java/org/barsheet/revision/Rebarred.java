package org.barsheet.revision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Passages that play the same notes in other bars: a place in them stays with its notes. */
final class Rebarred {

  /** So many of a hundred notes must be the same. */
  private static final int LEAST_PERCENT = 90;

  /** Passages of more bars against bars are left as they are paired. */
  private static final long MOST_CELLS = 100_000;

  /**
   * A passage.
   *
   * @param from where it began, in units from tick 0
   * @param to where it ended
   * @param later how much later it begins now
   */
  private record Passage(long from, long to, long later) {}

  private final ScoreNotes before;
  private final ScoreNotes now;
  private final BarPairing pairing;
  private final List<Passage> passages = new ArrayList<>();

  private Rebarred(ScoreNotes before, ScoreNotes now, BarPairing pairing) {
    this.before = before;
    this.now = now;
    this.pairing = pairing;
  }

  /** The passages between bars that are surely the same. */
  static Rebarred of(ScoreNotes before, ScoreNotes now, BarPairing pairing) {
    Rebarred rebarred = new Rebarred(before, now, pairing);
    int was = -1;
    int is = -1;
    for (int i = 0; i <= before.bars().size(); i++) {
      boolean end = i == before.bars().size();
      int there = end ? now.bars().size() : pairing.best(i);
      boolean same = end || (pairing.asGood(i).size() == 1 && pairing.isSame(i, there));
      if (same && there > is) {
        rebarred.look(was + 1, i, is + 1, there);
        was = i;
        is = there;
      }
    }
    return rebarred;
  }

  private void look(int was, int wasEnd, int is, int isEnd) {
    if (was < wasEnd && is < isEnd && noBarIsLike(was, wasEnd, is, isEnd)) {
      long from = before.bars().get(was).start();
      long to = before.bars().get(wasEnd - 1).end();
      long[] there = notes(now, is, isEnd, 0);
      // Something new may stand before the passage or behind it.
      long[] found =
          LongStream.of(now.bars().get(is).start() - from, now.bars().get(isEnd - 1).end() - to)
              .distinct()
              .filter(later -> isMostlyIn(notes(before, was, wasEnd, later), there))
              .toArray();
      if (found.length == 1) {
        passages.add(new Passage(from, to, found[0]));
      }
    }
  }

  /** Whether bars are drawn otherwise: where one stands as it stood, it is paired by itself. */
  private boolean noBarIsLike(int was, int wasEnd, int is, int isEnd) {
    return (long) (wasEnd - was) * (isEnd - is) <= MOST_CELLS
        && IntStream.range(was, wasEnd)
            .noneMatch(i -> IntStream.range(is, isEnd).anyMatch(j -> pairing.isSame(i, j)))
        && !lengths(before, was, wasEnd).equals(lengths(now, is, isEnd));
  }

  private static Set<Long> lengths(ScoreNotes score, int from, int to) {
    return score.bars().subList(from, to).stream().map(HeldBar::length).collect(Collectors.toSet());
  }

  /** The notes of bars at their times in the piece, all moved later. */
  private static long[] notes(ScoreNotes score, int from, int to, long later) {
    LongStream all =
        IntStream.range(from, to)
            .boxed()
            .flatMapToLong(
                bar ->
                    Arrays.stream(
                        BarContent.notes(score, bar, score.bars().get(bar).start() + later)));
    return all.sorted().distinct().toArray();
  }

  private static boolean isMostlyIn(long[] notes, long[] there) {
    long common =
        Arrays.stream(notes).filter(note -> Arrays.binarySearch(there, note) >= 0).count();
    return notes.length > 0 && 100 * common >= (long) LEAST_PERCENT * notes.length;
  }

  /** Where a time of such a passage is now; nothing for all others. */
  Optional<BigFraction> of(BigFraction time) {
    return passages.stream()
        .filter(passage -> time.compareTo(BigFraction.of(passage.from())) >= 0)
        .filter(passage -> time.compareTo(BigFraction.of(passage.to())) < 0)
        .map(passage -> time.add(BigFraction.of(passage.later())))
        .findFirst();
  }
}
