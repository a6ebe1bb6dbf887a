package org.barsheet.production;

import java.util.List;
import org.barsheet.plan.Film;
import org.barsheet.timing.WholeAnswer;

/**
 * The best few ways to lay a plan's panels.
 *
 * @param film its settings
 * @param answers cheapest first: the first is the one the sheets show
 */
public record Answers(Film film, List<WholeAnswer> answers) {

  public Answers {
    answers = List.copyOf(answers);
  }
}
