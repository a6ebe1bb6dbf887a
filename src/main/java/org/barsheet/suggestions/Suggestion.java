package org.barsheet.suggestions;

import java.util.IntSummaryStatistics;
import java.util.List;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Notes;

/**
 * A motif that nobody named yet.
 *
 * @param notes its line, in the note grammar
 * @param part index of the part that plays its first return
 * @param returns onset ticks of its returns, as the finder counts them; at least two
 * @param accompanies whether it goes round and round, as accompaniments and riffs do
 */
public record Suggestion(String notes, int part, List<Long> returns, boolean accompanies) {

  public Suggestion {
    returns = List.copyOf(returns);
  }

  /** The same with its returns at other ticks. */
  public Suggestion at(List<Long> ticks) {
    return new Suggestion(notes, part, ticks, accompanies);
  }

  /** Its lowest and highest note: {@code C4 to A5}. */
  public String range() {
    IntSummaryStatistics pitches =
        Notes.parse(notes).stream().mapToInt(MotifNote::pitch).summaryStatistics();
    return Notes.name(pitches.getMin()) + " to " + Notes.name(pitches.getMax());
  }
}
