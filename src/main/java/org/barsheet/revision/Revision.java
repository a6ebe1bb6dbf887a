package org.barsheet.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.revision.Fate.Gone;
import org.barsheet.revision.Fate.Kept;
import org.barsheet.revision.Fate.Undecided;
import org.barsheet.score.BarBeat;

/**
 * What became of the music between two versions of a score: of its bars, of places in them, and of
 * the returns of motifs. Things are known by their notes, never by number, frame or the order of
 * parts.
 */
public final class Revision {

  /** Bars of a block that a composer plays twice; longer ones are sections. */
  private static final int LONGEST_BLOCK = 32;

  private final ScoreNotes before;
  private final ScoreNotes now;
  private final BarPairing pairing;
  private final PartNames parts;
  private final boolean sameNotes;
  private final Rebarred rebarred;

  private Revision(ScoreNotes before, ScoreNotes now) {
    this.before = before;
    this.now = now;
    this.pairing = BarPairing.of(before, now);
    this.parts = PartNames.of(before, now);
    this.rebarred = Rebarred.of(before, now, pairing);
    this.sameNotes = NoteStream.of(before).equals(NoteStream.of(now));
  }

  /** What lies between two versions. */
  public static Revision between(ScoreNotes before, ScoreNotes now) {
    return new Revision(before, now);
  }

  /** Whether both versions play the same notes at the same times, in whatever bars. */
  public boolean sameNotes() {
    return sameNotes;
  }

  public ScoreNotes before() {
    return before;
  }

  public ScoreNotes now() {
    return now;
  }

  /**
   * What became of a bar.
   *
   * @param bar its index before
   * @return its index now
   */
  public Fate<Integer> ofBar(int bar) {
    List<Integer> found = new ArrayList<>(pairing.asGood(bar));
    boolean perhapsGone = found.remove(Integer.valueOf(BarWindow.NONE));
    if (found.isEmpty()) {
      return new Gone<>();
    }
    return found.size() == 1 && !perhapsGone
        ? new Kept<>(found.get(0), !pairing.isSame(bar, found.get(0)))
        : new Undecided<>(found, perhapsGone);
  }

  /**
   * Whether what became of a place is sure. It is not where its bar has other notes now that are,
   * note for note, those of another bar before, which may have come to stand there; nor where a bar
   * with the same notes is gone beside it, for either of the two may be the one that is left; nor
   * where a new bar nearby has the same notes and as good neighbors: a block played twice now.
   */
  public boolean isSure(BarBeat place) {
    Optional<Integer> bar = before.barOf(place.bar(), place.time());
    return bar.isPresent()
        && ofBar(bar.get()) instanceof Kept<Integer> kept
        && !(kept.changed() && pairing.isAnother(bar.get(), kept.now()))
        && !isLeftOfTwo(bar.get(), 1)
        && !isLeftOfTwo(bar.get(), -1)
        && !isOneOfTwo(bar.get(), kept.now());
  }

  /** Whether a new bar nearby has the same notes, between bars no less like those before. */
  private boolean isOneOfTwo(int was, int is) {
    return added().stream()
        .filter(copy -> Math.abs(copy - is) <= LONGEST_BLOCK && pairing.areAlikeNow(is, copy))
        .anyMatch(copy -> neighbors(was, copy) >= neighbors(was, is));
  }

  /** How many of the two bars beside a bar of now have the notes of those beside one before. */
  private int neighbors(int was, int is) {
    return (pairing.isSame(was - 1, is - 1) ? 1 : 0) + (pairing.isSame(was + 1, is + 1) ? 1 : 0);
  }

  /** Whether bars that are gone follow, or precede, and one of them has the bar's own notes. */
  private boolean isLeftOfTwo(int bar, int step) {
    int other = bar + step;
    while (other >= 0 && other < before.bars().size() && ofBar(other) instanceof Gone<Integer>) {
      if (pairing.wereAlike(bar, other)) {
        return true;
      }
      other += step;
    }
    return false;
  }

