package org.barsheet.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.barsheet.production.Production;
import org.barsheet.production.places.Returns;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists every return of every motif of a plan. */
@Command(
    name = "find",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Lists every return of every motif for the director, in order of time.",
    description = {
      "",
      "Listen to a likely return before you put a panel on it. Doublings count as one return.",
      "",
    },
    footer = {
      "",
      "Examples:",
      "  barsheet find plan.yaml",
      "  barsheet find plan.yaml --format csv > returns.csv",
      "  barsheet find plan.yaml --why \"bar 33\"    why is there no return, or how near is one?",
    })
final class FindCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "PLAN", description = "The director's plan.")
  private Path plan = Path.of("");

  @Option(
      names = "--possible",
      description =
          "Also lists ornamented and shortened returns, marked possible and not numbered.")
  private boolean possible;

  @Option(
      names = "--why",
      paramLabel = "PLACE",
      description =
          "How near each motif comes to a place (in quotes), and what is different there.")
  private Optional<String> why = Optional.empty();

  @Mixin private FormatOption form = new FormatOption();

  @Override
  public Integer call() {
    if (why.isPresent()) {
      NearnessText.print(Production.near(plan, why.get()), form.as, spec.commandLine().getOut());
      return ExitStatus.DONE;
    }
    Returns returns = possible ? Production.possibleReturns(plan) : Production.returns(plan);
    ReturnsText.print(returns, form.as, spec.commandLine().getOut());
    return ExitStatus.DONE;
  }
}
