package org.barsheet.movie;

import java.util.Optional;
import org.barsheet.plan.Opening;

/**
 * What a guide video tells its performer on one frame; frames that tell the same look the same.
 *
 * @param bar {@code bar 12}, or what goes on before and after the music
 * @param beat felt beat that sounds, from 1; 0 where none does
 * @param beats felt beats of the bar; 0 outside the music
 * @param state whether the performer is seen
 * @param told in words: when they are seen next, or for how long
 * @param clap what to do about the clap, or ""
 * @param clapsNow whether this is the time of the clap
 * @param opening that they are seen in now or next
 */
record GuideMoment(
    String bar,
    int beat,
    int beats,
    State state,
    String told,
    String clap,
    boolean clapsNow,
    Optional<Opening> opening) {

  /** Whether the performer is seen. */
  enum State {
    NOT_SEEN,
    /** Two bars before. */
    READY,
    SEEN
  }
}
