package org.barsheet.shooting;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is done of a setup without an interruption: all of one step, or as much of it as a day
 * holds.
 *
 * @param setup number of the setup
 * @param step the step; empty while model, lamps and camera are set up
 * @param from first photograph of it, from 0
 * @param to behind the last photograph of it
 * @param begins hours of work since the morning, where the plan gives rates of work
 * @param ends the same when it is done
 */
public record Stretch(
    int setup, Optional<Step> step, int from, int to, OptionalDouble begins, OptionalDouble ends) {

  /** Names of its photographs, in the order they are taken. */
  public List<String> taken() {
    return step.map(one -> one.take().taken().subList(from, to)).orElse(List.of());
  }

  /** Whether it goes on in the morning. */
  public boolean goesOn() {
    return step.isPresent() && to < step.get().take().photographs();
  }

  /** Whether it began on an earlier day. */
  public boolean wentOn() {
    return from > 0;
  }
}
