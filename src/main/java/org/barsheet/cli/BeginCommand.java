package org.barsheet.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.barsheet.clock.FrameRate;
import org.barsheet.input.SyntaxException;
import org.barsheet.production.Production;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a first plan to fill in. */
@Command(
    name = "begin",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header =
        "Gives the director a first plan for a score: its likely motifs, and a panel for each section.",
    description = {"", "You can run make on it at once. It never overwrites a file.", ""},
    footer = {
      "",
      "Examples:",
      "  barsheet begin score.mid                       writes score.yaml beside it",
      "  barsheet begin score.mid --out plan.xlsx       the same as a spreadsheet",
      "  barsheet begin score.mid --frame-rate 25 --title \"The quay\"",
    })
final class BeginCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "SCORE", description = "A Standard MIDI File (.mid).")
  private Path score = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Plan to write, .yaml or .xlsx; by default SCORE's name with .yaml.")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--frame-rate",
      paramLabel = "RATE",
      defaultValue = "24",
      description = "Frame rate: 24 (default), 23.976, 25, 29.97, 29.97df, 30 …")
  private String frameRate = "24";

  @Option(
      names = "--title",
      paramLabel = "TITLE",
      description = "Title of the film; by default SCORE's name.")
  private Optional<String> title = Optional.empty();

  @Override
  public Integer call() {
    String name = Production.name(score);
    Path plan = out.orElseGet(() -> score.resolveSibling(name + ".yaml"));
    if (!plan.toString().matches("(?i).*\\.(yaml|yml|xlsx)")) {
      throw new ParameterException(
          spec.commandLine(), "--out: '" + plan + "' ends with neither .yaml nor .xlsx");
    }
    Production.begin(score, plan, title.orElse(name), rate());
    spec.commandLine().getOut().println(plan);
    spec.commandLine().getErr().println("at " + rate() + " fps; next: barsheet make " + plan);
    return ExitStatus.DONE;
  }

  private FrameRate rate() {
    try {
      return FrameRate.parse(frameRate);
    } catch (SyntaxException unknown) {
      throw new ParameterException(
          spec.commandLine(), "--frame-rate: " + unknown.sentence() + "; " + unknown.remedy());
    }
  }
}
