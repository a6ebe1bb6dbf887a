package org.barsheet.plan.edit;

import java.util.Optional;

/**
 * One value of a plan and what it is to be.
 *
 * @param at leads to a text that stands in the plan, possibly an empty one, or to a key that is not
 *     there yet in a table of keys that is
 * @param now what is to be read there, without line ends; nothing to take the key out
 */
public record Edit(PlanPath at, Optional<String> now) {

  /** A value that is to be another. */
  public Edit(PlanPath at, String now) {
    this(at, Optional.of(now));
  }

  /** A key that is to go, with its value. */
  public static Edit without(PlanPath at) {
    return new Edit(at, Optional.empty());
  }
}
