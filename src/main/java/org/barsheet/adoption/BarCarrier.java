package org.barsheet.adoption;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.plan.Place;
import org.barsheet.plan.Place.AtBar;
import org.barsheet.revision.Fate;
import org.barsheet.revision.Fate.Gone;
import org.barsheet.revision.Fate.Kept;
import org.barsheet.revision.Fate.Undecided;
import org.barsheet.revision.HeldBar;
import org.barsheet.revision.Revision;
import org.barsheet.revision.ScoreNotes;
import org.barsheet.score.BarBeat;

/** Carries bars and moments to the new version. */
final class BarCarrier {

  private final Revision revision;
  private final OldMusic old;
  private final NewMusic now;

  BarCarrier(Revision revision, OldMusic old, NewMusic now) {
    this.revision = revision;
    this.old = old;
    this.now = now;
  }

  Outcome carry(AtBar place) {
    Optional<BarBeat> was = old.barBeat(place);
    if (was.isEmpty()) {
      String sentence = "the old score has no such bar, or plays it more than once";
      return new Outcome.Asked(sentence, List.of());
    }
    Fate<BarBeat> fate = doubted(revision.of(was.get()), was.get());
    if (fate instanceof Kept<BarBeat> kept) {
      return new Outcome.Found(written(place, was.get(), kept.now()), kept.changed());
    }
    return asked(place.toString(), fate, was.get());
  }

  /** The place in the words of the plan: a beat keeps its number where the bar keeps its beats. */
  private Place written(AtBar place, BarBeat was, BarBeat is) {
    int before = beats(revision.before().barAt(was));
    boolean sameBeats = before == beats(revision.now().barAt(is));
    boolean time = place.time().isPresent() || now.timesPlayed(is.bar()) > 1;
    return new AtBar(
        is.bar(),
        time ? OptionalInt.of(is.time()) : OptionalInt.empty(),
        sameBeats ? place.beat() : is.beat());
  }

  private static int beats(Optional<HeldBar> bar) {
    return bar.map(held -> held.beats().size()).orElse(0);
  }

  /** The place of a moment, in bars. */
  Place placeAt(BigFraction quarters) {
    BarBeat is = revision.now().placeAt(quarters);
    OptionalInt time =
        now.timesPlayed(is.bar()) > 1 ? OptionalInt.of(is.time()) : OptionalInt.empty();
    return new AtBar(is.bar(), time, is.beat());
  }

  /** What became of a moment, in quarter notes from tick 0. */
  Fate<BigFraction> fateOf(BigFraction quarters) {
    return doubted(revision.ofQuarters(quarters), revision.before().placeAt(quarters));
  }

  private <T> Fate<T> doubted(Fate<T> fate, BarBeat was) {
    return fate instanceof Kept<T> kept && !revision.isSure(was)
        ? new Undecided<>(List.of(kept.now()), true)
        : fate;
  }

  /** What to ask where music is gone, or may be in two places. */
  Outcome.Asked asked(String words, Fate<?> fate, BarBeat was) {
    if (fate instanceof Undecided<?> undecided) {
      List<String> candidates =
          revision.of(was).possible().stream().map(BarBeat::toString).toList();
      String why =
          undecided.perhapsGone()
              ? " may be gone, or in another bar now"
              : " may be in either of two bars now";
      return new Outcome.Asked(words + why, candidates);
    }
    return new Outcome.Asked(words + " is gone", neighbors(was));
  }

  /** Where the nearest bars that are left stand now, the one before first. */
  List<String> neighbors(BarBeat was) {
    int bar = revision.before().barOf(was.bar(), was.time()).orElse(0);
    List<String> found = new ArrayList<>();
    for (int step : new int[] {-1, 1}) {
      kept(bar, step).ifPresent(index -> found.add(barAt(index)));
    }
    return found;
  }

  private Optional<Integer> kept(int from, int step) {
    for (int i = from; i >= 0 && i < revision.before().bars().size(); i += step) {
      Fate<Integer> fate = revision.ofBar(i);
      if (fate instanceof Kept<Integer> kept) {
        return Optional.of(kept.now());
      }
    }
    return Optional.empty();
  }

  private String barAt(int index) {
    HeldBar bar = revision.now().bars().get(index);
    return placeAt(BigFraction.of(bar.start(), ScoreNotes.UNITS)).toString();
  }

  /** About where a moment is now, though its bar may be gone. */
  BigFraction around(BigFraction quarters) {
    Fate<BigFraction> fate = revision.ofQuarters(quarters);
    if (!(fate instanceof Gone<BigFraction>)) {
      return fate.possible().get(0);
    }
    BarBeat was = revision.before().placeAt(quarters);
    int bar = revision.before().barOf(was.bar(), was.time()).orElse(0);
    return kept(bar, -1)
        .or(() -> kept(bar, 1))
        .map(index -> BigFraction.of(revision.now().bars().get(index).start(), ScoreNotes.UNITS))
        .orElse(BigFraction.ZERO);
  }
}
