package org.barsheet.motif;

import java.util.List;

/**
 * How a return differs from its motif.
 *
 * @param forms every way it is changed, in the order a musician would say it; never empty
 * @param transposition semitones from the motif to this return, of most of its notes
 * @param description form in words: "tonal, up a fifth, last note shortened"
 */
public record Variation(List<Form> forms, int transposition, String description) {

  public Variation {
    forms = List.copyOf(forms);
    if (forms.isEmpty()) {
      throw new IllegalArgumentException("a return has a form");
    }
  }
}
