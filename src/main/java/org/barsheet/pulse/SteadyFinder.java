package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.pulse.PulseFinder.Pulse;
import org.barsheet.pulse.Slots.Strokes;
import org.barsheet.pulse.SteadyReadings.Ranked;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Meter;
import org.barsheet.score.Score;

/** Finds beats and bars in playing that keeps to a steady pulse. */
final class SteadyFinder {

  /** How far the beat may be from the bpm said. */
  private static final double NEAR_SAID = 0.15;

  private SteadyFinder() {}

  /** The likeliest reading as asked; nothing where the pulse wanders or nothing is as asked. */
  static Optional<Pulse> find(Score score, Playing playing, TempoRequest request) {
    return SteadyPulse.of(playing)
        .flatMap(pulse -> likeliest(SteadyReadings.of(strokes(playing, pulse), pulse, meters(request)), request))
        .map(ranked -> pulse(score, playing, ranked));
  }

  static Strokes strokes(Playing playing, SteadyPulse pulse) {
    double[] seconds = playing.strokes().stream().mapToDouble(Playing.Stroke::seconds).toArray();
    return new Strokes(seconds, PlaceOdds.of(playing), pulse.near());
  }

  static List<MeterPattern> meters(TempoRequest request) {
    Optional<Meter> asked = request.meter();
    List<MeterPattern> meters =
        MeterPattern.ALL.stream()
            .filter(one -> asked.isEmpty() || one.isLike(asked.get()))
            .toList();
    return meters.isEmpty() ? MeterPattern.ALL : meters;
  }

  private static Optional<Ranked> likeliest(List<Ranked> ranked, TempoRequest request) {
    return ranked.stream()
        .filter(
            one ->
                request
                    .beatsPerMinute()
                    .map(
                        bpm ->
                            Math.abs(Math.log(one.reading().beatLength() * bpm.doubleValue() / 60))
                                < NEAR_SAID)
                    .orElse(true))
        .findFirst();
  }

  static Pulse pulse(Score score, Playing playing, Ranked ranked) {
    BarGrid bars = SteadyBars.grid(score, playing, ranked.reading());
    List<Doubt> doubts = new ArrayList<>();
    int size = MusicFinder.usualSize(bars);
    return new Pulse(bars, size, ranked.reading().beatLength(), doubts);
  }
}
