package org.barsheet.align.conflict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.align.conflict.Conflict.Wish;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Panels;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.input.Prose;
import org.barsheet.plan.Length;
import org.barsheet.plan.Length.Unit;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place;
import org.barsheet.plan.Place.AtBar;
import org.barsheet.plan.Place.IntoPanel;
import org.barsheet.plan.Place.OfMotif;
import org.barsheet.plan.Reveal;

/** What would free a conflict: each fix is tried before it is told. */
final class Fixes {

  /** Other places tried for a panel, nearest first. */
  private static final int MOST_PLACES = 40;

  /**
   * One fix.
   *
   * @param frames how many frames it changes, {@link #NOT_IN_FRAMES} where they don't measure it
   * @param words what to do
   */
  private record Fix(long frames, String words) {}

  private static final long NOT_IN_FRAMES = Long.MAX_VALUE;

  /** Fixes told; more are no help. */
  private static final int MOST = 8;

  private final AlignerInput input;
  private final Conflicts conflicts;

  Fixes(AlignerInput input, Conflicts conflicts) {
    this.input = input;
    this.conflicts = conflicts;
  }

  /** The fixes in words, the smallest first. */
  List<String> of(Conflict conflict) {
    List<Fix> fixes = new ArrayList<>();
    for (Wish wish : conflict.wishes()) {
      if (fixes.size() == MOST) {
        break;
      }
      fix(wish, conflict).ifPresent(fixes::add);
    }
    fixes.sort(Comparator.comparingLong(Fix::frames));
    return fixes.stream().map(Fix::words).toList();
  }

  private Optional<Fix> fix(Wish wish, Conflict conflict) {
    Panel panel = input.panels().get(wish.panel());
    return switch (wish.kind()) {
      case LENGTH -> otherLength(wish.panel(), panel, conflict);
      case PLACE -> otherPlace(wish.panel(), panel, conflict);
      case REVEALS ->
          photographAgain(wish.panel(), panel, conflict)
              .or(() -> fewerPhotographs(wish.panel(), panel, conflict));
      case LOCK -> Optional.of(new Fix(NOT_IN_FRAMES, "unlock panel " + panel.name()));
    };
  }

  /** Whether the conflict's wishes can be kept with another panel in place of one of its own. */
  private boolean frees(int p, Panel other, Conflict conflict) {
    return conflicts.isPossibleWith(p, other, conflict.wishes());
  }

  private Optional<Fix> otherLength(int p, Panel panel, Conflict conflict) {
    Length asked = panel.length().orElseThrow();
    Unit unit = asked.unit() == Unit.SECONDS ? Unit.FRAMES : asked.unit();
    if (conflict.tooLong()) {
      int most = Math.max(1, frames(asked.least(), asked.unit()) - 1);
      return largest(1, most, n -> frees(p, withLength(panel, unit, n, asked, true), conflict))
          .stream()
          .mapToObj(n -> lengthFix(panel, " shrink to ", unit, n, asked.least()))
          .findFirst();
    }
    int from = frames(asked.most(), asked.unit()) + 1;
    return smallest(
            from,
            2 * from + 1000,
            n -> frees(p, withLength(panel, unit, n, asked, false), conflict))
        .stream()
        .mapToObj(n -> lengthFix(panel, " grow to ", unit, n, asked.most()))
        .findFirst();
  }

  private Fix lengthFix(Panel panel, String how, Unit unit, int amount, BigFraction asked) {
    Unit askedUnit = panel.length().orElseThrow().unit();
    long frames = Math.abs(span(unit, BigFraction.of(amount)) - span(askedUnit, asked));
    return new Fix(frames, "let panel " + panel.name() + how + text(unit, amount));
  }

  /** About how many frames an amount has: as many as at the music's start. */
  private long span(Unit unit, BigFraction amount) {
    Seconds start = input.clock().scoreTime(0);
    return input.ruler().frameAfter(start, unit, amount) - input.clock().frameAt(start);
  }

