package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.FoundBeats.FoundBeat;
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

  /** How far from the usual beat length the later searches look. */
  private static final double WIDE = 2;

  /** The same where another level of the beat must not slip in. */
  private static final double NARROW = 1.4;

  private static final int FEWEST_BEATS = 4;

  /**
   * Beats that fit better than this on average are taken to be found rightly. Chosen on the files
   * it is told of, and tried on no others: of 14 played files 4 were found rightly, all above it,
   * and of the 10 others 9 were below.
   */
  private static final double CLEAR = 0.3;

  /** Beats a bar between pins that are this near a whole number are that many. */
  private static final double EVEN = 0.15;

  private static final int MOST_BEATS_IN_BAR = 7;

  /** And if their length is by so much nearer the usual one, as a logarithm. */
  private static final double BETTER = 0.15;

  /** Another beat that fits this much worse a beat, or less, is asked about. */
  private static final double CLOSE_LEVEL = 0.15;

  /** Another first beat that fits this much worse a bar, or less, is asked about. */
  private static final double CLOSE_PHASE = 0.5;

  private static final List<Integer> USUAL_SIZES = List.of(2, 3, 4, 5);

  private final Score score;
  private final TempoRequest request;
  private final Playing playing;
  private final double[] beatStrengths;
  private final double[] barStrengths;
  private final List<TempoRequest.Pin> pins;

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
    this.beatStrengths = StrokeStrength.ofBeats(playing);
    this.barStrengths = StrokeStrength.ofBars(playing);
    this.pins = PinOrder.of(request.pins());
    PinOrder.checkPlayable(pins, playing.endSeconds());
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
    FoundBeats alone = search(fit(lengths, division), 1);
    if (alone.beats().size() < FEWEST_BEATS) {
      return Optional.empty();
    }
    BeatDivision learnt = division.learntFrom(playing, beatStrengths, alone.seconds());
    BeatFit fit = fit(lengths.near(alone.medianLength(), WIDE), learnt);
    FoundBeats best = bestOf(fit, sizes(alone.medianLength()));
    List<FoundBeat> beats;
    if (pins.isEmpty()) {
      beats = withDownbeats(best);
    } else {
      Pinned pinned = onPins(fit, learnt, best);
      best = pinned.found;
      beats = pinned.beats;
    }
    int size = best.beatsInBar();
    BarGrid bars = PlayedBars.grid(score, playing, beats, pinTimes(), size, isDotted(beats));
    List<Doubt> doubts = alternatives(best, learnt, bars);
    double clearness = totalNear(best.medianLength(), learnt) / best.beats().size();
    Kept kept = clearness > CLEAR ? Kept.CLEAR_BEATS : Kept.NOTHING;
    return Optional.of(new Pulse(bars, size, best.medianLength(), doubts, kept));
  }

  private FoundBeats bestOf(BeatFit fit, List<Integer> sizes) {
    return sizes.parallelStream()
        .map(size -> search(fit, size))
        .max(Comparator.comparingDouble(FoundBeats::total))
        .orElseThrow();
  }

  /** What else the playing may mean; pins have settled it. */
  private List<Doubt> alternatives(FoundBeats found, BeatDivision division, BarGrid bars) {
    if (!pins.isEmpty()) {
      return List.of();
    }
    List<Question> questions = new ArrayList<>();
    double length = found.medianLength();
    if (request.beatsPerMinute().isEmpty()) {
      double total = totalNear(length, division);
      for (double other : new double[] {length * 2, length / 2}) {
        if (other < BeatLengths.LONGEST_SECONDS && other > BeatLengths.seconds(0)) {
          double margin = (total - totalNear(other, division)) / found.beats().size();
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
        questions.add(Question.bar(margin / CLOSE_PHASE, start, other));
      }
    }
  }

  private double totalNear(double beatSeconds, BeatDivision division) {
    BeatLengths lengths = BeatLengths.usual().near(beatSeconds, NARROW);
    return search(fit(lengths, division), 1).total();
  }

  private FoundBeats search(BeatFit fit, int beatsInBar) {
    int first = BeatFit.frame(playing.strokes().get(0).seconds());
    int last = BeatFit.frame(playing.endSeconds());
    List<Integer> pinned =
        pinTimes().stream()
            .map(pin -> BeatFit.frame(pin.toDouble()))
            .filter(frame -> frame < fit.frames())
            .toList();
    return new BarSearch(fit, beatsInBar, first, last, pinned).search();
  }

  private BeatLengths lengths() {
    return request
        .beatsPerMinute()
        .map(bpm -> BeatLengths.around(60 / bpm.doubleValue()))
        .orElseGet(BeatLengths::usual);
  }

  private BeatFit fit(BeatLengths lengths, BeatDivision division) {
    return new BeatFit(playing, beatStrengths, barStrengths, lengths, division);
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
    TempoRequest.Pin first = pins.get(0);
    TempoRequest.Pin last = pins.get(pins.size() - 1);
    double bar = last.at().minus(first.at()).toDouble() / (last.bar() - first.bar());
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

  /** Beats that begin bars at pins, and the search they come from. */
  private record Pinned(FoundBeats found, List<FoundBeat> beats, double preference) {}

  /** The beats on pins with as many to a bar as the playing makes likeliest. */
  private Pinned onPins(BeatFit fit, BeatDivision division, FoundBeats usual) {
    Optional<BarGrid> open =
        new PulseFinder(score, request.withPins(List.of())).findWandering().map(Pulse::bars);
    if (pins.size() < 2 || request.meter().isPresent()) {
      return new Pinned(usual, onPins(open, usual, division, usual.beatsInBar()), 0);
    }
    double[][] odds = PlaceOdds.of(playing);
    return USUAL_SIZES.stream()
        .filter(size -> isPlayable(barSeconds() / size))
        .map(size -> pinned(open, search(fit, size), division, odds))
        .max(Comparator.comparingDouble(Pinned::preference))
        .orElseGet(() -> new Pinned(usual, onPins(open, usual, division, usual.beatsInBar()), 0));
  }

  private static boolean isPlayable(double beatSeconds) {
    return beatSeconds > BeatLengths.seconds(0) && beatSeconds < BeatLengths.LONGEST_SECONDS;
  }

  /** How long a bar lasts on average between the first pin and the last. */
  private double barSeconds() {
    TempoRequest.Pin first = pins.get(0);
    TempoRequest.Pin last = pins.get(pins.size() - 1);
    return last.at().minus(first.at()).toDouble() / (last.bar() - first.bar());
  }

  private Pinned pinned(
      Optional<BarGrid> open, FoundBeats found, BeatDivision division, double[][] odds) {
    int size = found.beatsInBar();
    List<FoundBeat> beats = onPins(open, found, division, size);
    double length = new FoundBeats(beats, size, 0).medianLength();
    Slots.Strokes strokes =
        WarpedStrokes.of(playing, odds, beats.stream().map(FoundBeat::seconds).toList(), length);
    double preference =
        Math.max(preference(strokes, length, size, 2), preference(strokes, length, size, 3));
    return new Pinned(found, beats, preference);
  }

  private static double preference(Slots.Strokes strokes, double length, int size, int divisions) {
    List<MeterPattern> meters =
        MeterPattern.ALL.stream()
            .filter(one -> one.beats().size() == size && one.beats().get(0) == divisions)
            .toList();
    return meters.isEmpty()
        ? Double.NEGATIVE_INFINITY
        : SteadyReading.of(strokes, length / divisions, 0, meters).preference(length);
  }

  /**
   * Beats between pins: those found without pins where they agree with both, else those of a search
   * for the number of bars that the pins say.
   */
  private List<FoundBeat> onPins(
      Optional<BarGrid> open, FoundBeats found, BeatDivision division, int size) {
    List<FoundBeat> beats = new ArrayList<>(found.beats());
    for (int i = 1; i < pins.size(); i++) {
      TempoRequest.Pin first = pins.get(i - 1);
      TempoRequest.Pin last = pins.get(i);
      int from = BeatFit.frame(first.at().toDouble());
      int to = BeatFit.frame(last.at().toDouble());
      int own = size(beats, from, to, last.bar() - first.bar(), size, found.medianLength());
      beats.removeIf(beat -> isBetween(beat, from, to));
      beats.addAll(
          open.filter(bars -> PinnedBars.agree(bars, score.tempo(), List.of(first, last)))
              .map(bars -> between(bars, first, last))
              .orElseGet(() -> counted(division, from, to, last.bar() - first.bar(), own)));
    }
    beats.sort(Comparator.comparingDouble(FoundBeat::seconds));
    return beats;
  }

  /** Beats of most bars between pins: as many as were found, where that comes out even. */
  private int size(
      List<FoundBeat> beats, int from, int to, int bars, int usual, double beatSeconds) {
    double size = (double) beats.stream().filter(beat -> isBetween(beat, from, to)).count() / bars;
    boolean even = Math.abs(size - Math.rint(size)) < EVEN;
    boolean possible = size > 1.5 && size < MOST_BEATS_IN_BAR + EVEN;
    if (request.meter().isPresent() || !even || !possible) {
      return usual;
    }
    double barBeats = BeatFit.seconds(to - from) / bars / beatSeconds;
    double better = Math.abs(Math.log(barBeats / usual)) - Math.abs(Math.log(barBeats / size));
    return better > BETTER ? (int) Math.rint(size) : usual;
  }

  private List<FoundBeat> between(BarGrid bars, TempoRequest.Pin first, TempoRequest.Pin last) {
    int from = PinnedBars.nearest(bars, score.tempo(), first).index();
    int to = PinnedBars.nearest(bars, score.tempo(), last).index();
    List<FoundBeat> beats = new ArrayList<>();
    for (Bar bar : bars.bars().subList(from, to)) {
      for (int place = 0; place < bar.beatTicks().size(); place++) {
        double seconds = score.tempo().secondsAt(bar.beatTicks().get(place)).toDouble();
        beats.add(new FoundBeat(seconds, place));
      }
    }
    beats.set(0, new FoundBeat(first.at().toDouble(), 0));
    return beats;
  }

  private List<FoundBeat> counted(BeatDivision division, int from, int to, int bars, int size) {
    double mean = BeatFit.seconds(to - from) / (bars * size);
    BeatFit fit = fit(BeatLengths.around(mean).near(mean, WIDE), division);
    return new CountedSearch(fit, from, to, bars, size).search();
  }

  private static boolean isBetween(FoundBeat beat, int from, int to) {
    int frame = BeatFit.frame(beat.seconds());
    return frame >= from && frame < to;
  }
}
