package org.barsheet.timing;

/**
 * How the returns of a motif are used.
 *
 * @param motif its name
 * @param letter A for the first motif of the plan, B for the second …
 * @param found certain and likely returns
 * @param likely how many of them are only likely
 * @param used how many a panel sits on
 */
public record MotifTally(String motif, String letter, int found, int likely, int used) {

  /** Returns no panel sits on. */
  public int spare() {
    return found - used;
  }
}
