package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.PulseFinder.Kept;
import org.barsheet.pulse.PulseFinder.Pulse;
import org.barsheet.pulse.evidence.MeterPattern;
import org.barsheet.pulse.evidence.PlaceOdds;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.steady.LaterBars;
import org.barsheet.pulse.steady.Slots.Strokes;
import org.barsheet.pulse.steady.SteadyPulse;
import org.barsheet.pulse.steady.SteadyReading;
import org.barsheet.pulse.steady.SteadyReadings.Ranked;
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

  /** Lengths that differ by less than this share are one. */
  private static final double NEAR = 0.02;

  private static final double NEARLY_ALL = 0.95;
  private static final double SAME_SECONDS = 0.02;

  /** With fewer different onsets the file is believed: a minute of music has more. */
  private static final int FEWEST_ONSETS = 100;

  /** What the written bars are ahead of found ones: nobody wrote them; a program did. */
  private static final double NOT_WRITTEN = 0.5;

  private static final double BY_PROGRAM = 2.1;

  /**
   * How much better, as a logarithm of odds, bars of another meter must fit than those of a file
   * without a time signature. Chosen on the scores {@link PlaceOdds} was fitted to: four quarters
   * to the bar fit at most 13.6 worse than others where they are right.
   */
  private static final double UNSIGNED = 14;

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
    return onsets < FEWEST_ONSETS ? Outcome.AS_WRITTEN : new WrittenCheck(score, request).outcome();
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
    boolean common = score.bars().bars().stream().allMatch(bar -> bar.meter().equals(Meter.COMMON));
    if (isUnsigned() || (pulse.isPresent() && tempoUnset && common)) {
      return heardAnew(pulse);
    }
    return pulse.map(this::later).orElse(Outcome.AS_WRITTEN);
  }

  /** Whether the file says nothing of meters: its bars of four quarters are the format's. */
  private boolean isUnsigned() {
    return score.meterEvents() == 0;
  }

  private Outcome heardAnew(Optional<SteadyPulse> steady) {
    double near = steady.map(SteadyPulse::near).orElse(SteadyPulse.MEANT_SECONDS);
    Strokes strokes = Strokes.of(playing, odds, near);
    SteadyFinder finder = new SteadyFinder(level, playing, request, score.tempo());
    Ranked written = written(strokes);
    List<Ranked> all = new ArrayList<>();
    steady.ifPresent(pulse -> all.addAll(finder.readings(strokes, pulse)));
    all.removeIf(one -> !isPossible(one) || isWritten(one.reading()));
    Optional<Ranked> other = otherMeter(finder, strokes, written);
    if (other.isPresent()) {
      all.add(other.get());
    } else if (finder.isAsSaid(written) && finder.agrees(score.bars())) {
      all.add(written);
    }
    all.sort(Comparator.comparingDouble(Ranked::preference).reversed());
    if (all.isEmpty()) {
      return Outcome.AS_WRITTEN;
    }
    Ranked best = all.get(0);
    if (!best.equals(written)) {
      List<Question> questions = finder.questions(best, all);
      boolean onWritten = other.filter(best::equals).isPresent();
      if (onWritten) {
        finder.addUnsigned(best.reading(), questions);
      }
      Pulse pulse = finder.pulse(best, questions);
      boolean moved = tempoUnset && !onWritten;
      return new Outcome(Optional.of(moved ? pulse : pulse.keepingWritten()), List.of());
    }
    List<Question> questions =
        isUnsigned() ? finder.questions(written, all) : finder.beatQuestions(written, all);
    return new Outcome(
        Optional.empty(), Question.nearest(questions, score.bars()).stream().toList());
  }

  /**
   * Bars of another meter on the written beats, where they fit better than the common time that a
   * file without a time signature stands in.
   */
  private Optional<Ranked> otherMeter(SteadyFinder finder, Strokes strokes, Ranked written) {
    if (!isUnsigned()) {
      return Optional.empty();
    }
    return finder
        .reading(strokes, quarter / 2, 0)
        .filter(one -> one.reading().total() - written.reading().total() > UNSIGNED)
        .map(one -> new Ranked(one.reading(), one.preference() + NOT_WRITTEN));
  }

  /** Where a tempo is written, a beat is a quarter note or a dotted one. */
  private boolean isPossible(Ranked ranked) {
    double beats = ranked.beatSeconds() / quarter;
    return tempoUnset || Math.abs(beats - 1) < NEAR || Math.abs(beats - 1.5) < NEAR;
  }

  private Ranked written(Strokes strokes) {
    MeterPattern common = MeterPattern.like(Meter.COMMON);
    SteadyReading reading = SteadyReading.given(strokes, quarter / 2, 0, common);
    double ahead = isUnsigned() ? NOT_WRITTEN : BY_PROGRAM;
    return new Ranked(reading, reading.preference(quarter) + ahead);
  }

  /** Whether nearly all bars of a reading are the written ones. */
  private boolean isWritten(SteadyReading reading) {
    double bar = 4 * quarter;
    long same =
        reading.bars().stream()
            .filter(found -> found.meter().meter().equals(Meter.COMMON))
            .mapToDouble(found -> reading.beats(found).get(0) / bar)
            .filter(start -> Math.abs(start - Math.rint(start)) * bar < SAME_SECONDS)
            .count();
    return Math.abs(reading.beatLength() - quarter) < NEAR * quarter
        && same > NEARLY_ALL * reading.bars().size();
  }

  private Outcome later(SteadyPulse pulse) {
    double secondsPerTick = quarter / score.ticksPerQuarter();
    LaterBars later = new LaterBars(score, playing, odds, secondsPerTick, pulse.near());
    return later
        .find(pulse)
        .filter(new SteadyFinder(score, playing, request, score.tempo())::agrees)
        .map(bars -> new Outcome(Optional.of(pulse(bars)), List.of()))
        .orElse(Outcome.AS_WRITTEN);
  }

  private Pulse pulse(BarGrid bars) {
    double beat = quarter * bars.last().meter().feltBeatQuarters().doubleValue();
    return new Pulse(bars, MusicFinder.usualSize(bars), beat, List.of(), Kept.WRITTEN);
  }
}
