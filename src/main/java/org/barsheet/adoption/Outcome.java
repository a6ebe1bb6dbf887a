package org.barsheet.adoption;

import java.util.List;
import java.util.stream.Stream;
import org.barsheet.plan.Place;

/** What becomes of one place. */
sealed interface Outcome {

  /**
   * The place that means the same music now.
   *
   * @param now what to write
   * @param otherNotes whether that music has other notes than before
   */
  record Found(Place now, boolean otherNotes) implements Outcome {}

  /**
   * A person has to say.
   *
   * @param sentence why, without closing full stop
   * @param nearest what may be meant, in the plan's words with their bars, the likeliest first
   */
  record Asked(String sentence, List<String> nearest) implements Outcome {
    public Asked {
      nearest = List.copyOf(nearest);
    }

    /** The same with another likeliest place. */
    Asked nearestFirst(String first) {
      return new Asked(
          sentence, Stream.concat(Stream.of(first), nearest.stream()).distinct().toList());
    }
  }
}
