package org.barsheet.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.barsheet.clock.Footage;
import org.barsheet.production.Production;
import org.barsheet.production.places.Located;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says where places lie in music and film. */
@Command(
    name = "where",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header =
        "Tells you where a place is: bar, seconds of the score, timecode and frame of the film.",
    footer = {
      "",
      "Examples:",
      "  barsheet where plan.yaml \"bar 12 beat 3\" \"mark B\"",
      "  barsheet where plan.yaml \"panel 17\" \"glimmer 3\" 01:00:12:00 --feet",
      "  barsheet where plan.yaml glimmer         every return of glimmer",
    })
final class WhereCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "PLAN", description = "The director's plan.")
  private Path plan = Path.of("");

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "PLACE",
      description = "A place, in quotes: a panel, a motif, a bar, a mark or a timecode.")
  private List<String> places = List.of();

  @Option(
      names = "--feet",
      description = "Also prints feet and frames of 35 mm film (16 frames to the foot).")
  private boolean feet;

  @Mixin private FormatOption form = new FormatOption();

  @Override
  public Integer call() {
    Located located = Production.where(plan, Production.defaultFolder(plan), places);
    Table table =
        feet
            ? new Table("place", "bar", "beat", "seconds", "timecode", "frame", "feet")
            : new Table("place", "bar", "beat", "seconds", "timecode", "frame");
    for (Located.Spot spot : located.spots()) {
      String timecode = located.film().timecode(spot.frame()).toString();
      Number beat = Figures.decimal(spot.place().beat(), 3);
      Number seconds = spot.at().toDecimal(3);
      if (feet) {
        String footage = spot.frame() < 0 ? "" : Footage.ofFrames(spot.frame()).toString();
        table.add(spot.title(), spot.place().bar(), beat, seconds, timecode, spot.frame(), footage);
      } else {
        table.add(spot.title(), spot.place().bar(), beat, seconds, timecode, spot.frame());
      }
    }
    table.print(form.as, spec.commandLine().getOut());
    return ExitStatus.DONE;
  }
}
