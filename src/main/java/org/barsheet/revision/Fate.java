package org.barsheet.revision;

import java.util.List;
import java.util.Optional;

/**
 * What became of a thing of the version before.
 *
 * @param <T> what it is in both versions
 */
public sealed interface Fate<T> {

  /**
   * It is still there.
   *
   * @param now where, or what, it is
   * @param changed whether other notes are played there
   */
  record Kept<T>(T now, boolean changed) implements Fate<T> {}

  /** It is not there any more. */
  record Gone<T>() implements Fate<T> {}

  /**
   * Two or more things of now could be it, and nothing tells them apart.
   *
   * @param candidates what it could be, in order of time; never empty
   * @param perhapsGone whether it could be gone as well
   */
  record Undecided<T>(List<T> candidates, boolean perhapsGone) implements Fate<T> {
    public Undecided {
      candidates = List.copyOf(candidates);
    }
  }

  /** What it is now, where that is sure. */
  default Optional<T> sure() {
    return this instanceof Kept<T> kept ? Optional.of(kept.now()) : Optional.empty();
  }

  /** Everything it may be now: one thing, several, or none. */
  default List<T> possible() {
    if (this instanceof Undecided<T> undecided) {
      return undecided.candidates();
    }
    return sure().map(List::of).orElse(List.of());
  }
}
