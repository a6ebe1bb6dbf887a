package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Score;

/**
 * The written bars, all begun later by the same time: for music that was put into a file beside its
 * beats, so that hardly a note lies on them.
 */
final class LaterBars {

  /** Beats sound less than this share as often as beats of bars begun later. */
  private static final double BESIDE = 0.5;

  private static final double SILENT = Math.log(1 - 0.9);

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
  LaterBars(
      Score score, Playing playing, double[][] odds, double secondsPerTick, double nearSeconds) {
    this.score = score;
    this.strokes = playing.strokes();
    this.odds = odds;
    this.secondsPerTick = secondsPerTick;
    this.nearTicks = nearSeconds / secondsPerTick;
  }

  /** How well bars fit that begin later, and how many of their beats sound. */
  private record Fit(long later, double total, int sounding) {}

  /** The bars that fit best if they begin a number of pulses later; nothing if they need not. */
  Optional<BarGrid> find(SteadyPulse pulse) {
    Bar model = score.bars().bars().get(Math.min(1, score.bars().bars().size() - 1));
    double step = pulse.seconds() / secondsPerTick;
    double phase = pulse.phase() / secondsPerTick;
    double first = phase - Math.floor(phase / step) * step;
    Fit best = fit(0);
    int written = best.sounding;
    for (double later = first; later < model.lengthTicks(); later += step) {
      Fit fit = fit(Math.round(later));
      if (fit.total > best.total) {
        best = fit;
      }
    }
    return written < BESIDE * best.sounding ? Optional.of(begun(best.later)) : Optional.empty();
  }

  private Fit fit(long later) {
    double total = 0;
    int sounding = 0;
    int stroke = 0;
    for (Bar bar : score.bars().bars()) {
      for (int beat = 0; beat < bar.beatTicks().size(); beat++) {
        double tick = bar.beatTicks().get(beat) + later;
        while (stroke < strokes.size() && tickOf(stroke) < tick - nearTicks) {
          stroke++;
        }
        boolean sounds = stroke < strokes.size() && tickOf(stroke) <= tick + nearTicks;
        int place = beat == 0 ? MeterPattern.BAR : MeterPattern.BEAT;
        total += sounds ? odds[stroke][place] : SILENT;
        sounding += sounds ? 1 : 0;
      }
    }
    return new Fit(later, total, sounding);
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
