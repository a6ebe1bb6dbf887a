package org.barsheet.motif;

import java.util.Locale;
import java.util.Optional;

/**
 * How near a motif comes to a place.
 *
 * @param motif its name
 * @param match how near the motif wants its returns
 * @param startTick where the nearest thing to it begins
 * @param score 0 to 1, 1 for the motif note for note
 * @param needed the score that a return needs
 * @param certainty how it counts; empty if it does not
 * @param description its form in words, as if it were a return
 * @param spoiled what differs, in words; empty if nothing does
 */
public record NearMiss(
    String motif,
    Match match,
    long startTick,
    double score,
    double needed,
    Optional<Certainty> certainty,
    String description,
    String spoiled) {

  /** "glimmer: 0.72 of 0.80 needed (tonal, up a fifth, in Viola): note 3 missing, note 5 late". */
  public String sentence() {
    String why = spoiled.isEmpty() ? "" : ": " + spoiled;
    return motif + ": " + standing() + " (" + description + ")" + why;
  }

  private String standing() {
    if (certainty.isPresent()) {
      return certainty.get().name().toLowerCase(Locale.ROOT);
    }
    if (score >= needed) {
      return "near, but match: " + match.name().toLowerCase(Locale.ROOT) + " wants more";
    }
    return String.format(Locale.ROOT, "%.2f of %.2f needed", score, needed);
  }
}
