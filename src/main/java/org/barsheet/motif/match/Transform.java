package org.barsheet.motif.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.motif.Form;

/**
 * A way to change a motif as a whole before it is looked for.
 *
 * @param inverted every interval turned upside down about the first note
 * @param retrograde last note first
 * @param stretch factor on all onsets and lengths, more than 0; 2 is augmented to twice
 */
public record Transform(boolean inverted, boolean retrograde, BigFraction stretch) {

  public static final Transform AS_GIVEN = new Transform(false, false, BigFraction.ONE);

  private static final List<BigFraction> AUGMENTATIONS =
      List.of(BigFraction.of(2), BigFraction.of(3, 2), BigFraction.of(3));

  /** Every transform that these forms ask for, alone and together, the plain one first. */
  public static List<Transform> of(Set<Form> forms) {
    List<BigFraction> stretches = new ArrayList<>(List.of(BigFraction.ONE));
    if (forms.contains(Form.AUGMENTED)) {
      stretches.addAll(AUGMENTATIONS);
    }
    if (forms.contains(Form.DIMINISHED)) {
      AUGMENTATIONS.forEach(factor -> stretches.add(factor.reciprocal()));
    }
    List<Transform> transforms = new ArrayList<>();
    for (BigFraction stretch : stretches) {
      for (boolean retrograde : eitherWay(forms.contains(Form.RETROGRADE))) {
        for (boolean inverted : eitherWay(forms.contains(Form.INVERTED))) {
          transforms.add(new Transform(inverted, retrograde, stretch));
        }
      }
    }
    return transforms;
  }

  private static List<Boolean> eitherWay(boolean asked) {
    return asked ? List.of(false, true) : List.of(false);
  }

  /** How many changes it makes at once, 0 to 3. */
  public int changes() {
    return (inverted ? 1 : 0) + (retrograde ? 1 : 0) + (isStretched() ? 1 : 0);
  }

  public boolean isStretched() {
    return !stretch.equals(BigFraction.ONE);
  }

  /** The forms it makes, in the order a musician says them. */
  List<Form> forms() {
    List<Form> forms = new ArrayList<>();
    if (inverted) {
      forms.add(Form.INVERTED);
    }
    if (retrograde) {
      forms.add(Form.RETROGRADE);
    }
    if (isStretched()) {
      forms.add(stretch.compareTo(BigFraction.ONE) > 0 ? Form.AUGMENTED : Form.DIMINISHED);
    }
    return forms;
  }
}
