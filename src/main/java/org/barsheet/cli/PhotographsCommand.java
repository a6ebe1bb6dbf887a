package org.barsheet.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.barsheet.production.PhotographRequest;
import org.barsheet.production.PhotographsTaken;
import org.barsheet.production.Production;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes in photographs as they come out of a camera. */
@Command(
    name = "photographs",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Checks photographs from the camera and copies them under their permanent names.",
    description = {
      "",
      "Pairs the JPEG or PNG files of a folder with the planned photographs, by the time in their EXIF",
      "or else by name, and by how far the opening is open in each. Tells where the camera was bumped,",
      "the light changed, a step is wrong, or something is in the way. Copies them, as they are, into",
      "photographs beside the plan; make then shows them. Nothing there is overwritten. Where the",
      "pairing isn't plain it says why and copies nothing until you accept it.",
      "",
    },
    footer = {
      "",
      "Examples:",
      "  barsheet photographs plan.yaml card --of bakers-lamp",
      "  barsheet photographs plan.yaml card --of bakers-lamp --accept     the pairing it proposes is right",
      "  barsheet photographs plan.yaml card --of bakers-lamp --even       with evened copies",
      "  barsheet photographs plan.yaml retakes --of bakers-lamp --from 2  taken again from photograph 2",
      "",
      "Ends with status 1 if it copied nothing because the pairing isn't plain.",
    })
final class PhotographsCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "PLAN", description = "The director's plan.")
  private Path plan = Path.of("");

  @Parameters(index = "1", paramLabel = "FOLDER", description = "Folder of the photographs.")
  private Path folder = Path.of("");

  @Option(
      names = "--of",
      paramLabel = "NAME",
      required = true,
      description = "What they show: an opening, a movement, a setup (\"setup 3\") or a plate.")
  private String of = "";

  @Option(
      names = "--from",
      paramLabel = "N",
      description = "They are retakes; the first one is photograph N.")
  private Optional<Integer> from = Optional.empty();

  @Option(names = "--accept", description = "Copy them by the pairing it proposes.")
  private boolean accept;

  @Option(
      names = "--even",
      description =
          "Also write copies with shift and light corrected, into photographs/evened; the photographs"
              + " themselves stay as they are.")
  private boolean even;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder of the last sheets, which hold the frames of locked panels; by default PLAN's name"
              + " with -sheets.")
  private Optional<Path> out = Optional.empty();

  @Mixin private FormatOption form = new FormatOption();

  @Override
  public Integer call() {
    if (from.filter(number -> number < 0).isPresent()) {
      throw new ParameterException(spec.commandLine(), "--from takes a number from 0 on");
    }
    OptionalInt first = from.map(OptionalInt::of).orElse(OptionalInt.empty());
    PhotographsTaken taken = taken(new PhotographRequest(folder, of, first, accept, even));
    PrintWriter results = spec.commandLine().getOut();
    if (form.as == As.TEXT) {
      PhotographsText.print(taken, results);
    } else {
      PhotographsText.table(taken.sequence()).print(form.as, results);
    }
    results.flush();
    return told(taken, spec.commandLine().getErr());
  }

  private PhotographsTaken taken(PhotographRequest request) {
    Path sheets = out.orElseGet(() -> Production.defaultFolder(plan));
    try (ProgressLine progress = new ProgressLine(spec.commandLine().getErr())) {
      return Production.photographs(plan, sheets, request, progress);
    }
  }

  private int told(PhotographsTaken taken, PrintWriter err) {
    List<String> skipped = taken.found().skipped();
    if (!skipped.isEmpty()) {
      err.println("Not photographs, skipped: " + String.join(", ", skipped));
    }
    if (taken.copied().isEmpty()) {
      err.println("Nothing copied. If the pairing is right, add --accept.");
      return ExitStatus.FINDINGS;
    }
    taken.evened().forEach(err::println);
    taken.kept().forEach(file -> err.println("The photograph before is kept as " + file));
    err.println(Figures.count(taken.copied().size(), "photograph") + " copied into " + taken.to());
    return ExitStatus.DONE;
  }
}
