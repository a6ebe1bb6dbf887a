package org.barsheet.adoption;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.cues.Cue;
import org.barsheet.plan.Place.AtBar;
import org.barsheet.plan.Place.OfMotif;
import org.barsheet.plan.Played;
import org.barsheet.revision.Fate;
import org.barsheet.revision.Fate.Kept;
import org.barsheet.revision.Fate.Undecided;
import org.barsheet.revision.HeldReturn;
import org.barsheet.revision.Revision;
import org.barsheet.score.BarBeat;

/** Carries returns of motifs to the new version. */
final class ReturnCarrier {

  private static final int MOST_NEAREST = 2;

  private final Revision revision;
  private final OldMusic old;
  private final NewMusic now;
  private final BarCarrier bars;
  private final Map<LaidCue, Fate<HeldReturn>> fates = new HashMap<>();

  ReturnCarrier(Revision revision, OldMusic old, NewMusic now, BarCarrier bars) {
    this.revision = revision;
    this.old = old;
    this.now = now;
    this.bars = bars;
    List<LaidCue> was = old.returns();
    List<Fate<HeldReturn>> all =
        revision.ofReturns(
            was.stream().map(cue -> cue.held().orElseThrow()).toList(), now.returns());
    for (int i = 0; i < was.size(); i++) {
      fates.put(was.get(i), all.get(i));
    }
  }

  Outcome carry(OfMotif place) {
    OfMotif renamed = withPart(place);
    if (place.isAny()) {
      return new Outcome.Found(renamed, false);
    }
    Optional<LaidCue> was = old.returnAt(place);
    if (was.isEmpty()) {
      return new Outcome.Asked("the old score has no such return", List.of());
    }
    Fate<HeldReturn> fate = Objects.requireNonNull(fates.get(was.get()));
    return fate instanceof Kept<HeldReturn> kept
        ? kept(renamed, was.get(), now.cueOf(kept.now()), kept.changed())
        : asked(place, was.get(), fate);
  }

  private OfMotif withPart(OfMotif place) {
    Played played = place.played();
    Played renamed =
        new Played(played.forms(), played.part().map(part -> old.partNow(part, revision)));
    return new OfMotif(place.motif(), renamed, place.number(), place.nearBar());
  }

  private Outcome kept(OfMotif place, LaidCue was, Cue cue, boolean otherNotes) {
    if (cue.number() == 0) {
      String sentence = was.words() + " is only a possible return now, in " + cue.place();
      return new Outcome.Asked(sentence, nearest(was));
    }
    BarBeat where = old.notes().placeAt(OldMusic.quartersOf(was.held().orElseThrow()));
    if (!revision.isSure(where)) {
      String sentence = was.words() + " may be gone, or in another bar now";
      return new Outcome.Asked(sentence, List.of(words(cue)));
    }
    return new Outcome.Found(named(place, cue), otherNotes);
  }

  /** The return in words as like the plan's as mean it and no other. */
  private OfMotif named(OfMotif place, Cue cue) {
    OfMotif number = numbered(place.motif(), cue);
    if (place.number().isPresent()) {
      return number;
    }
    List<OfMotif> ways = new ArrayList<>();
    if (!place.played().equals(Played.ANYHOW)) {
      ways.add(place);
    }
    nearBarNow(place).ifPresent(bar -> ways.add(near(place, place.played(), bar)));
    ways.add(near(place, place.played(), cue.place().bar()));
    ways.add(near(place, Played.ANYHOW, cue.place().bar()));
    return ways.stream().filter(way -> now.isAt(way, cue)).findFirst().orElse(number);
  }

  private static OfMotif numbered(String motif, Cue cue) {
    return new OfMotif(motif, OptionalInt.of(cue.number()), OptionalInt.empty());
  }

  private static OfMotif near(OfMotif place, Played played, int bar) {
    return new OfMotif(place.motif(), played, OptionalInt.empty(), OptionalInt.of(bar));
  }

  /** The printed number of the bar that the place names, as it is now. */
  private Optional<Integer> nearBarNow(OfMotif place) {
    OptionalInt first = OptionalInt.of(1);
    AtBar bar = new AtBar(place.nearBar().orElseThrow(), first, BigFraction.ONE);
    return bars.carry(bar) instanceof Outcome.Found found && found.now() instanceof AtBar is
        ? Optional.of(is.bar())
        : Optional.empty();
  }

  private Outcome asked(OfMotif place, LaidCue was, Fate<HeldReturn> fate) {
    String words = place.number().isPresent() ? was.words() : place + " (" + was.words() + ")";
    if (fate instanceof Undecided<HeldReturn> undecided) {
      List<String> candidates =
          undecided.candidates().stream().map(now::cueOf).map(ReturnCarrier::words).toList();
      return new Outcome.Asked(words + " may be in either of two places now", candidates);
    }
    return new Outcome.Asked(words + " is gone", nearest(was));
  }

  private List<String> nearest(LaidCue was) {
    BigFraction around = bars.around(OldMusic.quartersOf(was.held().orElseThrow()));
    return now.nearest(was.name(), around).stream()
        .limit(MOST_NEAREST)
        .map(ReturnCarrier::words)
        .toList();
  }

  /** {@code glimmer 4 (bar 20)}. */
  private static String words(Cue cue) {
    return cue.title() + " (" + cue.place() + ")";
  }
}
