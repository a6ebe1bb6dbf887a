package org.barsheet.artwork;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A color that may stand behind an opening, to be keyed out afterwards, and how it lies to the
 * artwork's palette. It keys the better, the farther its color differences lie from those of every
 * color that has to stay.
 *
 * @param word what people call it
 * @param hex RRGGBB
 * @param distance from the nearest color of the palette, in 8-bit steps of Cb and Cr
 * @param nearest that color, RRGGBB
 */
public record KeyColor(String word, String hex, double distance, String nearest) {

  /**
   * Nearer than this, a color goes with the backing when it is keyed (common practice, no source: a
   * seventh of the whole range).
   */
  public static final double TOO_NEAR = 32;

  /** A color of card or cloth that is sold for keying, at the levels a camera may give it. */
  private record Candidate(String word, String hex) {}

  /** In the order people try them; levels are examples (common practice, no source). */
  private static final List<Candidate> CANDIDATES =
      List.of(
          new Candidate("green", "00A03C"),
          new Candidate("blue", "0046C8"),
          new Candidate("magenta", "C80078"));

  /** Every candidate, the one that keys best first; none without a palette. */
  public static List<KeyColor> candidates(List<String> palette) {
    return CANDIDATES.stream()
        .flatMap(candidate -> against(candidate.word(), candidate.hex(), palette).stream())
        .sorted(Comparator.comparingDouble(KeyColor::distance).reversed())
        .toList();
  }

  /**
   * A backing as a plan names it: a candidate's word, or a color as {@code #00A03C}.
   *
   * @return empty where the word is none of these, or there is nothing to lie near to
   */
  public static Optional<KeyColor> backing(String backing, List<String> others) {
    return hexOf(backing).flatMap(hex -> against(backing, hex, others));
  }

  /** The color of a backing, RRGGBB; empty where the word is none of them. */
  public static Optional<String> hexOf(String backing) {
    if (backing.matches("#[0-9A-Fa-f]{6}")) {
      return Optional.of(backing.substring(1));
    }
    return CANDIDATES.stream()
        .filter(candidate -> candidate.word().equalsIgnoreCase(backing.strip()))
        .map(Candidate::hex)
        .findFirst();
  }

  private static Optional<KeyColor> against(String word, String hex, List<String> others) {
    Chroma key = Chroma.of(hex);
    return others.stream()
        .map(other -> new KeyColor(word, hex, key.distance(Chroma.of(other)), other))
        .min(Comparator.comparingDouble(KeyColor::distance));
  }

  public boolean isTooNear() {
    return distance < TOO_NEAR;
  }
}
