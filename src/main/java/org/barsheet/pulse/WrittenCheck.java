package org.barsheet.pulse;

import java.util.List;
import java.util.Optional;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.PulseFinder.Pulse;
import org.barsheet.pulse.Slots.Strokes;
import org.barsheet.pulse.SteadyReadings.Ranked;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Meter;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;
import org.barsheet.score.TempoMap.Stretch;

/**
 * Judges the bars of a file whose notes keep to a grid by more than the grid. Files without a tempo
 * of their own, without a time signature, or with notes that all lie beside the beats are heard
 * anew; what somebody wrote down on purpose is followed.
 */
final class WrittenCheck {

  /** Quarter notes last this long where a file sets no tempo (Standard MIDI File 1.0). */
  private static final Seconds UNSET_QUARTER = Seconds.of(1, 2);

  /** What the written bars are ahead of found ones: nobody wrote them; a program did. */
  private static final double NOT_WRITTEN = 0.5;

  private static final double BY_PROGRAM = 1.5;

  private final Score score;
  private final TempoRequest request;
  private final boolean tempoUnset;
  private final Score level;
  private final Playing playing;
  private final double quarter;
  private final double[][] odds;

  /**
   * What is to be followed.
   *
   * @param other bars to follow instead of the written ones, if any
   * @param doubts what else the written bars might be where they are followed
   */
  record Outcome(Optional<Pulse> other, List<Doubt> doubts) {
    static final Outcome AS_WRITTEN = new Outcome(Optional.empty(), List.of());
  }

  private WrittenCheck(Score score, TempoRequest request) {
    this.score = score;
    this.request = request;
    this.tempoUnset =
        score.tempo().stretches().stream().map(Stretch::perQuarter).allMatch(UNSET_QUARTER::equals);
    this.level = tempoUnset ? score : levelled(score);
    this.playing = Playing.of(level);
    this.odds = PlaceOdds.of(playing);
    this.quarter = level.tempo().perQuarterAt(0).toDouble();
  }

  /** Judges a score whose notes keep to a grid. */
  static Outcome of(Score score, TempoRequest request) {
    long onsets = score.notes().stream().mapToLong(note -> note.onTick()).distinct().count();
    return onsets < GridConcentration.FEWEST_ONSETS
        ? Outcome.AS_WRITTEN
        : new WrittenCheck(score, request).outcome();
  }

  /** The same notes at one tempo throughout: what counts is where they lie among the beats. */
  private static Score levelled(Score score) {
    Seconds length = score.tempo().secondsAt(score.endTick()).minus(score.tempo().secondsAt(0));
    Seconds perQuarter =
        Seconds.of(
            Math.max(1, Math.round(length.toDouble() * 1e6 * score.ticksPerQuarter())),
            1_000_000 * Math.max(1, score.endTick()));
    List<TempoMap.Change> constant = List.of(new TempoMap.Change(0, perQuarter));
    return score.withTempo(TempoMap.of(score.ticksPerQuarter(), constant));
  }

  private Outcome outcome() {
    Optional<SteadyPulse> pulse = SteadyPulse.of(playing);
    if (pulse.isEmpty()) {
      return Outcome.AS_WRITTEN;
    }
    boolean common = score.bars().bars().stream().allMatch(bar -> bar.meter().equals(Meter.COMMON));
    boolean open = score.meterEvents() == 0 || (tempoUnset && common);
    return open ? heardAnew(pulse.get()) : later(pulse.get());
  }

  private Outcome heardAnew(SteadyPulse pulse) {
    List<Ranked> ranked =
        SteadyReadings.of(strokes(pulse), pulse, SteadyFinder.meters(request)).stream()
            .filter(this::isPossible)
            .toList();
    if (ranked.isEmpty()) {
      return Outcome.AS_WRITTEN;
    }
    Ranked written = written(pulse);
    return written.preference() >= ranked.get(0).preference() || isWritten(ranked.get(0).reading())
        ? new Outcome(Optional.empty(), List.of())
        : new Outcome(Optional.of(SteadyFinder.pulse(level, playing, ranked.get(0))), List.of());
  }

  /** Where a tempo is written, a beat is a quarter note or a dotted one. */
  private boolean isPossible(Ranked ranked) {
    double beats = ranked.reading().beatLength() / quarter;
    return tempoUnset || Math.abs(beats - 1) < 0.02 || Math.abs(beats - 1.5) < 0.02;
  }

  private Ranked written(SteadyPulse pulse) {
    MeterPattern common = MeterPattern.like(Meter.COMMON);
    SteadyReading reading = SteadyReading.given(strokes(pulse), quarter / 2, 0, common);
    double ahead = score.meterEvents() == 0 ? NOT_WRITTEN : BY_PROGRAM;
    return new Ranked(reading, reading.preference(quarter) + ahead);
  }

  private Strokes strokes(SteadyPulse pulse) {
    double[] seconds = playing.strokes().stream().mapToDouble(Playing.Stroke::seconds).toArray();
    return new Strokes(seconds, odds, pulse.near());
  }

  /** Whether nearly all bars of a reading are the written ones. */
  private boolean isWritten(SteadyReading reading) {
    double bar = 4 * quarter;
    long same =
        reading.bars().stream()
            .filter(found -> found.meter().meter().equals(Meter.COMMON))
            .mapToDouble(found -> reading.beats(found).get(0) / bar)
            .filter(start -> Math.abs(start - Math.rint(start)) * bar < 0.02)
            .count();
    return Math.abs(reading.beatLength() - quarter) < 0.02 * quarter
        && same > 0.95 * reading.bars().size();
  }

  private Outcome later(SteadyPulse pulse) {
    double secondsPerTick = quarter / score.ticksPerQuarter();
    LaterBars later = new LaterBars(score, playing, odds, secondsPerTick, pulse.near());
    return later
        .find(pulse)
        .map(bars -> new Outcome(Optional.of(pulse(bars)), List.of()))
        .orElse(Outcome.AS_WRITTEN);
  }

  private Pulse pulse(BarGrid bars) {
    double beat = quarter * bars.last().meter().feltBeatQuarters().doubleValue();
    return new Pulse(bars, MusicFinder.usualSize(bars), beat, List.of());
  }
}