  /** The amount rounded up to whole units; seconds count in frames. */
  private int frames(BigFraction amount, Unit unit) {
    BigFraction counted =
        unit == Unit.SECONDS ? amount.multiply(input.film().rate().framesPerSecond()) : amount;
    var parts = counted.getNumerator().divideAndRemainder(counted.getDenominator());
    return Math.toIntExact(parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0));
  }

  private static String text(Unit unit, int amount) {
    return Length.of(unit, BigFraction.of(amount)).toString();
  }

  private static Panel withLength(Panel panel, Unit unit, int n, Length asked, boolean shrink) {
    BigFraction amount = BigFraction.of(n);
    BigFraction other = BigFraction.of(1_000_000);
    Length length =
        shrink
            ? new Length(unit, amount, asked.unit() == unit ? asked.most() : other)
            : new Length(unit, asked.unit() == unit ? asked.least() : BigFraction.ZERO, amount);
    return Panels.with(panel, panel.cue(), Optional.of(length), panel.reveals());
  }

  private Optional<Fix> otherPlace(int p, Panel panel, Conflict conflict) {
    if (panel.cue() instanceof IntoPanel into) {
      return otherOffset(p, panel, into, conflict);
    }
    return conflicts.panel(p).asked().flatMap(here -> otherPlace(p, panel, here, conflict));
  }

  private Optional<Fix> otherPlace(int p, Panel panel, Cue here, Conflict conflict) {
    return others(panel, here)
        .filter(cue -> frees(p, Panels.at(placeOf(cue), panel), conflict))
        .findFirst()
        .map(
            cue ->
                new Fix(
                    Math.abs(cue.frame() - here.frame()),
                    "put panel " + panel.name() + " on " + named(cue) + distance(here, cue)))
        .or(() -> noPlace(panel));
  }

  /** Other places of the kind asked, the nearest first; beats only where no bar line was asked. */
  private Stream<Cue> others(Panel panel, Cue here) {
    Stream<Cue> others =
        panel.cue() instanceof OfMotif motif
            ? nearest(returns(motif, here), here)
            : nearest(beats(true), here);
    boolean onBar = panel.cue() instanceof OfMotif || here.place().isDownbeat();
    Stream<Cue> all = onBar ? others : Stream.concat(nearest(beats(false), here), others);
    return all.sorted(Comparator.comparingLong(cue -> Math.abs(cue.frame() - here.frame())));
  }

  private static Stream<Cue> nearest(List<Cue> cues, Cue here) {
    return cues.stream()
        .filter(cue -> !cue.id().equals(here.id()))
        .sorted(Comparator.comparingLong(cue -> Math.abs(cue.frame() - here.frame())))
        .limit(MOST_PLACES);
  }

  /** Another whole number of what is counted into the panel before, the nearest first. */
  private Optional<Fix> otherOffset(int p, Panel panel, IntoPanel into, Conflict conflict) {
    Unit unit = into.offset().unit() == Unit.SECONDS ? Unit.FRAMES : into.offset().unit();
    long asked = span(into.offset().unit(), into.offset().most());
    int middle = frames(into.offset().most(), into.offset().unit());
    return IntStream.rangeClosed(Math.max(1, middle - MOST_PLACES), middle + MOST_PLACES)
        .mapToObj(n -> new IntoPanel(into.panel(), Length.of(unit, BigFraction.of(n))))
        .sorted(Comparator.comparingLong(other -> away(other, asked)))
        .filter(other -> frees(p, Panels.at(other, panel), conflict))
        .findFirst()
        .map(other -> new Fix(away(other, asked), "let panel " + panel.name() + " begin " + other));
  }

  private long away(IntoPanel other, long asked) {
    return Math.abs(span(other.offset().unit(), other.offset().most()) - asked);
  }

  /** A panel without a cue goes wherever it fits; one whose reveals land on the cue needs it. */
  private static Optional<Fix> noPlace(Panel panel) {
    return panel.reveals().isEmpty()
        ? Optional.of(new Fix(NOT_IN_FRAMES, "leave out the cue of panel " + panel.name()))
        : Optional.empty();
  }

  private List<Cue> returns(OfMotif motif, Cue here) {
    return input.cues().counted(motif.motif()).stream()
        .filter(cue -> cue.frame() >= 0 && cue.frame() < input.filmFrames())
        .filter(cue -> cue.number() != here.number())
        .toList();
  }

  private List<Cue> beats(boolean barLines) {
    return input.ruler().beatsBetween(0, input.filmFrames() - 1).stream()
        .filter(beat -> beat.place().isDownbeat() == barLines)
        .map(beat -> input.cues().atBar(beat.place(), beat.at()))
        .toList();
  }

  private static Place placeOf(Cue cue) {
    return cue.kind() == Cue.Kind.RETURN
        ? new OfMotif(cue.name(), OptionalInt.of(cue.number()), OptionalInt.empty())
        : new AtBar(cue.place().bar(), OptionalInt.of(cue.place().time()), cue.place().beat());
  }

  private static String named(Cue cue) {
    return cue.kind() == Cue.Kind.RETURN ? cue.title() + " (" + cue.place() + ")" : cue.title();
  }

  private String distance(Cue here, Cue there) {
    long frames = there.frame() - here.frame();
    return ", " + Prose.count(Math.abs(frames), "frame") + (frames < 0 ? " earlier" : " later");
  }

  private Optional<Fix> photographAgain(int p, Panel panel, Conflict conflict) {
    Optional<Reveal> photographed =
        panel.reveals().stream().filter(Reveal::photographed).findFirst();
    return photographed
        .filter(reveal -> frees(p, Panels.unphotographed(panel), conflict))
        .map(
            reveal ->
                "take the photographs of "
                    + reveal.opening()
                    + " again ("
                    + reveal.taken().undone()
                    + ")")
        .map(words -> new Fix(NOT_IN_FRAMES, words));
  }

  private Optional<Fix> fewerPhotographs(int p, Panel panel, Conflict conflict) {
    for (int r = 0; r < panel.reveals().size(); r++) {
      int index = r;
      Reveal reveal = panel.reveals().get(r);
      OptionalInt most =
          largest(
              1,
              reveal.photographs() - 1,
              n -> frees(p, withPhotographs(panel, index, n), conflict));
      if (most.isPresent()) {
        long asked = (long) reveal.photographs() * reveal.framesPerPhotograph();
        String words =
            "give "
                + reveal.opening()
                + " in panel "
                + panel.name()
                + " at most "
                + Prose.count(most.getAsInt(), "photograph")
                + " on ones instead of "
                + reveal.photographs();
        return Optional.of(new Fix(asked - most.getAsInt(), words));
      }
    }
    return Optional.empty();
  }

  private static Panel withPhotographs(Panel panel, int index, int photographs) {
    List<Reveal> reveals = new ArrayList<>(panel.reveals());
    reveals.set(index, Panels.onOnes(reveals.get(index), photographs));
    return Panels.with(panel, panel.cue(), panel.length(), reveals);
  }

  /** The largest number that passes, where every smaller one passes too. */
  private static OptionalInt largest(int least, int most, IntPredicate passes) {
    if (most < least || !passes.test(least)) {
      return OptionalInt.empty();
    }
    int low = least;
    int high = most;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (passes.test(middle)) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return OptionalInt.of(low);
  }

  /** The smallest number that passes, where every larger one passes too. */
  private static OptionalInt smallest(int least, int most, IntPredicate passes) {
    OptionalInt mirrored = largest(0, most - least, n -> passes.test(most - n));
    return mirrored.isEmpty() ? mirrored : OptionalInt.of(most - mirrored.getAsInt());
  }
}
