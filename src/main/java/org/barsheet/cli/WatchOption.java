package org.barsheet.cli;

import picocli.CommandLine.Option;

/** The option of commands that can be repeated. */
final class WatchOption {

  @Option(
      names = "--watch",
      description =
          "Repeat after every save of the plan, its table, the score, a drawing or a performer's"
              + " clip, and say what moved, until Ctrl-C.")
  boolean watch;
}
