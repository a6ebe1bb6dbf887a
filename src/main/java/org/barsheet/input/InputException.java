package org.barsheet.input;

import java.util.List;
import java.util.stream.Collectors;

/** Material that cannot be used as it is: carries every {@link Problem} found in it. */
public final class InputException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /**
   * All problems at once.
   *
   * @throws IllegalArgumentException if there is none
   */
  public InputException(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("an input error needs at least one problem");
    }
    this.problems = List.copyOf(problems);
  }

  /** A single problem. */
  public InputException(Problem problem) {
    this(List.of(problem));
  }

  /** What is wrong, in the order of the material; never empty. */
  public List<Problem> problems() {
    return problems;
  }

  /** The same problems, those of no file placed in this one. */
  public InputException inFile(String file) {
    return new InputException(
        problems.stream()
            .map(
                problem ->
                    problem.file().isEmpty()
                        ? new Problem(
                            file,
                            problem.position(),
                            problem.sentence(),
                            problem.remedy(),
                            problem.excerpt())
                        : problem)
            .toList());
  }
}
