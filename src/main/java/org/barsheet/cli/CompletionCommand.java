package org.barsheet.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a script that lets a shell complete commands, options and file names. */
@Command(
    name = "completion",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Prints a script that completes commands and options in bash and zsh.",
    footer = {
      "",
      "Examples:",
      "  source <(barsheet completion)                              for this shell",
      "  barsheet completion > ~/.local/share/bash-completion/completions/barsheet",
      "",
      "The script completes a command that is called barsheet, such as target/barsheet once its",
      "folder is on the PATH.",
    })
final class CompletionCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    spec.commandLine().getOut().print(AutoComplete.bash("barsheet", spec.root().commandLine()));
    return ExitStatus.DONE;
  }
}
