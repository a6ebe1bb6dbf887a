package org.barsheet.changes;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.changes.LaidFilm.LaidCue;

/**
 * What became of one return of a motif or one mark between two runs.
 *
 * @param before where it was, or nothing for a new one
 * @param now where it is, or nothing for one that is gone or undecided
 * @param perhaps what it may be now, where two or more cues are as like it; else empty
 */
public record CueChange(Optional<LaidCue> before, Optional<LaidCue> now, List<LaidCue> perhaps) {

  public CueChange {
    perhaps = List.copyOf(perhaps);
  }

  static CueChange added(LaidCue now) {
    return new CueChange(Optional.empty(), Optional.of(now), List.of());
  }

  static CueChange gone(LaidCue before) {
    return new CueChange(Optional.of(before), Optional.empty(), List.of());
  }

  static CueChange kept(LaidCue before, LaidCue now) {
    return new CueChange(Optional.of(before), Optional.of(now), List.of());
  }

  static CueChange undecided(LaidCue before, List<LaidCue> perhaps) {
    return new CueChange(Optional.of(before), Optional.empty(), perhaps);
  }

  /** Whether it has the place and the number it had. */
  boolean isAsBefore() {
    return before.isPresent()
        && now.isPresent()
        && before.get().hasPlaceOf(now.get())
        && before.get().number() == now.get().number();
  }

  /** {@code glimmer 5, bar 33, was glimmer 4, bar 31}. */
  public String sentence() {
    if (before.isEmpty()) {
      return now.orElseThrow().words() + ", is new";
    }
    if (now.isPresent()) {
      return now.get().words() + ", was " + before.get().words();
    }
    return perhaps.isEmpty()
        ? before.get().words() + ", is gone"
        : before.get().words()
            + ", may be "
            + perhaps.stream().map(LaidCue::words).collect(Collectors.joining(" or "))
            + " now";
  }
}
