package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.barsheet.clock.FrameSpan;

/**
 * Things that last some frames, found by the frames they share with others.
 *
 * @param <T> the things
 */
final class Overlaps<T> {

  /**
   * One of the things.
   *
   * @param order its place in the list that was given
   * @param span the frames it lasts
   * @param thing itself
   */
  record Lasting<T>(int order, FrameSpan span, T thing) {}

  private final List<Lasting<T>> byStart = new ArrayList<>();
  private final List<Long> latestEnds = new ArrayList<>();

  /**
   * Things and their frames.
   *
   * @param spans the frames of each thing
   */
  Overlaps(List<T> things, List<FrameSpan> spans) {
    for (int i = 0; i < things.size(); i++) {
      byStart.add(new Lasting<>(i, spans.get(i), things.get(i)));
    }
    byStart.sort(Comparator.comparingLong(one -> one.span().start()));
    long latest = Long.MIN_VALUE;
    for (Lasting<T> one : byStart) {
      latest = Math.max(latest, one.span().endExclusive());
      latestEnds.add(latest);
    }
  }

  /** Those that share a frame with a span, in the order they were given. */
  List<Lasting<T>> with(FrameSpan frames) {
    List<Lasting<T>> found = new ArrayList<>();
    for (int i = firstEndingAfter(frames.start()); i < byStart.size(); i++) {
      Lasting<T> one = byStart.get(i);
      if (one.span().start() >= frames.endExclusive()) {
        break;
      }
      if (one.span().overlaps(frames)) {
        found.add(one);
      }
    }
    found.sort(Comparator.comparingInt(Lasting::order));
    return found;
  }

  private int firstEndingAfter(long frame) {
    int low = 0;
    int high = latestEnds.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (latestEnds.get(middle) <= frame) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
