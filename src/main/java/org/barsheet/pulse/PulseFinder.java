package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.evidence.GridConcentration;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.free.BeatDivision;
import org.barsheet.pulse.free.BeatFit;
import org.barsheet.pulse.free.BeatLengths;
import org.barsheet.pulse.free.BeatSearch;
import org.barsheet.pulse.free.DownbeatSearch;
import org.barsheet.pulse.free.FoundBeats;
import org.barsheet.pulse.free.FoundBeats.FoundBeat;
import org.barsheet.pulse.free.PlayedBars;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Meter;
import org.barsheet.score.Score;

/**
 * Finds beats and bars in playing. First beats alone, to learn how the playing divides them; then
 * beats and bars together for each bar size, of which the best fitting is kept; then bars among
 * those beats once more, where the meter may change.
 */
final class PulseFinder {

  /** Longest playing that is searched, in seconds. */
  private static final double LONGEST_SECONDS = 30 * 60.0;

  private static final int FEWEST_BEATS = 4;

  /**
   * Beats that fit better than this on average are taken to be found rightly. Chosen on the files
   * it is told of, and tried on no others: of 14 played files 4 were found rightly, all above it,
   * and of the 10 others 9 were below.
   */
  private static final double CLEAR = 0.3;

  /** Another beat that fits this much worse a beat, or less, is asked about. */
  private static final double CLOSE_LEVEL = 0.15;

  /** Another first beat that fits this much worse a bar, or less, is asked about. */
  private static final double CLOSE_PHASE = 0.5;

  static final List<Integer> USUAL_SIZES = List.of(2, 3, 4, 5);

  private final Score score;
  private final TempoRequest request;
  private final Playing playing;
  private final List<TempoRequest.Pin> pins;
  private final BeatSearch search;

  /**
   * What was found.
   *
   * @param bars the bars, a pickup numbered 0
   * @param size felt beats of most bars
   * @param beatSeconds the middle of all beat lengths in order of size
   * @param doubts what else the playing might mean
   * @param kept what the playing keeps to
   */
  record Pulse(BarGrid bars, int size, double beatSeconds, List<Doubt> doubts, Kept kept) {

    /** The same where the written beats are kept and only the bars are others. */
    Pulse keepingWritten() {
      return new Pulse(bars, size, beatSeconds, doubts, Kept.WRITTEN);
    }
  }

  /** What playing keeps to. */
  enum Kept {
    /** Its beat wanders. */
    NOTHING,
    /** Its beat wanders, and the notes tell it clearly. */
    CLEAR_BEATS,
    /** A steady pulse of its own. */
    PULSE,
    /** The written beats, or their distance. */
    WRITTEN
  }

  private PulseFinder(Score score, TempoRequest request) {
    this.score = score;
    this.request = request;
    this.playing = Playing.of(score);
    this.pins = PinOrder.of(request.pins());
    PinOrder.checkPlayable(pins, playing.endSeconds());
    this.search = new BeatSearch(playing, pinTimes());
  }

  /** Finds the pulse; nothing where there are too few notes to hear one, or hours of them. */
  static Optional<Pulse> find(Score score, TempoRequest request) {
    long onsets = score.notes().stream().mapToLong(note -> note.onTick()).distinct().count();
    double end = score.tempo().secondsAt(score.endTick()).toDouble();
    if (onsets < GridConcentration.FEWEST_ONSETS || end > LONGEST_SECONDS) {
      return Optional.empty();
    }
    return new PulseFinder(score, request).find();
  }

  private Optional<Pulse> find() {
    return new SteadyFinder(score, playing, request, score.tempo()).find().or(this::findWandering);
  }

  private Optional<Pulse> findWandering() {
    BeatDivision division = division();
    BeatLengths lengths = lengths();
    FoundBeats alone = search.of(search.fit(lengths, division), 1);
    if (alone.beats().size() < FEWEST_BEATS) {
      return Optional.empty();
    }
    BeatDivision learnt = search.learnt(division, alone);
    BeatFit fit = search.fit(lengths.near(alone.medianLength(), BeatSearch.WIDE), learnt);
    FoundBeats best = bestOf(fit, sizes(alone.medianLength()));
    List<FoundBeat> beats = pins.isEmpty() ? withDownbeats(best) : best.beats();
    if (pins.size() > 1) {
      PinnedBeats.Pinned pinned = onPins(fit, learnt, best);
      best = pinned.found();
      beats = pinned.beats();
    }
    int size = best.beatsInBar();
    BarGrid bars = PlayedBars.grid(score, playing, beats, pinTimes(), size, isDotted(beats));
    double total = search.totalNear(best.medianLength(), learnt);
    List<Doubt> doubts = alternatives(best, total, learnt, bars);
    Kept kept = total / best.beats().size() > CLEAR ? Kept.CLEAR_BEATS : Kept.NOTHING;
    return Optional.of(new Pulse(bars, size, best.medianLength(), doubts, kept));
  }

