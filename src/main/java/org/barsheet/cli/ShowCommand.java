package org.barsheet.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.barsheet.timing.Shot;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the panels on their frames. */
@Command(
    name = "show",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Shows the director every panel: bar, timecode, length, cue and action.",
    footer = {
      "",
      "Examples:",
      "  barsheet show plan.yaml",
      "  barsheet show plan.yaml --format csv > panels.csv",
    })
final class ShowCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "PLAN", description = "The director's plan.")
  private Path plan = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder of the last sheets; by default PLAN's name with -sheets.")
  private Optional<Path> out = Optional.empty();

  @Mixin private FormatOption form = new FormatOption();

  @Override
  public Integer call() {
    Path folder = out.orElseGet(() -> Production.defaultFolder(plan));
    FilmSheet film = Production.film(plan, folder, Progress.SILENT);
    Table table = new Table("panel", "bar", "timecode", "frames", "length", "cue", "action");
    for (Shot shot : film.timing().shots()) {
      table.add(
          shot.panel().name(),
          shot.startsAt().toString().replaceFirst("^bar ", ""),
          film.plan().film().timecode(shot.frames().start()).toString(),
          shot.frames().length(),
          shot.got(),
          shot.cue().title(),
          shot.panel().action());
    }
    table.print(form.as, spec.commandLine().getOut());
    return ExitStatus.DONE;
  }
}
