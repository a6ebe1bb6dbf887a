package org.barsheet.production.editing;

import java.util.List;
import org.barsheet.plan.edit.PlanEdit;
import org.barsheet.plan.edit.PlanTexts;

/** What came of an edit. */
public sealed interface Outcome {

  /**
   * It is written.
   *
   * @param now what the plan's files hold with it
   */
  record Written(PlanTexts now) implements Outcome {}

  /** The plan says so already: nothing was written. */
  record Unchanged() implements Outcome {}

  /**
   * Somebody else changed the same places; nothing was written.
   *
   * @param edit what is made of the plan as it is now where the person's own change is to count
   * @param places each with what the two make of it
   */
  record Question(PlanEdit edit, List<BothChanged> places) implements Outcome {

    public Question {
      places = List.copyOf(places);
    }
  }

  /**
   * A place that two people changed.
   *
   * @param place as people say it: {@code panel 7 cue}
   * @param mine what this edit makes of it; "" where it goes
   * @param theirs what it is now; "" where it is gone
   */
  record BothChanged(String place, String mine, String theirs) {}
}
