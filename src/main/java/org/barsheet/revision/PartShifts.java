package org.barsheet.revision;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** Which parts a passage moves up or down as a whole: other pitches, the same rhythm. */
final class PartShifts {

  /** One bar alone may be another melody by chance. */
  private static final int FEWEST_BARS = 2;

  private final Map<String, Map<Integer, Integer>> barsShifted = new HashMap<>();
  private final Map<String, Integer> barsChanged = new HashMap<>();

  /** Counts a bar laid against the bar it became. */
  void add(Map<String, List<HeldNote>> was, Map<String, List<HeldNote>> is) {
    was.forEach(
        (part, notes) -> {
          List<HeldNote> now = is.getOrDefault(part, List.of());
          if (!notes.equals(now)) {
            barsChanged.merge(part, 1, Integer::sum);
            shift(notes, now)
                .ifPresent(
                    by ->
                        barsShifted
                            .computeIfAbsent(part, p -> new HashMap<>())
                            .merge(by, 1, Integer::sum));
          }
        });
  }

  /**
   * By how many semitones a part moves in a bar, if it moves so in most bars of the passage that
   * changed for it, and in two at least.
   */
  OptionalInt of(String part, List<HeldNote> was, List<HeldNote> is) {
    OptionalInt shift = shift(was, is);
    if (shift.isEmpty()) {
      return shift;
    }
    int bars = barsShifted.getOrDefault(part, Map.of()).getOrDefault(shift.getAsInt(), 0);
    boolean whole = bars >= FEWEST_BARS && 2 * bars > barsChanged.getOrDefault(part, 0);
    return whole ? shift : OptionalInt.empty();
  }

  private static OptionalInt shift(List<HeldNote> was, List<HeldNote> is) {
    if (was.isEmpty() || was.size() != is.size() || was.get(0).drum()) {
      return OptionalInt.empty();
    }
    int by = is.get(0).pitch() - was.get(0).pitch();
    boolean all = was.stream().map(note -> note.higher(by)).toList().equals(is);
    return all && by != 0 ? OptionalInt.of(by) : OptionalInt.empty();
  }
}