  /** The bar of now that a bar most probably is, for an overview; empty where it is gone. */
  Optional<Integer> mostProbably(int bar) {
    int best = pairing.best(bar);
    return best < 0 ? Optional.empty() : Optional.of(best);
  }

  /** Bars of now that were none before, most probably, by index. */
  public Set<Integer> added() {
    return pairing.added();
  }

  /**
   * What became of a place, {@code bar 12 beat 3}; gone where the score before has no such bar, or
   * the bar has become too short for it.
   */
  public Fate<BarBeat> of(BarBeat place) {
    Optional<Integer> bar = before.barOf(place.bar(), place.time());
    if (bar.isEmpty()) {
      return new Gone<>();
    }
    BigFraction time = before.timeOf(before.bars().get(bar.get()), place.beat());
    return map(ofUnits(time), now::locate);
  }

  /**
   * What became of a moment.
   *
   * @param quarters quarter notes from tick 0 of the score before
   * @return quarter notes from tick 0 of the score now
   */
  public Fate<BigFraction> ofQuarters(BigFraction quarters) {
    return map(ofUnits(quarters.multiply(ScoreNotes.UNITS)), time -> time.divide(ScoreNotes.UNITS));
  }

  /**
   * When a moment of now was before, where that is sure.
   *
   * @param quarters quarter notes from tick 0 of the score now
   */
  public Optional<BigFraction> previously(BigFraction quarters) {
    BigFraction time = quarters.multiply(ScoreNotes.UNITS);
    int is = now.barAt(time);
    for (int was = 0; was < before.bars().size(); was++) {
      if (ofBar(was).sure().equals(Optional.of(is))) {
        BigFraction into = time.subtract(now.bars().get(is).start());
        return Optional.of(into.add(before.bars().get(was).start()).divide(ScoreNotes.UNITS));
      }
    }
    return Optional.empty();
  }

  /** What a part of the version before is called now. */
  public String partNow(String name) {
    return parts.now(name);
  }

  /** What became of each return, in the order given; each return of now is that of one at most. */
  public List<Fate<HeldReturn>> ofReturns(List<HeldReturn> was, List<HeldReturn> is) {
    return new ReturnPairing(this, was, is).fates();
  }

  /** What became of a moment in units from tick 0. */
  Fate<BigFraction> ofUnits(BigFraction time) {
    if (sameNotes) {
      return new Kept<>(time, false);
    }
    Optional<BigFraction> inOtherBars = rebarred.of(time);
    if (inOtherBars.isPresent()) {
      return new Kept<>(inOtherBars.get(), false);
    }
    int bar = before.barAt(time);
    BigFraction into = time.subtract(before.bars().get(bar).start());
    Fate<Integer> fate = ofBar(bar);
    List<BigFraction> found = new ArrayList<>();
    for (int candidate : fate.possible()) {
      HeldBar there = now.bars().get(candidate);
      boolean runsOn = bar == before.bars().size() - 1 && candidate == now.bars().size() - 1;
      if (runsOn || into.compareTo(BigFraction.of(there.length())) < 0) {
        found.add(into.add(there.start()));
      }
    }
    if (found.isEmpty()) {
      return new Gone<>();
    }
    if (fate instanceof Kept<Integer> kept) {
      return new Kept<>(found.get(0), kept.changed());
    }
    return new Undecided<>(
        found, fate instanceof Undecided<Integer> undecided && undecided.perhapsGone());
  }

  private static <T> Fate<T> map(Fate<BigFraction> fate, Function<BigFraction, T> to) {
    if (fate instanceof Kept<BigFraction> kept) {
      return new Kept<>(to.apply(kept.now()), kept.changed());
    }
    if (fate instanceof Undecided<BigFraction> undecided) {
      return new Undecided<>(
          undecided.candidates().stream().map(to).toList(), undecided.perhapsGone());
    }
    return new Gone<>();
  }
}
