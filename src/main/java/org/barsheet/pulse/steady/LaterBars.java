package org.barsheet.pulse.steady;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.pulse.evidence.MeterPattern;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Score;

/**
 * The written bars, all begun later by the same time: for music that was put into a file beside its
 * beats, so that hardly a note lies on them.
 */
public final class LaterBars {

  /** Written beats that sound no more often than this are no beats. */
  private static final double SELDOM = 0.2;

  /** Bars on whose first beat something sounds less often than this begin elsewhere. */
  private static final double OFTEN = 0.5;

  private static final double SILENT = Math.log(0.5);

  private final Score score;
  private final List<Playing.Stroke> strokes;
  private final double[][] odds;
  private final double nearTicks;
  private final double secondsPerTick;

  /**
   * Looks at a score.
   *
   * @param playing of the score at one tempo throughout
   * @param odds of its strokes
   * @param nearSeconds how far from a beat a note may be that is meant there
   */
  public LaterBars(
      Score score, Playing playing, double[][] odds, double secondsPerTick, double nearSeconds) {
    this.score = score;
    this.strokes = playing.strokes();
    this.odds = odds;
    this.secondsPerTick = secondsPerTick;
    this.nearTicks = nearSeconds / secondsPerTick;
  }

  /**
   * How well bars fit that begin later.
   *
   * @param beats share of their beats on which something sounds
   * @param downbeats the same of their first beats
   */
  private record Fit(long later, double total, double beats, double downbeats) {}

  /** The bars that fit best if they begin a number of pulses later; nothing if they need not. */
  public Optional<BarGrid> find(SteadyPulse pulse) {
    Fit written = fit(0);
    if (written.beats > SELDOM || written.downbeats > SELDOM) {
      return Optional.empty();
    }
    Bar model = score.bars().bars().get(Math.min(1, score.bars().bars().size() - 1));
    double step = pulse.seconds() / secondsPerTick;
    double phase = pulse.phase() / secondsPerTick;
    double first = phase - Math.floor(phase / step) * step;
    Fit best = written;
    for (double later = first; later < model.lengthTicks(); later += step) {
      Fit fit = fit(Math.round(later));
      if (fit.total > best.total) {
        best = fit;
      }
    }
    return best.downbeats > OFTEN ? Optional.of(begun(best.later)) : Optional.empty();
  }

  private Fit fit(long later) {
    double total = 0;
    int beats = 0;
    int sounding = 0;
    int downbeats = 0;
    int stroke = 0;
    for (Bar bar : score.bars().bars()) {
      for (int beat = 0; beat < bar.beatTicks().size(); beat++) {
        long tick = bar.beatTicks().get(beat) + later;
        boolean last = beat + 1 == bar.beatTicks().size();
        long next = (last ? bar.endTick() : bar.beatTicks().get(beat + 1)) + later;
        boolean sounds = false;
        while (stroke < strokes.size() && tickOf(stroke) < next - nearTicks) {
          int place = place(tickOf(stroke), tick, next, beat, bar);
          total += odds[stroke][place];
          sounds |= place == MeterPattern.BAR || place == MeterPattern.BEAT;
          stroke++;
        }
        total += sounds ? 0 : SILENT;
        beats++;
        sounding += sounds ? 1 : 0;
        downbeats += sounds && beat == 0 ? 1 : 0;
      }
    }
    double bars = score.bars().bars().size();
    return new Fit(later, total, (double) sounding / beats, downbeats / bars);
  }

  private int place(double at, long tick, long next, int beat, Bar bar) {
    if (Math.abs(at - tick) <= nearTicks) {
      return beat == 0 ? MeterPattern.BAR : MeterPattern.BEAT;
    }
    int divisions = bar.meter().isCompound() ? 3 : 2;
    double part = (at - tick) / (next - tick) * divisions;
    double off = Math.abs(part - Math.rint(part)) / divisions * (next - tick);
    return off <= nearTicks ? MeterPattern.DIVISION : MeterPattern.OTHER;
  }

  private double tickOf(int stroke) {
    return strokes.get(stroke).seconds() / secondsPerTick;
  }

  private BarGrid begun(long later) {
    List<Bar> bars = new ArrayList<>();
    if (strokes.get(0).tick() + nearTicks < later) {
      Bar first = score.bars().first();
      List<Long> beats = new ArrayList<>(List.of(0L));
      first.beatTicks().stream()
          .map(tick -> tick + later - first.lengthTicks())
          .filter(tick -> tick > 0)
          .forEach(beats::add);
      bars.add(new Bar(0, 0, 1, first.meter(), 0, later, beats, first.fullBeats()));
    }
    for (Bar bar : score.bars().bars()) {
      List<Long> beats = bar.beatTicks().stream().map(tick -> tick + later).toList();
      long start = bar.startTick() + later;
      if (start < score.endTick() || bars.isEmpty()) {
        bars.add(
            new Bar(
                bars.size(),
                bar.number(),
                1,
                bar.meter(),
                start,
                bar.endTick() + later,
                beats,
                bar.fullBeats()));
      }
    }
    return new BarGrid(bars);
  }
}
