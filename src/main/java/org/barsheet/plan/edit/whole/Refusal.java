package org.barsheet.plan.edit.whole;

import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.source.Entry;

/** What to say where an edit can't be made. */
final class Refusal {

  private Refusal() {}

  static InputException at(Entry entry, String sentence, String remedy) {
    String file = entry.where().file();
    return new InputException(Problem.at(file, entry.where().position(), sentence, remedy));
  }
}
