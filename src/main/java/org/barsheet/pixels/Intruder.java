package org.barsheet.pixels;

/**
 * Something in a photograph that is not in the others.
 *
 * @param box where it is, in pixels of the photograph
 * @param kind how it looks
 * @param contrast of it in levels from 0 to 255, or for a soft one in stops; less than 0 where it
 *     is darker
 */
public record Intruder(Box box, Kind kind, double contrast) {

  /** How an intruder looks. */
  public enum Kind {
    /** Long and thin: a thread, a hair, a cable. */
    THIN,
    /** With an edge: a hand, a tool, putty. */
    SOLID,
    /** Without an edge: a shadow, or light from elsewhere. */
    SOFT
  }
}
