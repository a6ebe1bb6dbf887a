package org.barsheet.film;

import java.util.List;
import java.util.Optional;
import org.barsheet.changes.Changes;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidIssue;
import org.barsheet.changes.LaidIssues;

/**
 * What was sent out of a film under a name, and what differs from it.
 *
 * @param laid the names, with what was laid down under them
 * @param since what differs from the last of those before this run
 */
public record Issued(LaidIssues laid, Optional<Changes> since) {

  public static final Issued NOTHING = new Issued(LaidIssues.NONE, Optional.empty());

  /**
   * A run and those before it. A name that is given once more stands for this run alone.
   *
   * @param name of this run, or ""
   * @param earlier the run before, where there is one
   * @param now what this run lays down
   */
  static Issued of(String name, Optional<LaidFilm> earlier, LaidFilm now) {
    List<LaidIssue> before =
        earlier.map(LaidFilm::issued).orElse(List.of()).stream()
            .filter(issue -> !issue.name().equals(name))
            .toList();
    Optional<Changes> since =
        before.isEmpty()
            ? Optional.empty()
            : Optional.of(Changes.between(before.get(before.size() - 1).film(), now));
    return new Issued(new LaidIssues(name, before), since);
  }

  /** The name of the last issue before this run. */
  Optional<String> last() {
    List<LaidIssue> all = laid.earlier();
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1).name());
  }
}
