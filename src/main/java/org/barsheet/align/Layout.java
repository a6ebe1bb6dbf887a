package org.barsheet.align;

import java.util.List;
import java.util.stream.IntStream;
import org.barsheet.align.places.Candidate;
import org.barsheet.clock.FrameSpan;

/**
 * One whole layout: a place for every panel.
 *
 * @param places the place of each panel, in story order
 * @param spans the frames of each panel's shot
 * @param cost what it costs in all, in millionths
 */
public record Layout(List<Candidate> places, List<FrameSpan> spans, long cost) {

  public Layout {
    places = List.copyOf(places);
    spans = List.copyOf(spans);
  }

  static Layout of(List<Stage> stages, int[] choice, long cost, long filmFrames) {
    List<Candidate> places =
        IntStream.range(0, choice.length)
            .mapToObj(p -> stages.get(p).candidate(choice[p]))
            .toList();
    List<FrameSpan> spans =
        IntStream.range(0, choice.length).mapToObj(p -> span(places, p, filmFrames)).toList();
    return new Layout(places, spans, cost);
  }

  private static FrameSpan span(List<Candidate> places, int p, long filmFrames) {
    long end = p + 1 < places.size() ? places.get(p + 1).cut() : filmFrames;
    return new FrameSpan(places.get(p).cut(), end);
  }
}
