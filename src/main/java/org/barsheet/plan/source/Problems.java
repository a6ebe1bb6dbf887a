package org.barsheet.plan.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.input.SyntaxException;
import org.barsheet.plan.Where;

/** Everything found wrong with a plan, told at once and in the plan's own order. */
public final class Problems {

  /** How many are told; a plan with more has one cause that these show. */
  static final int MOST_TOLD = 100;

  private record Found(Where where, Problem problem) {}

  private final List<Found> found = new ArrayList<>();
  private final Map<Where, Integer> order = new HashMap<>();

  /** Takes note of a place as it is read, so that problems are told in the order of reading. */
  public void seen(Where where) {
    order.putIfAbsent(where, order.size());
  }

  public void add(Where where, String sentence, String remedy) {
    add(where, Problem.at(where.file(), where.position(), sentence, remedy));
  }

  /** A text that does not follow its grammar, and what it was meant for. */
  public void add(Where where, String subject, SyntaxException wrong) {
    String sentence = subject.isEmpty() ? wrong.sentence() : subject + ": " + wrong.sentence();
    add(
        where,
        new Problem(where.file(), where.position(), sentence, wrong.remedy(), wrong.excerpt()));
  }

  /** What is wrong with a file that the plan names in a place. */
  public void addAll(Where named, InputException wrong) {
    wrong.problems().forEach(problem -> add(named, problem));
  }

  private void add(Where where, Problem problem) {
    found.add(new Found(where, problem));
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  /**
   * Ends the reading if anything is wrong.
   *
   * @throws InputException with all of them
   */
  public void throwIfAny() {
    if (found.isEmpty()) {
      return;
    }
    List<Problem> told =
        found.stream()
            .sorted(Comparator.comparingInt(one -> order.getOrDefault(one.where(), 0)))
            .map(Found::problem)
            .distinct()
            .toList();
    throw new InputException(told.size() > MOST_TOLD ? shortened(told) : told);
  }

  private static List<Problem> shortened(List<Problem> told) {
    List<Problem> first = new ArrayList<>(told.subList(0, MOST_TOLD));
    String sentence = (told.size() - MOST_TOLD) + " more problems are not shown";
    first.add(Problem.ofFile(told.get(0).file(), sentence, "fix these first"));
    return first;
  }
}
