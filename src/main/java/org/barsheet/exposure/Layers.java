package org.barsheet.exposure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.barsheet.clock.FrameSpan;

/** Gives spans that overlap different layers, with as few layers as can be. */
final class Layers {

  private Layers() {}

  /**
   * The layer of each span, from 1. Spans are taken by their start, each on the first layer that is
   * free by then; that never needs more layers than spans overlap at one frame (interval
   * partitioning, Kleinberg and Tardos, Algorithm Design, 4.1).
   */
  static List<Integer> assign(List<FrameSpan> spans) {
    List<Integer> order =
        IntStream.range(0, spans.size())
            .boxed()
            .sorted(Comparator.comparingLong(i -> spans.get(i).start()))
            .toList();
    Integer[] layers = new Integer[spans.size()];
    List<Long> freeFrom = new ArrayList<>();
    for (int i : order) {
      FrameSpan span = spans.get(i);
      int layer = 0;
      while (layer < freeFrom.size() && freeFrom.get(layer) > span.start()) {
        layer++;
      }
      if (layer == freeFrom.size()) {
        freeFrom.add(0L);
      }
      freeFrom.set(layer, span.endExclusive());
      layers[i] = layer + 1;
    }
    return Arrays.asList(layers);
  }
}
