package org.barsheet.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.barsheet.production.Production;
import org.barsheet.production.ScoreSummary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what is in a MIDI file. */
@Command(
    name = "about",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header =
        "Tells you what is in a MIDI file: parts, length, tempo, meter, marks and likely motifs.",
    footer = {
      "",
      "Examples:",
      "  barsheet about score.mid",
      "  barsheet about score.mid --format json    every figure, for a program",
      "  barsheet about score.mid --format csv     one row per part",
    })
final class AboutCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "SCORE", description = "A Standard MIDI File (.mid).")
  private Path score = Path.of("");

  @Option(names = "--more", description = "Lists up to 20 likely motifs, not 10.")
  private boolean more;

  @Mixin private FormatOption form = new FormatOption();

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    ScoreSummary summary = Production.about(score);
    int figures = more ? 20 : 10;
    switch (form.as) {
      case TEXT -> AboutText.print(summary, figures, out);
      case CSV -> AboutText.parts(summary).print(As.CSV, out);
      case JSON -> Table.printJson(AboutJson.of(summary, figures), out);
    }
    return ExitStatus.DONE;
  }
}
