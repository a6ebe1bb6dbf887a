package org.barsheet.motif;

import java.util.Locale;
import java.util.Optional;

/**
 * How near a motif comes to a place.
 *
 * @param motif its name
 * @param startTick where the nearest thing to it begins
 * @param score 0 to 1, 1 for the motif note for note
 * @param needed the score that a return needs
 * @param certainty how it counts; empty if it does not
 * @param description its form in words, as if it were a return
 * @param spoiled what differs, in words; empty if nothing does
 */
public record NearMiss(
    String motif,
    long startTick,
    double score,
    double needed,
    Optional<Certainty> certainty,
    String description,
    String spoiled) {

  /** "glimmer: 0.72 of 0.80 needed (tonal, up a fifth, in Viola): note 3 missing, note 5 late". */
  public String sentence() {
    String form = " (" + description + ")";
    String why = spoiled.isEmpty() ? "" : ": " + spoiled;
    return certainty
        .map(tier -> motif + ": " + tier.name().toLowerCase(Locale.ROOT) + form + why)
        .orElseGet(
            () ->
                String.format(
                    Locale.ROOT, "%s: %.2f of %.2f needed%s%s", motif, score, needed, form, why));
  }
}
