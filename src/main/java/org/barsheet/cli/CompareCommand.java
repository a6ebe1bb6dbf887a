package org.barsheet.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.barsheet.changes.ChangeLine;
import org.barsheet.changes.Changes;
import org.barsheet.production.Production;
import org.barsheet.production.VersionComparison;
import org.barsheet.revision.MusicChange;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what moved between two versions. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Tells you what moved between two versions, and which photographs are still usable.",
    description = {
      "",
      "Two scores are compared bar by bar. Plans, folders of sheets and timing.json files are compared as films.",
      "",
    },
    footer = {
      "",
      "Examples:",
      "  barsheet compare old.mid new.mid               which bars are new, gone or changed?",
      "  barsheet compare plan-sheets new-plan.yaml     what would move if I made this?",
      "  barsheet compare plan-sheets --since \"second draft\"    what differs from what I sent?",
      "  barsheet compare monday/timing.json tuesday/timing.json --format csv",
    })
final class CompareCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      paramLabel = "OLD",
      description = "A score, plan, folder or timing.json.")
  private Path before = Path.of("");

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "NEW",
      description = "The later version of it. Leave it out with --since.")
  private Optional<Path> now = Optional.empty();

  @Option(
      names = "--since",
      paramLabel = "NAME",
      description = "Say what differs from what you sent out under NAME (make --issue NAME).")
  private Optional<String> since = Optional.empty();

  @Mixin private FormatOption form = new FormatOption();

  @Override
  public Integer call() {
    VersionComparison comparison = comparison();
    PrintWriter out = spec.commandLine().getOut();
    if (form.as == As.TEXT) {
      comparison
          .film()
          .ifPresentOrElse(film -> ChangesText.printAll(film, out), () -> print(comparison, out));
      out.flush();
    } else {
      table(comparison).print(form.as, out);
    }
    return ExitStatus.DONE;
  }

  private VersionComparison comparison() {
    if (since.isPresent()) {
      return Production.compareSince(before, now.orElse(before), since.get());
    }
    return Production.compare(
        before,
        now.orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(), "give the later version too, or --since NAME")));
  }

  private static void print(VersionComparison scores, PrintWriter out) {
    boolean same =
        scores.parts().isEmpty() && scores.bars().stream().noneMatch(MusicChange::isChange);
    if (same) {
      out.println("nothing changed");
    }
    scores.parts().forEach(part -> out.println("part " + part));
    scores.bars().stream()
        .filter(MusicChange::isChange)
        .map(MusicChange::sentence)
        .forEach(out::println);
  }

  private static Table table(VersionComparison comparison) {
    return comparison.film().map(CompareCommand::table).orElseGet(() -> barTable(comparison));
  }

  private static Table table(Changes film) {
    Table table = new Table("who", "what", "which", "before", "now", "frames_later", "remedy");
    for (ChangeLine line : film.lines()) {
      Object later = line.later().isPresent() ? (Object) line.later().getAsLong() : "";
      table.add(
          line.who(),
          Figures.constant(line.kind()),
          line.name(),
          line.before(),
          line.now(),
          later,
          line.remedy());
    }
    return table;
  }

  private static Table barTable(VersionComparison scores) {
    Table table =
        new Table(
            "what",
            "first_before",
            "last_before",
            "first_now",
            "last_now",
            "seconds_longer",
            "sentence");
    for (MusicChange bars : scores.bars()) {
      table.add(
          Figures.constant(bars.kind()),
          bars.firstBefore(),
          bars.lastBefore(),
          bars.firstNow(),
          bars.lastNow(),
          bars.longer().toDecimal(3),
          bars.sentence());
    }
    return table;
  }
}
