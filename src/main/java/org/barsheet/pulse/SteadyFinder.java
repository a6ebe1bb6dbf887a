package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.barsheet.pulse.PulseFinder.Kept;
import org.barsheet.pulse.PulseFinder.Pulse;
import org.barsheet.pulse.evidence.MeterPattern;
import org.barsheet.pulse.evidence.PlaceOdds;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.steady.Slots.Strokes;
import org.barsheet.pulse.steady.SteadyBars;
import org.barsheet.pulse.steady.SteadyPulse;
import org.barsheet.pulse.steady.SteadyReading;
import org.barsheet.pulse.steady.SteadyReadings;
import org.barsheet.pulse.steady.SteadyReadings.Ranked;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Meter;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/** Finds beats and bars in music that keeps to a steady pulse, and what else they might be. */
final class SteadyFinder {

  /** How far the beat may be from the bpm said, as a logarithm. */
  private static final double NEAR_SAID = 0.15;

  /** Beats that differ less are one beat. */
  private static final double SAME_BEAT = 0.1;

  /**
   * Margins below which a person is asked: of preference; and of fit, a bar, for bars begun on
   * another beat, of another number of beats, or of half or twice as many. Chosen on the scores
   * {@link PlaceOdds} was fitted to: of those read wrongly 9 in 10 are asked about.
   */
  private static final double NEAR_BEAT = 1;

  private static final double NEAR_BAR = 0.4;
  private static final double NEAR_SIZE = 0.3;
  private static final double NEAR_HALF = 0.15;

  /** The same, a division, for meters that notes seldom tell apart. Chosen on invented pieces. */
  private static final double NEAR_TWIN = 0.2;

  private final Score score;
  private final Playing playing;
  private final TempoRequest request;
  private final TempoMap pinned;
  private final List<TempoRequest.Pin> pins;

  /**
   * A finder.
   *
   * @param score as heard
   * @param pinned its true time, which pins are in
   */
  SteadyFinder(Score score, Playing playing, TempoRequest request, TempoMap pinned) {
    this.pinned = pinned;
    this.score = score;
    this.playing = playing;
    this.request = request;
    this.pins = PinOrder.of(request.pins());
  }

  /** The likeliest reading as asked; nothing where the pulse wanders or nothing is as asked. */
  Optional<Pulse> find() {
    Optional<SteadyPulse> pulse = SteadyPulse.of(playing);
    if (pulse.isEmpty()) {
      return Optional.empty();
    }
    Strokes strokes = Strokes.of(playing, PlaceOdds.of(playing), pulse.get().near());
    List<Ranked> ranked = readings(strokes, pulse.get());
    return ranked.isEmpty()
        ? Optional.empty()
        : Optional.of(pulse(ranked.get(0), questions(ranked.get(0), ranked)));
  }

  /** The readings that are as asked, the likeliest first. */
  List<Ranked> readings(Strokes strokes, SteadyPulse pulse) {
    return SteadyReadings.of(strokes, pulse, meters()).stream()
        .filter(this::isAsSaid)
        .filter(one -> agrees(bars(one)))
        .toList();
  }

  /** The likeliest bars on a grid of slots, if they are as asked. */
  Optional<Ranked> reading(Strokes strokes, double step, double phase) {
    SteadyReading reading = SteadyReading.of(strokes, step, phase, meters());
    return Optional.of(new Ranked(reading, reading.preference(reading.beatLength())))
        .filter(this::isAsSaid)
        .filter(one -> agrees(bars(one)));
  }

  private List<MeterPattern> meters() {
    return request.meter().map(SteadyFinder::like).orElse(MeterPattern.ALL);
  }

  private static List<MeterPattern> like(Meter asked) {
    List<MeterPattern> like = MeterPattern.ALL.stream().filter(one -> one.isLike(asked)).toList();
    return like.isEmpty() ? List.of(MeterPattern.like(asked)) : like;
  }

