package org.barsheet.motif;

import java.util.List;
import java.util.Set;

/**
 * A short named figure to look for.
 *
 * @param name as the plan calls it
 * @param shapes its exemplars, each a line of notes in order of onset; the first is the motif
 *     itself
 * @param accent the note that a reveal lands on
 * @param match how near a return must be
 * @param forms forms looked for besides as given, transposed and tonal: inverted, retrograde,
 *     augmented, diminished, ornamented, shortened
 */
public record Motif(
    String name, List<List<MotifNote>> shapes, Accent accent, Match match, Set<Form> forms) {

  public Motif {
    shapes = shapes.stream().map(List::copyOf).toList();
    forms = Set.copyOf(forms);
    if (shapes.isEmpty() || shapes.stream().anyMatch(List::isEmpty)) {
      throw new IllegalArgumentException("motif " + name + " has no notes");
    }
  }
}
