package org.barsheet.align;

/**
 * The second-best place of a panel.
 *
 * @param sentence what it is and what it would cost, in words
 * @param margin how much the whole film's cost would grow, 0 or more
 */
public record Alternative(String sentence, double margin) {

  /** Margins below this are a free choice. */
  public static final double FREE_CHOICE = 0.05;

  public boolean isFreeChoice() {
    return margin < FREE_CHOICE;
  }
}
