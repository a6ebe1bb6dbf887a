package org.barsheet.motif.find;

import java.util.List;
import org.barsheet.motif.Form;
import org.barsheet.motif.Match;
import org.barsheet.motif.Motif;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.Comparison;
import org.barsheet.motif.match.NoteField;

/** What a motif itself demands of a chain, beyond the rules it was followed by. */
final class MotifFilter {

  private MotifFilter() {}

  /** The chains that are near enough to count. */
  static List<Chain> wanted(NoteField field, Motif motif, Judgment judgment, List<Chain> chains) {
    return chains.stream()
        .filter(chain -> judgment.of(chain).isPresent())
        .filter(chain -> isNearEnough(field, motif.match(), chain))
        .toList();
  }

  private static boolean isNearEnough(NoteField field, Match match, Chain chain) {
    return switch (match) {
      case EXACT -> isChromatic(field, chain) && isAtPitch(field, chain);
      case TRANSPOSED -> isChromatic(field, chain);
      case TONAL, FREE -> true;
    };
  }

  /** Whether every note is there, at one distance from the pattern's. */
  private static boolean isChromatic(NoteField field, Chain chain) {
    Comparison comparison = Comparison.of(field, chain);
    return comparison.missing().isEmpty() && !comparison.forms().contains(Form.TONAL);
  }

  /** Whether a chain sounds the pattern's own pitches, in any octave. */
  private static boolean isAtPitch(NoteField field, Chain chain) {
    int first = chain.notes().firstPresent();
    return (field.pitch(chain.notes().get(first)) - chain.pattern().pitch(first)) % 12 == 0;
  }
}
