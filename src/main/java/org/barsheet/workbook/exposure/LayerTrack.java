package org.barsheet.workbook.exposure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.barsheet.clock.FrameSpan;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.pen.FilmIndex;

/**
 * One layer of one shot: its photographs in order, without gaps or repeats. Where reveals follow
 * one another on a layer, each gives way to the next on the next one's first gap.
 */
final class LayerTrack {

  private final List<PlannedReveal> reveals;
  private final List<Exposure> exposures = new ArrayList<>();

  private LayerTrack(List<PlannedReveal> reveals) {
    this.reveals = reveals;
    for (int index = 0; index < reveals.size(); index++) {
      long from = index == 0 ? Long.MIN_VALUE : reveals.get(index).firstGapFrame();
      long to =
          index + 1 < reveals.size() ? reveals.get(index + 1).firstGapFrame() : Long.MAX_VALUE;
      reveals.get(index).exposures().forEach(exposure -> addWithin(exposure, from, to));
    }
  }

  /** The layers of a shot, the first layer first. */
  static List<LayerTrack> of(FilmIndex index, Shot shot) {
    List<LayerTrack> tracks = new ArrayList<>();
    for (int layer = 1; layer <= index.layers(); layer++) {
      int wanted = layer;
      tracks.add(
          new LayerTrack(
              index.revealsOf(shot).stream()
                  .filter(reveal -> reveal.layer() == wanted)
                  .sorted(Comparator.comparingLong(PlannedReveal::firstGapFrame))
                  .toList()));
    }
    return tracks;
  }

  private void addWithin(Exposure exposure, long from, long to) {
    long start = Math.max(from, exposure.frames().start());
    long end = Math.min(to, exposure.frames().endExclusive());
    if (start >= end) {
      return;
    }
    Exposure last = exposures.isEmpty() ? null : exposures.get(exposures.size() - 1);
    if (last != null && last.photograph().equals(exposure.photograph())) {
      FrameSpan both = new FrameSpan(last.frames().start(), end);
      exposures.set(exposures.size() - 1, new Exposure(both, last.photograph(), last.progress()));
    } else {
      exposures.add(
          new Exposure(new FrameSpan(start, end), exposure.photograph(), exposure.progress()));
    }
  }

  /** The reveals on this layer, in order of time. */
  List<PlannedReveal> reveals() {
    return reveals;
  }

  List<Exposure> exposures() {
    return exposures;
  }

  boolean isEmpty() {
    return exposures.isEmpty();
  }

  /** The exposure that shows a frame of the shot. */
  Exposure at(long frame) {
    int low = 0;
    int high = exposures.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (exposures.get(middle).frames().start() <= frame) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return exposures.get(low);
  }
}
