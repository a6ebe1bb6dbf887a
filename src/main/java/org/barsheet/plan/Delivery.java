package org.barsheet.plan;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where the performers send their recordings, and whom they ask.
 *
 * @param contact who answers their questions and how they are reached, or ""
 * @param to where recordings are sent, or ""
 * @param deadline the last day for it, where there is one
 * @param soundUsed whether the film lets their sound be heard, where that is settled
 */
public record Delivery(
    String contact, String to, Optional<LocalDate> deadline, Optional<Boolean> soundUsed) {

  /** Nothing is said of it. */
  public static final Delivery NONE = new Delivery("", "", Optional.empty(), Optional.empty());
}