  private PinnedBeats.Pinned onPins(BeatFit fit, BeatDivision division, FoundBeats usual) {
    Optional<BarGrid> open =
        new PulseFinder(score, request.withPins(List.of())).findWandering().map(Pulse::bars);
    return new PinnedBeats(score, request, playing, search, division, open).of(fit, usual);
  }

  private FoundBeats bestOf(BeatFit fit, List<Integer> sizes) {
    return sizes.parallelStream()
        .map(size -> search.of(fit, size))
        .max(Comparator.comparingDouble(FoundBeats::total))
        .orElseThrow();
  }

  /** What else the playing may mean; pins have settled it. */
  private List<Doubt> alternatives(
      FoundBeats found, double total, BeatDivision division, BarGrid bars) {
    if (!pins.isEmpty()) {
      return List.of();
    }
    List<Question> questions = new ArrayList<>();
    double length = found.medianLength();
    if (request.beatsPerMinute().isEmpty()) {
      for (double other : new double[] {length * 2, length / 2}) {
        if (other < BeatLengths.LONGEST_SECONDS && other > BeatLengths.seconds(0)) {
          double margin = (total - search.totalNear(other, division)) / found.beats().size();
          questions.add(Question.beat(margin / CLOSE_LEVEL, length, other));
        }
      }
    }
    addPhases(found, bars, questions);
    return Question.nearest(questions, bars).stream().toList();
  }

  private void addPhases(FoundBeats found, BarGrid bars, List<Question> questions) {
    int size = found.beatsInBar();
    double[] totals =
        new DownbeatSearch(playing, found.seconds(), List.of(size)).steadyTotals(size);
    int best = 0;
    for (int phase = 1; phase < size; phase++) {
      best = totals[phase] > totals[best] ? phase : best;
    }
    Bar first =
        bars.bars().get(Math.min(bars.first().number() == 0 ? 1 : 0, bars.bars().size() - 1));
    double start = score.tempo().secondsAt(first.startTick()).toDouble();
    for (int phase = 0; phase < size; phase++) {
      int later = Math.floorMod(best - phase, size);
      if (later > 0 && later < first.beatTicks().size()) {
        double margin = (totals[best] - totals[phase]) / bars.bars().size();
        double other = score.tempo().secondsAt(first.beatTicks().get(later)).toDouble();
        questions.add(Question.bar(margin / CLOSE_PHASE, request.firstBar(), start, other));
      }
    }
  }

  private BeatLengths lengths() {
    return request
        .beatsPerMinute()
        .map(bpm -> BeatLengths.around(60 / bpm.doubleValue()))
        .orElseGet(BeatLengths::usual);
  }

  private List<Seconds> pinTimes() {
    return pins.stream().map(TempoRequest.Pin::at).toList();
  }

  private BeatDivision division() {
    return request
        .meter()
        .map(meter -> meter.isCompound() ? BeatDivision.triple() : BeatDivision.duple())
        .orElseGet(BeatDivision::open);
  }

  /** As the meter asked for says, else as the playing divides its beats. */
  private boolean isDotted(List<FoundBeat> beats) {
    List<Double> seconds = beats.stream().map(FoundBeat::seconds).toList();
    return request
        .meter()
        .map(Meter::isCompound)
        .orElseGet(() -> BeatDivision.isIntoThree(playing, seconds));
  }

  /** Bar sizes to try: the meter's, or the one that the pins make likeliest, or all usual ones. */
  private List<Integer> sizes(double beatSeconds) {
    if (request.meter().isPresent()) {
      return List.of(request.meter().get().feltBeats());
    }
    if (pins.size() < 2) {
      return USUAL_SIZES;
    }
    double bar = PinOrder.barSeconds(pins.get(0), pins.get(pins.size() - 1));
    return USUAL_SIZES.stream()
        .min(Comparator.comparingDouble(size -> Math.abs(Math.log(bar / size / beatSeconds))))
        .map(List::of)
        .orElse(USUAL_SIZES);
  }

  private List<FoundBeat> withDownbeats(FoundBeats found) {
    List<Double> seconds = found.seconds();
    List<Integer> places =
        new DownbeatSearch(playing, seconds, sizes(found.medianLength())).search().places();
    return IntStream.range(0, places.size())
        .mapToObj(i -> new FoundBeat(seconds.get(i), places.get(i)))
        .toList();
  }
}
