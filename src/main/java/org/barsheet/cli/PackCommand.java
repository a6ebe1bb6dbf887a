package org.barsheet.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.barsheet.production.Packed;
import org.barsheet.production.Production;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Gathers all files of a film in one. */
@Command(
    name = "pack",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Packs a film into one zip for another machine, a colleague or a backup.",
    description = {
      "",
      "It holds the plan, the files it names and the sheets folder, with their checksums (SHA-256).",
      "Unpacked elsewhere, make writes the same bytes. All files must be in the plan's folder.",
      "",
    },
    footer = {
      "",
      "Examples:",
      "  barsheet pack plan.yaml film.zip",
      "  barsheet pack plan.yaml film.zip --out sheets   with the sheets made there",
      "",
      "Unpacked, check it with: sha256sum --check SHA256SUMS",
    })
final class PackCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "PLAN", description = "The director's plan.")
  private Path plan = Path.of("");

  @Parameters(
      index = "1",
      paramLabel = "ZIP",
      description = "File to write. An existing file is never replaced.")
  private Path zip = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder of the last sheets; by default PLAN's name with -sheets. Packed under that"
              + " name, where make looks for it.")
  private Optional<Path> out = Optional.empty();

  @Override
  public Integer call() {
    Path folder = out.orElseGet(() -> Production.defaultFolder(plan));
    Packed packed = Production.pack(plan, folder, zip);
    PrintWriter results = spec.commandLine().getOut();
    packed.files().forEach(results::println);
    results.flush();
    PrintWriter err = spec.commandLine().getErr();
    packed.missing().forEach(file -> err.println("Not packed, missing: " + file));
    err.println(Figures.count(packed.files().size(), "file") + " packed into " + zip);
    return ExitStatus.DONE;
  }
}
