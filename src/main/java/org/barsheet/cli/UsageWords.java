package org.barsheet.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.input.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command line. */
final class UsageWords {

  private UsageWords() {}

  static String of(ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    if (wrong instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      return missing(missing.getMissing());
    }
    if (wrong instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched.getUnmatched().get(0), command.getCommandSpec());
    }
    return String.valueOf(wrong.getMessage())
        .replaceFirst("^Invalid value for positional parameter at index \\d+ \\([^)]*\\): ", "")
        .replaceFirst("^Invalid value for [a-z ]*'?([^' ]+)'?(?: \\([^)]*\\))?: ", "$1: ")
        .replaceFirst("is not an? (int|long)$", "is not a whole number");
  }

  private static String missing(List<ArgSpec> missing) {
    String names = missing.stream().map(UsageWords::name).collect(Collectors.joining(" and "));
    return names + (missing.size() == 1 ? " is missing" : " are missing");
  }

  private static String name(ArgSpec spec) {
    return spec instanceof OptionSpec option
        ? option.paramLabel() + " behind " + option.longestName()
        : spec.paramLabel();
  }

  private static String unmatched(String word, CommandSpec command) {
    if (word.startsWith("-")) {
      List<String> options = new ArrayList<>();
      command.options().forEach(option -> options.addAll(List.of(option.names())));
      return "there is no option " + word + meant(Nearest.to(word, options));
    }
    if (!command.subcommands().isEmpty()) {
      List<String> commands = List.copyOf(command.subcommands().keySet());
      return "there is no command " + word + meant(Nearest.to(word, commands));
    }
    return "'" + word + "' is one word too many; put names with spaces in quotes";
  }

  private static String meant(Optional<String> near) {
    return near.map(name -> "; did you mean " + name + "?").orElse("");
  }
}
