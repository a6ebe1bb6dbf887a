package org.barsheet.production;

/** What {@link Production#make} makes on request only. */
public enum Extra {
  /** The guide and the click track: tens of megabytes. */
  SOUND,
  /** A drawing in the place of every picture still to take. */
  PLACEHOLDERS
}
