package org.barsheet.pulse.steady;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.pulse.evidence.MeterPattern;
import org.barsheet.pulse.evidence.PlaceOdds;
import org.barsheet.pulse.steady.MeterSearch.Found;
import org.barsheet.pulse.steady.MeterSearch.FoundBar;
import org.barsheet.pulse.steady.Slots.Strokes;

/**
 * One way to hear beats and bars on a steady pulse: a length of the slots that divide beats, and
 * the bars that fit best on them.
 */
public final class SteadyReading {

  private static final double USUAL_SECONDS = 0.6;
  private static final double USUAL_SPREAD = 0.5;
  private static final double LEAST_FIT = -3;

  /** Chosen on the scores that {@link PlaceOdds} was fitted to, heard without their tempo. */
  private static final double[] WEIGHTS = {
    0.646, 0.376, -0.387, 2.79, 1.364, -0.191, -0.952, -21.84, 0.774, -0.994
  };

  private final Strokes strokes;
  private final Slots slots;
  private final List<FoundBar> bars;
  private final double total;

  private SteadyReading(Strokes strokes, Slots slots, Found found) {
    this.strokes = strokes;
    this.slots = slots;
    this.bars = found.bars();
    this.total = found.total();
  }

  /** The best bars on a grid of slots. */
  public static SteadyReading of(
      Strokes strokes, double step, double phase, List<MeterPattern> meters) {
    Slots slots = new Slots(strokes, step, phase);
    return new SteadyReading(strokes, slots, new MeterSearch(slots, meters).search());
  }

  /** Bars that are given, on a grid of slots; the first slot of all lies at 0. */
  public static SteadyReading given(
      Strokes strokes, double step, double phase, MeterPattern meter) {
    Slots slots = new Slots(strokes, step, phase);
    int first = slots.slotAtOrBefore(phase, meter.length());
    List<FoundBar> bars = new ArrayList<>();
    for (int slot = first; slot < slots.count(); slot += meter.length()) {
      bars.add(new FoundBar(slot, meter));
    }
    return of(strokes, slots, bars);
  }

  private static SteadyReading of(Strokes strokes, Slots slots, List<FoundBar> bars) {
    double total = slots.beside();
    for (FoundBar bar : bars) {
      int[] places = bar.meter().places();
      for (int i = 0; i < places.length; i++) {
        total += slots.fit(bar.slot() + i, places[i]);
      }
    }
    return new SteadyReading(strokes, slots, new Found(bars, total));
  }

  /** The same bars begun so many beats later, the first one filled up before. */
  public SteadyReading later(int beats) {
    List<FoundBar> later = new ArrayList<>();
    for (FoundBar bar : bars) {
      later.add(new FoundBar(bar.slot() + beats * bar.meter().beats().get(0), bar.meter()));
    }
    MeterPattern first = bars.get(0).meter();
    while (later.get(0).slot() > 0) {
      later.add(0, new FoundBar(later.get(0).slot() - first.length(), first));
    }
    return of(strokes, slots, later);
  }

  /** Whether its notes lie on the pulse to the tick, as nobody plays. */
  boolean isExact() {
    return strokes.near() <= SteadyPulse.MEANT_SECONDS;
  }

  /** How well it fits, comparable between readings on the same slots. */
  public double total() {
    return total;
  }

  /** The same slots in bars of other meters. */
  public SteadyReading in(List<MeterPattern> meters) {
    return new SteadyReading(strokes, slots, new MeterSearch(slots, meters).search());
  }

  /** The bars, in order. */
  public List<FoundBar> bars() {
    return bars;
  }

  /** Where each beat of a bar lies that its meter counts, in the unit of the strokes' positions. */
  public List<Double> beats(FoundBar bar) {
    return bar.meter().countedBeats().stream()
        .map(slot -> slots.position(bar.slot() + slot))
        .toList();
  }

  /** Where a bar ends. */
  double end(FoundBar bar) {
    return slots.position(bar.slot() + bar.meter().length());
  }

  /** The length of most beats. */
  public double beatLength() {
    List<Double> lengths = new ArrayList<>();
    for (FoundBar bar : bars) {
      bar.meter()
          .beats()
          .forEach(beat -> lengths.add(beat * (slots.position(1) - slots.position(0))));
    }
    lengths.sort(null);
    return lengths.get(lengths.size() / 2);
  }

  /** The commonest meter. */
  public MeterPattern meter() {
    MeterPattern most = bars.get(0).meter();
    for (FoundBar bar : bars) {
      if (count(bar.meter()) > count(most)) {
        most = bar.meter();
      }
    }
    return most;
  }

  private long count(MeterPattern meter) {
    return bars.stream().filter(bar -> bar.meter().equals(meter)).count();
  }

  /**
   * How much this reading is to be preferred, comparable between readings of one playing: the
   * logarithm of odds.
   */
  public double preference(double beatSeconds) {
    double[] told = told(beatSeconds);
    double sum = 0;
    for (int i = 0; i < told.length; i++) {
      sum += WEIGHTS[i] * told[i];
    }
    return sum;
  }

  /** What tells of this reading, in the order of the weights. */
  double[] told(double beatSeconds) {
    double fit = total / strokes.seconds().length;
    double tempo = Math.log(beatSeconds / USUAL_SECONDS) / USUAL_SPREAD;
    int all = 0;
    int compound = 0;
    int uneven = 0;
    int changes = 0;
    int[] places = new int[2];
    int[] sounding = new int[2];
    for (int i = 0; i < bars.size(); i++) {
      FoundBar bar = bars.get(i);
      all += bar.meter().length();
      compound += bar.meter().isCompound() ? bar.meter().length() : 0;
      uneven += bar.meter().isUneven() ? bar.meter().length() : 0;
      changes += i > 0 && !bar.meter().equals(bars.get(i - 1).meter()) ? 1 : 0;
      int[] kinds = bar.meter().places();
      for (int slot = 0; slot < kinds.length; slot++) {
        int at = bar.slot() + slot;
        if (at >= 0 && at < slots.count()) {
          int kind = kinds[slot] == MeterPattern.DIVISION ? 1 : 0;
          places[kind]++;
          sounding[kind] += slots.isSounding(at) ? 1 : 0;
        }
      }
    }
    return new double[] {
      fit,
      -tempo * tempo / 2,
      1 - (double) slots.strokesOn() / strokes.seconds().length,
      (double) sounding[0] / Math.max(1, places[0]),
      (double) sounding[1] / Math.max(1, places[1]),
      (double) compound / all,
      (double) uneven / all,
      (double) changes / bars.size(),
      Math.max(LEAST_FIT, Math.min(0, fit)),
      tempo
    };
  }
}
