package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.barsheet.pulse.evidence.MeterPattern;
import org.barsheet.pulse.evidence.PlaceOdds;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.free.BeatDivision;
import org.barsheet.pulse.free.BeatFit;
import org.barsheet.pulse.free.BeatLengths;
import org.barsheet.pulse.free.BeatSearch;
import org.barsheet.pulse.free.CountedSearch;
import org.barsheet.pulse.free.FoundBeats;
import org.barsheet.pulse.free.FoundBeats.FoundBeat;
import org.barsheet.pulse.steady.Slots;
import org.barsheet.pulse.steady.SteadyReading;
import org.barsheet.pulse.steady.WarpedStrokes;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Score;

/** Finds beats in playing of which two bars or more are pinned. */
final class PinnedBeats {

  /** Beats a bar between pins that are this near a whole number are that many. */
  private static final double EVEN = 0.15;

  private static final int MOST_BEATS_IN_BAR = 7;

  /** And if their length is by so much nearer the usual one, as a logarithm. */
  private static final double BETTER = 0.15;

  private final Score score;
  private final TempoRequest request;
  private final Playing playing;
  private final BeatSearch search;
  private final BeatDivision division;
  private final Optional<BarGrid> open;
  private final List<TempoRequest.Pin> pins;

  /**
   * A finder.
   *
   * @param open the bars that are found without pins, if any
   */
  PinnedBeats(
      Score score,
      TempoRequest request,
      Playing playing,
      BeatSearch search,
      BeatDivision division,
      Optional<BarGrid> open) {
    this.score = score;
    this.request = request;
    this.playing = playing;
    this.search = search;
    this.division = division;
    this.open = open;
    this.pins = PinOrder.of(request.pins());
  }

  /** Beats that begin bars at pins, and the search they come from. */
  record Pinned(FoundBeats found, List<FoundBeat> beats, double preference) {}

  /**
   * The beats on pins with as many to a bar as the playing makes likeliest.
   *
   * @param usual what a search found that knows no more of the pins than their times
   */
  Pinned of(BeatFit fit, FoundBeats usual) {
    Pinned given = new Pinned(usual, onPins(usual, usual.beatsInBar()), 0);
    if (request.meter().isPresent()) {
      return given;
    }
    double[][] odds = PlaceOdds.of(playing);
    double bar = PinOrder.barSeconds(pins.get(0), pins.get(pins.size() - 1));
    return PulseFinder.USUAL_SIZES.stream()
        .filter(size -> isPlayable(bar / size))
        .map(size -> pinned(search.of(fit, size), odds))
        .max(Comparator.comparingDouble(Pinned::preference))
        .orElse(given);
  }

  private static boolean isPlayable(double beatSeconds) {
    return beatSeconds > BeatLengths.seconds(0) && beatSeconds < BeatLengths.LONGEST_SECONDS;
  }

  private Pinned pinned(FoundBeats found, double[][] odds) {
    int size = found.beatsInBar();
    List<FoundBeat> beats = onPins(found, size);
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
  private List<FoundBeat> onPins(FoundBeats found, int size) {
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
              .orElseGet(() -> counted(from, to, last.bar() - first.bar(), own)));
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

  private List<FoundBeat> counted(int from, int to, int bars, int size) {
    double mean = BeatFit.seconds(to - from) / (bars * size);
    BeatFit fit = search.fit(BeatLengths.around(mean).near(mean, BeatSearch.WIDE), division);
    return new CountedSearch(fit, from, to, bars, size).search();
  }

  private static boolean isBetween(FoundBeat beat, int from, int to) {
    int frame = BeatFit.frame(beat.seconds());
    return frame >= from && frame < to;
  }
}
