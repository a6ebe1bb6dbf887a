package org.barsheet.production.editing;

import java.util.Optional;
import org.barsheet.plan.edit.Carried;
import org.barsheet.plan.edit.PlanEdit;
import org.barsheet.plan.edit.Values;
import org.barsheet.plan.source.Entry;

/** Puts what two people changed into words. */
final class Questions {

  private Questions() {}

  static Outcome.Question of(PlanEdit edit, Carried carried) {
    return new Outcome.Question(
        edit,
        carried.clashes().stream()
            .map(
                clash ->
                    new Outcome.BothChanged(
                        clash.at().toString(), words(clash.mine()), words(clash.theirs())))
            .toList());
  }

  private static String words(Optional<Entry> value) {
    return value.map(Values::words).orElse("");
  }
}
