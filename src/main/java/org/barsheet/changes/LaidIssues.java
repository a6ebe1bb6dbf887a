package org.barsheet.changes;

import java.util.List;

/**
 * The runs of a film that were sent out under names.
 *
 * @param name of this run, or "" for one that was not sent out
 * @param earlier those before it, in the order made
 */
public record LaidIssues(String name, List<LaidIssue> earlier) {

  public static final LaidIssues NONE = new LaidIssues("", List.of());

  public LaidIssues {
    earlier = List.copyOf(earlier);
  }
}
