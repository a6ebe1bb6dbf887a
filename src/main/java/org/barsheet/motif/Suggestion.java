package org.barsheet.motif;

import java.util.List;

/**
 * A motif that nobody named yet.
 *
 * @param notes its line, in the note grammar
 * @param part index of the part that plays it first
 * @param returns onset ticks of its returns, as the finder counts them; at least two
 */
public record Suggestion(String notes, int part, List<Long> returns) {

  public Suggestion {
    returns = List.copyOf(returns);
  }
}
