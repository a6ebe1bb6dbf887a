package org.barsheet.align.places;

import java.util.List;

/**
 * Frames among which a shot begins.
 *
 * @param first the earliest
 * @param last the latest; less than the first where there is none
 */
public record CutWindow(long first, long last) {

  /** Anywhere, in the film or not. */
  public static final CutWindow ANY = new CutWindow(Long.MIN_VALUE, Long.MAX_VALUE);

  boolean contains(long frame) {
    return frame >= first && frame <= last;
  }

  /** Whether some frame from one to another, both included, is in it. */
  boolean meets(long from, long to) {
    return from <= last && to >= first;
  }

  public CutWindow and(CutWindow other) {
    return new CutWindow(Math.max(first, other.first), Math.min(last, other.last));
  }

  /** Those of some places, in order of cut, that begin in it. */
  public List<Candidate> of(List<Candidate> places) {
    return places.subList(firstFrom(places, first), firstAfter(places));
  }

  private int firstAfter(List<Candidate> places) {
    int after = last == Long.MAX_VALUE ? places.size() : firstFrom(places, last + 1);
    return Math.max(firstFrom(places, first), after);
  }

  private static int firstFrom(List<Candidate> places, long frame) {
    int low = 0;
    int high = places.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (places.get(middle).cut() < frame) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
