package org.barsheet.calls;

import java.util.List;

/**
 * One line of a call sheet: when a performer is seen, in the time of the sound file they play along
 * with. Everything is in words, because a page and a worksheet print it alike.
 *
 * @param panel its name
 * @param action what happens in it
 * @param opening where they are seen
 * @param bars the bars it lasts
 * @param ready from when they are ready and still
 * @param from the first moment they are seen
 * @param until the last moment they are seen
 * @param still until when they keep still
 * @param part whether their part sounds meanwhile
 * @param opensFirst which edge lets them be seen first, or that it stands open
 */
public record CallAppearance(
    String panel,
    String action,
    String opening,
    String bars,
    String ready,
    String from,
    String until,
    String still,
    String part,
    String opensFirst) {

  /** What stands over {@link #cells}. */
  public static final List<String> HEADINGS =
      List.of(
          "panel",
          "you are",
          "bars",
          "ready and still from",
          "seen from",
          "seen until",
          "still until",
          "your part",
          "opens first");

  /** The line in cells, one under each of {@link #HEADINGS}. */
  public List<String> cells() {
    return List.of(
        panel + " " + action, "in " + opening, bars, ready, from, until, still, part, opensFirst);
  }
}
