package org.barsheet.pulse;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.input.SyntaxException;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/** Gives bars their felt beats and their printed numbers as asked. */
final class BarNumbering {

  private final Score score;
  private final TempoRequest request;
  private final List<Doubt> doubts;

  BarNumbering(Score score, TempoRequest request, List<Doubt> doubts) {
    this.score = score;
    this.request = request;
    this.doubts = doubts;
  }

  /**
   * Whether the first bar is a pickup. Left open by the request, it is one where it is written
   * short, or where nothing sounds in its first half.
   */
  boolean decidePickup(BarGrid bars) {
    return switch (request.pickup()) {
      case YES -> true;
      case NO -> false;
      case AUTO -> bars.first().number() == 0 || isPadded(bars);
    };
  }

  private boolean isPadded(BarGrid bars) {
    Bar first = bars.first();
    if (score.notes().isEmpty() || bars.bars().size() < 2) {
      return false;
    }
    long onset = score.notes().get(0).onTick();
    boolean padded = first.contains(onset) && 2 * onset >= first.startTick() + first.endTick();
    if (padded) {
      doubts.add(
          new Doubt(
              Doubt.Kind.PICKUP,
              first,
              first,
              "nothing sounds in the first half of the first bar, so it counts as a pickup"));
    }
    return padded;
  }

  /** The bars under their printed numbers. */
  BarGrid number(BarGrid bars, boolean pickup) {
    int first = pickup ? request.firstBar() - 1 : request.firstBar();
    return request
        .playedOrder()
        .map(text -> inPlayedOrder(bars, text, pickup))
        .orElseGet(() -> bars.numberedFrom(first));
  }

  /** Found bars under their printed numbers; every pinned bar has the number it is pinned by. */
  BarGrid numberPlayed(BarGrid bars, boolean pickup, TempoMap tempo) {
    if (request.pins().isEmpty() || request.playedOrder().isPresent()) {
      return number(bars, pickup);
    }
    List<TempoRequest.Pin> pins = PinOrder.of(request.pins());
    int next = 0;
    int index = PinnedBars.nearest(bars, tempo, pins.get(0)).index();
    List<Bar> numbered = new ArrayList<>();
    int number = pins.get(0).bar() - index;
    for (Bar bar : bars.bars()) {
      if (bar.index() == index) {
        number = pins.get(next).bar();
        next++;
        index = next < pins.size() ? PinnedBars.nearest(bars, tempo, pins.get(next)).index() : -1;
      }
      numbered.add(bar.numbered(number, 1));
      number++;
    }
    return new BarGrid(numbered);
  }

  private static BarGrid inPlayedOrder(BarGrid bars, String text, boolean pickup) {
    List<Integer> numbers = new ArrayList<>(parse(text).numbers());
    if (pickup && numbers.size() == bars.bars().size() - 1) {
      numbers.add(0, numbers.get(0) - 1);
    }
    if (numbers.size() != bars.bars().size()) {
      throw new InputException(
          Problem.at(
              "",
              "played-order",
              "it lists "
                  + count(numbers.size())
                  + ", but the music plays "
                  + count(bars.bars().size())
                  + (pickup ? ", including the pickup" : ""),
              "list every bar in the order played, or correct the meter or the repeats"));
    }
    TreeMap<Integer, Integer> times = new TreeMap<>();
    List<Bar> numbered = new ArrayList<>();
    for (Bar bar : bars.bars()) {
      int number = numbers.get(bar.index());
      numbered.add(bar.numbered(number, times.merge(number, 1, Integer::sum)));
    }
    return new BarGrid(numbered);
  }

  private static String count(int bars) {
    return bars == 1 ? "1 bar" : bars + " bars";
  }

  private static PlayedOrder parse(String text) {
    try {
      return PlayedOrder.parse(text);
    } catch (SyntaxException wrong) {
      throw new InputException(Problem.at("", "played-order", wrong));
    }
  }

  /** The bars with felt beats of the asked length, where one is asked. */
  BarGrid feel(BarGrid bars) {
    Optional<BigFraction> asked = request.feltBeat();
    if (asked.isEmpty()) {
      return bars;
    }
    BigFraction ticks = asked.get().multiply(score.ticksPerQuarter());
    boolean whole = ticks.getDenominator().equals(BigInteger.ONE);
    if (ticks.signum() <= 0 || !whole) {
      throw new InputException(
          Problem.at(
              "",
              "felt-beat",
              "a felt beat of " + asked.get() + " quarter notes cannot be counted in this file",
              "give a note value of the meter: 1/2 is an eighth note, 3/2 a dotted quarter"));
    }
    long beatTicks = ticks.longValue();
    return new BarGrid(bars.bars().stream().map(bar -> felt(bar, beatTicks)).toList());
  }

  private Bar felt(Bar bar, long beatTicks) {
    Bar counted = Bar.counted(bar.index(), bar.meter(), bar.startTick(), bar.endTick(), beatTicks);
    long full = bar.meter().ticks(score.ticksPerQuarter());
    int fullBeats = (int) ((full + beatTicks - 1) / beatTicks);
    return new Bar(
        bar.index(),
        bar.number(),
        bar.time(),
        bar.meter(),
        bar.startTick(),
        bar.endTick(),
        counted.beatTicks(),
        fullBeats);
  }
}
