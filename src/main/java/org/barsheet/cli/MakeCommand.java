package org.barsheet.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.barsheet.production.Extras;
import org.barsheet.production.KeptWorkbook;
import org.barsheet.production.Made;
import org.barsheet.production.MovieAsk;
import org.barsheet.production.Placed;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.barsheet.timing.Finding;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Makes every sheet and file of a film. */
@Command(
    name = "make",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Writes what everyone needs: the workbook, the page, the cue files, timing.json.",
    description = {
      "",
      "All files are written or none; a workbook you changed since it was made is kept beside the new one.",
      "",
    },
    footer = {
      "",
      "Examples:",
      "  barsheet make plan.yaml                  into the folder plan-sheets beside the plan",
      "  barsheet make plan.yaml --out sheets",
      "  barsheet make plan.yaml --sound          with the sound files",
      "  barsheet make plan.yaml --sound-bank orchestra.sf2    with your own instruments",
      "  barsheet make plan.yaml --issue \"second draft\"    before you send it out",
      "  barsheet make plan.yaml --movie          with a movie of the film so far",
      "  barsheet make plan.yaml --movie --from \"panel 2\" --to \"panel 4\"",
      "  barsheet make plan.yaml --guide-videos   with a video for each performer to play along with",
      "  barsheet make plan.yaml --watch          again after every save, until Ctrl-C",
      "  barsheet make plan.yaml --placeholders   with a drawing for every photograph still to take",
      "  barsheet make plan.yaml --paper          with cutting sheets to print and cut",
      "  barsheet make plan.yaml --overlays       with outlines to lay over what the camera sees",
    })
final class MakeCommand implements Callable<Integer> {

  @ParentCommand private Barsheet program = new Barsheet();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "PLAN", description = "The director's plan.")
  private Path plan = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder to write into; by default PLAN's name with -sheets, beside the plan.")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--sound",
      description = "Make the guide track and the click track too (WAV, tens of megabytes).")
  private boolean sound;

  @Option(
      names = "--sound-bank",
      paramLabel = "FILE",
      description =
          "Play the guide track with the instruments of a SoundFont 2 or DLS file; makes the sound"
              + " files too.")
  private Optional<Path> soundBank = Optional.empty();

  @Option(
      names = "--issue",
      paramLabel = "NAME",
      description =
          "Name what you send out, such as \"second draft\"; later runs say what differs from it.")
  private String issue = "";

  @Option(
      names = "--placeholders",
      description = {
        "Draw every photograph still to take under its final name, into the folder photographs.",
        "Photographs already there stay."
      })
  private boolean placeholders;

  @Mixin private MovieOptions movie = new MovieOptions();

  @Option(
      names = "--paper",
      description =
          "Draw what is cut and printed at true size, into the folder paper: cutting sheets, the"
              + " artwork in tiles, slates (PDF and SVG).")
  private boolean paper;

  @Option(
      names = "--overlays",
      description = {
        "Draw the outline of hole and flap as the camera sees them, one for every photograph, into",
        "the folder overlays (SVG of the photograph's size); needs camera and fields in the plan."
      })
  private boolean overlays;

  @Option(
      names = "--anyway",
      description = "Replace the workbook even if a spreadsheet program has it open.")
  private boolean anyway;

  @Mixin private WatchOption repeat = new WatchOption();

  @Override
  public Integer call() {
    if (repeat.watch) {
      CommandLine line = spec.commandLine();
      new Watching<Made>(this::make, Made::film, this::print, line.getOut(), line.getErr())
          .run(plan, program.pause());
    } else {
      print(make());
    }
    return ExitStatus.DONE;
  }

  private void print(Made made) {
    PrintWriter results = spec.commandLine().getOut();
    Set<Path> drawn = Set.copyOf(made.placed().drawn());
    made.files().stream().filter(file -> !drawn.contains(file)).forEach(results::println);
    results.flush();
    PrintWriter err = spec.commandLine().getErr();
    if (placeholders) {
      err.println(placed(made.placed()));
    }
    made.notes().forEach(err::println);
    List<Finding> findings = made.film().findings();
    err.println(
        FindingsText.totals(findings)
            + (findings.isEmpty() ? "" : "; see the workbook's first sheet"));
    made.film().changes().ifPresent(changes -> ChangesText.print(changes, err));
  }

  private static String placed(Placed placed) {
    int stay = placed.photographs().size();
    return Figures.count(placed.drawn().size(), "placeholder")
        + " drawn in the folder photographs; "
        + Figures.count(stay, "photograph")
        + " there already";
  }

  private Extras extras() {
    return new Extras(
        sound || soundBank.isPresent(),
        soundBank,
        placeholders,
        paper,
        overlays,
        issue.strip(),
        movie.ask(spec.commandLine()));
  }

  private Made make() {
    Made made = write();
    PrintWriter err = spec.commandLine().getErr();
    made.kept().ifPresent(kept -> err.println(kept(kept)));
    return made;
  }

  private static String kept(KeptWorkbook kept) {
    if (!kept.readable()) {
      return "the earlier workbook is damaged, so what you typed could not be carried over;\n  it is kept as "
          + kept.file()
          + ": open it in a spreadsheet program that repairs it, and copy what you need";
    }
    int gone = kept.cellsWithoutRow();
    if (gone > 0) {
      return Figures.count(gone, "cell")
          + " you typed into no longer "
          + (gone == 1 ? "has" : "have")
          + " a row; the earlier workbook is kept as "
          + kept.file()
          + (kept.carriedCells() == 0 ? "" : "; the others are carried over");
    }
    return kept.carriedCells() == 0
        ? "nothing you typed could be carried over; your changed workbook is kept as " + kept.file()
        : "what you typed is carried over; your changed workbook is kept as " + kept.file();
  }

  private Made write() {
    Path folder = out.orElseGet(() -> Production.defaultFolder(plan));
    if (!anyway) {
      Production.requireClosedWorkbook(plan, folder);
    }
    Extras extras = extras();
    if (!Terminal.isWatched()) {
      return make(folder, extras, Progress.SILENT);
    }
    try (ProgressLine progress = new ProgressLine(spec.commandLine().getErr())) {
      return make(folder, extras, progress);
    }
  }

  /** A movie takes long enough to be stopped: nothing of it is left then. */
  private Made make(Path folder, Extras extras, Progress progress) {
    if (extras.movie().equals(MovieAsk.NONE)) {
      return Production.make(plan, folder, extras, progress);
    }
    try (StoppedProgress stopped = StoppedProgress.listening(progress)) {
      return Production.make(plan, folder, extras, stopped);
    }
  }
}
