package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.TempoEvidence.WeakStretch;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Meter;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/**
 * Bars of a piece that is partly played freely: as written where the notes keep to the written
 * beats, found in the playing elsewhere. A free passage begins and ends on written bar lines.
 */
final class FreePassages {

  private final Score score;
  private List<Bar> bars;

  private FreePassages(Score score, List<Bar> bars) {
    this.score = score;
    this.bars = bars;
  }

  /** The written bars with those of weak stretches found anew where the notes allow it. */
  static BarGrid follow(Score score, BarGrid written, List<WeakStretch> weak) {
    FreePassages passages = new FreePassages(score, written.bars());
    for (WeakStretch stretch : weak) {
      Bar first = written.barAt(stretch.fromTick());
      Bar last = written.barAt(stretch.toTick() - 1);
      passages.replace(first, last.endTick());
    }
    return new BarGrid(passages.bars);
  }

  private void replace(Bar first, long end) {
    long start = first.startTick();
    Optional<List<Bar>> found = find(first, end);
    if (found.isEmpty()) {
      return;
    }
    List<Bar> all = new ArrayList<>();
    bars.stream().filter(bar -> bar.endTick() <= start).forEach(all::add);
    all.addAll(found.get());
    bars.stream().filter(bar -> bar.startTick() >= end).forEach(all::add);
    bars = new ArrayList<>();
    for (Bar bar : all) {
      bars.add(bar.at(bars.size()));
    }
  }

  private Optional<List<Bar>> find(Bar first, long end) {
    long start = first.startTick();
    List<Note> notes =
        score.notes().stream()
            .filter(note -> note.onTick() >= start && note.onTick() < end + first.lengthTicks())
            .toList();
    return PulseFinder.find(score.withNotes(notes), request(first))
        .map(pulse -> between(pulse.bars().bars(), start, end));
  }

  /** A bar begins where the passage does; meter and tempo are expected to be about as written. */
  private TempoRequest request(Bar first) {
    TempoRequest all = TempoRequest.DEFAULT;
    Meter meter = first.meter();
    TempoRequest.Pin pin =
        new TempoRequest.Pin(first.number(), score.tempo().secondsAt(first.startTick()));
    Seconds beat = score.tempo().perQuarterAt(first.startTick()).times(meter.feltBeatQuarters());
    return new TempoRequest(
        TempoRequest.Mode.PLAYED,
        1,
        all.pickup(),
        all.playedOrder(),
        List.of(pin),
        Optional.of(meter),
        Optional.of(Seconds.of(60).dividedBy(beat)),
        all.feltBeat());
  }

  /** The found bars of the passage; the last one ends where the passage does. */
  private static List<Bar> between(List<Bar> found, long start, long end) {
    List<Bar> inside = new ArrayList<>();
    for (Bar bar : found) {
      boolean beginsInside = bar.startTick() >= start && bar.startTick() < end;
      boolean mostlyInside = end - bar.startTick() > bar.lengthTicks() / 2;
      if (beginsInside && (mostlyInside || inside.isEmpty())) {
        inside.add(bar);
      }
    }
    int last = inside.size() - 1;
    if (last >= 0) {
      inside.set(last, endingAt(inside.get(last), end));
    }
    return inside;
  }

  private static Bar endingAt(Bar bar, long end) {
    List<Long> beats = bar.beatTicks().stream().filter(tick -> tick < end).toList();
    return new Bar(
        bar.index(),
        bar.number(),
        bar.time(),
        bar.meter(),
        bar.startTick(),
        end,
        beats,
        bar.fullBeats());
  }
}
