package org.barsheet.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.motif.Occurrence;
import org.barsheet.production.Production;
import org.barsheet.production.Returns;
import org.barsheet.score.BarBeat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists every return of every motif of a plan. */
@Command(
    name = "find",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "List every return of every motif of a plan, in order of time.",
    description = {
      "",
      "A return marked likely is a question: listen to it before a panel sits on it. Doublings are one return.",
      "",
    },
    footer = {
      "",
      "Examples:",
      "  barsheet find plan.yaml",
      "  barsheet find plan.yaml --as csv > returns.csv",
    })
final class FindCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "PLAN", description = "The director's plan.")
  private Path plan = Path.of("");

  @Mixin private AsOption form = new AsOption();

  @Override
  public Integer call() {
    Returns returns = Production.returns(plan);
    Table table = form.as == As.TEXT ? forPeople(returns) : forPrograms(returns);
    table.print(form.as, spec.commandLine().getOut());
    return ExitStatus.DONE;
  }

  private static Table forPeople(Returns returns) {
    Table table = new Table("motif", "place", "seconds", "parts", "form", "certainty");
    for (Occurrence occurrence : returns.occurrences()) {
      table.add(
          occurrence.motif() + (occurrence.number() == 0 ? "" : " " + occurrence.number()),
          place(returns, occurrence).toString(),
          seconds(returns, occurrence.startTick()).toDecimal(3),
          parts(returns, occurrence, ", "),
          occurrence.description(),
          certainty(occurrence) + (certainty(occurrence).equals("certain") ? "" : " ?"));
    }
    return table;
  }

  private static Table forPrograms(Returns returns) {
    Table table =
        new Table(
            "motif",
            "occurrence",
            "bar",
            "beat",
            "quarter",
            "seconds",
            "end_quarter",
            "end_seconds",
            "part",
            "form",
            "transposition",
            "score",
            "certainty");
    for (Occurrence occurrence : returns.occurrences()) {
      BarBeat place = place(returns, occurrence);
      table.add(
          occurrence.motif(),
          occurrence.number(),
          place.bar(),
          Words.decimal(place.beat(), 6),
          quarter(returns, occurrence.startTick()),
          seconds(returns, occurrence.startTick()).toDecimal(6),
          quarter(returns, occurrence.endTick()),
          seconds(returns, occurrence.endTick()).toDecimal(6),
          parts(returns, occurrence, "; "),
          occurrence.description(),
          occurrence.transposition(),
          Words.decimal(BigFraction.from(occurrence.score(), 1e-9, 100), 4),
          certainty(occurrence));
    }
    return table;
  }

  private static BarBeat place(Returns returns, Occurrence occurrence) {
    return returns.music().bars().locate(occurrence.startTick());
  }

  private static org.barsheet.clock.Seconds seconds(Returns returns, long tick) {
    return returns.music().tempo().secondsAt(tick);
  }

  private static Number quarter(Returns returns, long tick) {
    return Words.decimal(BigFraction.of(tick, returns.music().score().ticksPerQuarter()), 6);
  }

  private static String parts(Returns returns, Occurrence occurrence, String between) {
    return occurrence.parts().stream()
        .map(part -> returns.music().score().parts().get(part).name())
        .collect(Collectors.joining(between));
  }

  private static String certainty(Occurrence occurrence) {
    return occurrence.certainty().name().toLowerCase(Locale.ROOT);
  }
}
