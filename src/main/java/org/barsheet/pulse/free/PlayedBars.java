package org.barsheet.pulse.free;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.free.FoundBeats.FoundBeat;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Meter;
import org.barsheet.score.Score;

/** Turns found beats into bars: beats snap to the notes they stand on, else to their own tick. */
public final class PlayedBars {

  private static final double SNAP_SECONDS = 0.05;

  private final Score score;
  private final Playing playing;
  private final boolean dotted;
  private final List<Long> ticks = new ArrayList<>();
  private final List<Integer> places = new ArrayList<>();

  private PlayedBars(Score score, Playing playing, boolean dotted) {
    this.score = score;
    this.playing = playing;
    this.dotted = dotted;
  }

  /**
   * Bars of found beats, from the first beat through the end of the last note.
   *
   * @param pins times at which bars begin exactly, in seconds of the file
   * @param size felt beats of most bars
   * @param dotted whether the beats are dotted
   */
  public static BarGrid grid(
      Score score,
      Playing playing,
      List<FoundBeat> beats,
      List<Seconds> pins,
      int size,
      boolean dotted) {
    PlayedBars bars = new PlayedBars(score, playing, dotted);
    for (FoundBeat beat : beats) {
      bars.addBeat(bars.tickOf(beat, pins), beat.place());
    }
    bars.continueToEnd(size);
    return bars.build();
  }

  private long tickOf(FoundBeat beat, List<Seconds> pins) {
    for (Seconds pin : pins) {
      if (BeatFit.frame(pin.toDouble()) == BeatFit.frame(beat.seconds())) {
        return round(score.tempo().tickAt(pin));
      }
    }
    Playing.Stroke stroke = playing.nearest(beat.seconds());
    if (Math.abs(stroke.seconds() - beat.seconds()) <= SNAP_SECONDS) {
      return stroke.tick();
    }
    Seconds seconds = Seconds.of(Math.round(beat.seconds() * 1000), 1000);
    return round(score.tempo().tickAt(seconds));
  }

  private static long round(BigFraction tick) {
    return Math.max(0, Math.round(tick.doubleValue()));
  }

  private void addBeat(long tick, int place) {
    if (ticks.isEmpty() || tick > ticks.get(ticks.size() - 1)) {
      ticks.add(tick);
      places.add(place);
    }
  }

  /** Adds beats of the last length until the last note has ended and the bar is full. */
  private void continueToEnd(int size) {
    int last = ticks.size() - 1;
    long length = ticks.get(last) - ticks.get(last - 1);
    int place = places.get(last);
    long tick = ticks.get(last);
    while (tick + length < score.endTick() || place + 1 < size) {
      tick += length;
      place = (place + 1) % size;
      addBeat(tick, place);
    }
    addBeat(tick + length, 0);
  }

  private BarGrid build() {
    List<Bar> bars = new ArrayList<>();
    int from = 0;
    for (int to = 1; to < ticks.size(); to++) {
      if (places.get(to) == 0) {
        bars.add(bar(bars.size(), from, to));
        from = to;
      }
    }
    return new BarGrid(withPickup(bars));
  }

  private Bar bar(int index, int from, int to) {
    int beats = to - from;
    Meter meter = dotted ? new Meter(3 * beats, 8) : new Meter(beats, 4);
    List<Long> beatTicks = ticks.subList(from, to);
    return new Bar(index, index + 1, 1, meter, ticks.get(from), ticks.get(to), beatTicks, beats);
  }

  /** A first bar that does not begin with a first beat is short and numbered 0. */
  private List<Bar> withPickup(List<Bar> bars) {
    if (places.get(0) == 0 || bars.size() < 2) {
      return bars;
    }
    Bar first = bars.get(0);
    Meter meter = bars.get(1).meter();
    Bar pickup =
        new Bar(
            0,
            0,
            1,
            meter,
            first.startTick(),
            first.endTick(),
            first.beatTicks(),
            bars.get(1).fullBeats());
    List<Bar> numbered = new ArrayList<>(List.of(pickup));
    bars.stream().skip(1).map(bar -> bar.numbered(bar.index(), 1)).forEach(numbered::add);
    return numbered;
  }
}
