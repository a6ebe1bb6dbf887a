package org.barsheet.cli;

import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.barsheet.input.InputException;
import org.barsheet.input.NamesHere;
import org.barsheet.input.Problem;

/** What a person is told when a command does not come to its end, and the status it ends with. */
final class Faults {

  private final PrintWriter err;

  Faults(PrintWriter err) {
    this.err = err;
  }

  /** Tells what was thrown; returns the exit status. */
  int told(Throwable thrown) {
    if (thrown instanceof InputException input) {
      input.problems().forEach(err::println);
      return ExitStatus.BAD_INPUT;
    }
    if (thrown instanceof CancellationException) {
      err.println("Stopped. Your files are unchanged.");
      return ExitStatus.BAD_INPUT;
    }
    Optional<Problem> name =
        causes(thrown).flatMap(cause -> unspeakable(cause).stream()).findFirst();
    if (name.isPresent()) {
      err.println(name.get());
      return ExitStatus.BAD_INPUT;
    }
    Optional<String> room = causes(thrown).flatMap(cause -> outOfRoom(cause).stream()).findFirst();
    if (room.isPresent()) {
      err.println(room.get());
      return ExitStatus.OWN_FAULT;
    }
    err.println("Internal error. Your files are unchanged.");
    err.println("  Please report it with the command you typed, the plan and the text below.");
    thrown.printStackTrace(err);
    return ExitStatus.OWN_FAULT;
  }

  /** Workbook and files are made side by side; what goes wrong there comes wrapped. */
  private static Stream<Throwable> causes(Throwable thrown) {
    return Stream.iterate(thrown, cause -> cause != null, Throwable::getCause).limit(20);
  }

  /** A file name made of a performer's or another name that this locale cannot spell. */
  private static Optional<Problem> unspeakable(Throwable cause) {
    return cause instanceof InvalidPathException path
        ? NamesHere.remedy(path.getInput())
            .map(
                remedy ->
                    Problem.ofFile(
                        path.getInput(), "this system can't spell this file name", remedy))
        : Optional.empty();
  }

  private static Optional<String> outOfRoom(Throwable cause) {
    if (cause instanceof OutOfMemoryError) {
      return Optional.of(
          "Out of memory. Your files are unchanged."
              + " Give Java more (JAVA_TOOL_OPTIONS=-Xmx4g), or smaller scores and drawings.");
    }
    return cause instanceof StackOverflowError
        ? Optional.of(
            "Something in the plan or the score is nested too deeply. Your files are unchanged.")
        : Optional.empty();
  }
}