  /** Whether bars begin where they are pinned. */
  boolean agrees(BarGrid bars) {
    return PinnedBars.agree(bars, pinned, pins);
  }

  private BarGrid bars(Ranked ranked) {
    return SteadyBars.grid(score, playing, ranked.reading());
  }

  /** Whether the beat of a reading is about as long as was said. */
  boolean isAsSaid(Ranked ranked) {
    return request.beatsPerMinute().isEmpty()
        || Math.abs(
                Math.log(ranked.beatSeconds() * request.beatsPerMinute().get().doubleValue() / 60))
            < NEAR_SAID;
  }

  /** A reading as bars, with the nearest of the questions about it. */
  Pulse pulse(Ranked best, List<Question> questions) {
    BarGrid found = bars(best);
    BarGrid bars = pins.isEmpty() ? found : PinnedBars.onPins(found, pinned, pins);
    List<Doubt> doubts = Question.nearest(questions, bars).stream().toList();
    int size = MusicFinder.usualSize(bars);
    return new Pulse(bars, size, best.beatSeconds(), doubts, Kept.PULSE);
  }

  /** What else a reading might be. */
  List<Question> questions(Ranked best, List<Ranked> all) {
    List<Question> questions = new ArrayList<>(beatQuestions(best, all));
    if (pins.isEmpty()) {
      addPhases(best.reading(), questions);
    }
    if (request.meter().isEmpty() && pins.size() < 2) {
      addSizes(best.reading(), questions);
    }
    return questions;
  }

  /** Which other beats may be heard. */
  List<Question> beatQuestions(Ranked best, List<Ranked> all) {
    List<Question> questions = new ArrayList<>();
    for (Ranked other : all) {
      double away = Math.abs(Math.log(best.beatSeconds() / other.beatSeconds()));
      if (request.beatsPerMinute().isEmpty() && away > SAME_BEAT) {
        double margin = (best.preference() - other.preference()) / NEAR_BEAT;
        questions.add(Question.beat(margin, best.beatSeconds(), other.beatSeconds()));
      }
    }
    return questions;
  }

  private void addPhases(SteadyReading best, List<Question> questions) {
    int size = best.meter().beats().size();
    for (int beats = 1; beats < size; beats++) {
      SteadyReading later = best.later(beats);
      double margin = (best.total() - later.total()) / best.bars().size() / NEAR_BAR;
      questions.add(Question.bar(margin, request.firstBar(), firstBar(best), firstBar(later)));
    }
  }

  /** When the first bar begins that begins in the file. */
  private static double firstBar(SteadyReading reading) {
    return reading.bars().stream()
        .mapToDouble(bar -> reading.beats(bar).get(0))
        .filter(start -> start > -SteadyPulse.MEANT_SECONDS)
        .findFirst()
        .orElse(0);
  }

  private static void addSizes(SteadyReading best, List<Question> questions) {
    MeterPattern meter = best.meter();
    addSize(best, meter::isHalfOrTwice, NEAR_HALF, questions);
    addSize(
        best,
        other -> !other.meter().equals(meter.meter()) && !meter.isHalfOrTwice(other),
        NEAR_SIZE,
        questions);
  }

  /** Asks what notes alone seldom tell: whether beats are dotted, and fives single or double. */
  void addUnsigned(SteadyReading best, List<Question> questions) {
    if (request.meter().isEmpty()) {
      MeterPattern meter = best.meter();
      addSize(best, meter::isTwin, NEAR_TWIN * meter.length(), questions);
    }
  }

  private static void addSize(
      SteadyReading best, Predicate<MeterPattern> like, double near, List<Question> questions) {
    List<MeterPattern> meters = MeterPattern.ALL.stream().filter(like).toList();
    if (!meters.isEmpty()) {
      SteadyReading other = best.in(meters);
      double margin = (best.total() - other.total()) / best.bars().size() / near;
      questions.add(Question.size(margin, best.meter(), other.meter()));
    }
  }
}
