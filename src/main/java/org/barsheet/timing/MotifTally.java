package org.barsheet.timing;

/**
 * How the returns of a motif are used.
 *
 * @param motif its name
 * @param sign its short name for narrow columns, M1 for the first motif of the plan, M2 for the
 *     second …: neither a rehearsal letter nor a note
 * @param found certain and likely returns
 * @param likely how many of them are only likely
 * @param used how many a panel sits on
 */
public record MotifTally(String motif, String sign, int found, int likely, int used) {

  /** Returns no panel sits on. */
  public int spare() {
    return found - used;
  }
}
