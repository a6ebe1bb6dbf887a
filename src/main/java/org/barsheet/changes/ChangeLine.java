package org.barsheet.changes;

import java.util.OptionalLong;

/**
 * One line of what moved between two runs.
 *
 * @param who must be told
 * @param kind what it is about
 * @param name which: {@code bars 33 to 60}, {@code glimmer 5}, {@code 9}, {@code small-lamp 001 to
 *     014}
 * @param before where or what it was, or ""
 * @param now where or what it is, or ""
 * @param later frames it begins later, negative if earlier; nothing where that cannot be said
 * @param remedy what to do, or ""
 */
public record ChangeLine(
    String who,
    Kind kind,
    String name,
    String before,
    String now,
    OptionalLong later,
    String remedy) {

  /** What moved. */
  public enum Kind {
    PLAN,
    BARS,
    CUE,
    PANEL,
    SEEN,
    PHOTOGRAPHS
  }
}
