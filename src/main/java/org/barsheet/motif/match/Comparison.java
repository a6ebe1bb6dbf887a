package org.barsheet.motif.match;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.barsheet.motif.Form;

/**
 * A return held against its motif.
 *
 * @param forms every way it is changed
 * @param transposition semitones from the motif to it, of most of its notes
 * @param missing indexes of the motif's notes that are not in it
 * @param changed indexes of the notes whose scale step differs
 */
public record Comparison(
    List<Form> forms, int transposition, List<Integer> missing, List<Integer> changed) {

  public static Comparison of(NoteField field, Chain chain) {
    Pattern pattern = chain.pattern();
    Picks picks = chain.notes();
    int reference = reference(field, chain);
    int heardReference = field.pitch(picks.get(reference));
    int transposition = heardReference - pattern.pitch(reference);
    List<Integer> missing = new ArrayList<>();
    List<Integer> changed = new ArrayList<>();
    boolean exact = true;
    for (int i = 0; i < picks.size(); i++) {
      if (!picks.has(i)) {
        missing.add(i);
        continue;
      }
      int heard = field.pitch(picks.get(i)) - heardReference;
      int asked = pattern.interval(reference, i);
      exact &= heard == asked;
      if (Intervals.stepsApart(asked, heard) > 0) {
        changed.add(i);
      }
    }
    return new Comparison(forms(pattern, exact, transposition), transposition, missing, changed);
  }

  /** The first of the notes that are moved by the commonest distance. */
  private static int reference(NoteField field, Chain chain) {
    TreeMap<Integer, Integer> counts = new TreeMap<>();
    int best = chain.notes().firstPresent();
    int most = 0;
    for (int i = chain.notes().size() - 1; i >= 0; i--) {
      if (chain.notes().has(i)) {
        int moved = field.pitch(chain.notes().get(i)) - chain.pattern().pitch(i);
        int count = counts.merge(moved, 1, Integer::sum);
        if (count >= most) {
          most = count;
          best = i;
        }
      }
    }
    return best;
  }

  private static List<Form> forms(Pattern pattern, boolean exact, int transposition) {
    List<Form> forms = new ArrayList<>();
    pattern.variant().ifPresent(forms::add);
    forms.addAll(pattern.transform().forms());
    if (!exact) {
      forms.add(Form.TONAL);
    } else if (pattern.transform().forms().isEmpty()) {
      forms.add(transposition % 12 == 0 ? Form.AS_GIVEN : Form.TRANSPOSED);
    }
    return forms;
  }
}
