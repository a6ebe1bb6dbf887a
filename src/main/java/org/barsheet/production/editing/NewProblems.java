package org.barsheet.production.editing;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.edit.PlanTexts;

/** What an edit would make wrong with a plan. */
final class NewProblems {

  private NewProblems() {}

  /**
   * Makes sure that a plan is understood as well after an edit as before.
   *
   * @throws InputException with what would be wrong and isn't yet
   */
  static void refuse(PlanTexts before, PlanTexts after) {
    List<Problem> fresh = new ArrayList<>(problems(after));
    for (Problem old : fresh.isEmpty() ? List.<Problem>of() : problems(before)) {
      fresh.stream()
          .filter(one -> one.sentence().equals(old.sentence()))
          .findFirst()
          .ifPresent(fresh::remove);
    }
    if (!fresh.isEmpty()) {
      throw new InputException(fresh);
    }
  }

  private static List<Problem> problems(PlanTexts texts) {
    try {
      texts.understood();
      return List.of();
    } catch (InputException wrong) {
      return wrong.problems();
    }
  }
}
