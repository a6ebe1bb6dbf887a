package org.barsheet.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.FilmLayouts;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Says what is doubtful or wrong about a film before anything is written. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Lists what's wrong or doubtful in a plan, grouped by who must act. Writes nothing.",
    footer = {
      "",
      "Examples:",
      "  barsheet check plan.yaml",
      "  barsheet check plan.yaml --fail-on warning && echo all well",
      "  barsheet check plan.yaml --format json",
      "  barsheet check plan.yaml --watch         again after every save, until Ctrl-C",
      "  barsheet check plan.yaml --alternatives 5   how else could the panels go, and at what cost?",
    })
final class CheckCommand implements Callable<Integer> {

  private static final int MOST_LAYOUTS = 100;

  @ParentCommand private Barsheet program = new Barsheet();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "PLAN", description = "The director's plan.")
  private Path plan = Path.of("");

  @Option(
      names = "--fail-on",
      paramLabel = "LEVEL",
      converter = SeverityConverter.class,
      description =
          "End with status 1 if there is a finding of this level or worse: remark, warning or error.")
  private List<Severity> failOn = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder of the last sheets, which hold the frames of locked panels and photographed"
              + " reveals; by default PLAN's name with -sheets.")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--alternatives",
      paramLabel = "N",
      description =
          "Prints N layouts instead of findings: the best one, then others that really differ, with what"
              + " differs and what each costs.")
  private Optional<Integer> alternatives = Optional.empty();

  @Option(names = "--all", description = "Print each finding with its remedy, without grouping.")
  private boolean all;

  @Mixin private WatchOption repeat = new WatchOption();

  @Mixin private FormatOption form = new FormatOption();

  @Override
  public Integer call() {
    checkOptions();
    if (alternatives.isPresent()) {
      printLayouts(alternatives.get());
      return ExitStatus.DONE;
    }
    if (repeat.watch) {
      watch();
      return ExitStatus.DONE;
    }
    List<Finding> findings = film().findings();
    print(findings, form.as, spec.commandLine().getOut());
    return findings.stream().anyMatch(this::isFailure) ? ExitStatus.FINDINGS : ExitStatus.DONE;
  }

  private FilmSheet film() {
    return Production.film(plan, folder(), Progress.SILENT);
  }

  private Path folder() {
    return out.orElseGet(() -> Production.defaultFolder(plan));
  }

  private boolean isFailure(Finding finding) {
    return failOn.stream().anyMatch(level -> finding.severity().compareTo(level) >= 0);
  }

  private void checkOptions() {
    boolean counted = alternatives.filter(asked -> asked < 1 || asked > MOST_LAYOUTS).isEmpty();
    refuseUnless(counted, "--alternatives takes a number from 1 to " + MOST_LAYOUTS);
    refuseUnless(
        alternatives.isEmpty() || failOn.isEmpty(),
        "--alternatives prints no findings: leave out --fail-on");
    refuseUnless(
        !repeat.watch || (alternatives.isEmpty() && failOn.isEmpty() && form.as == As.TEXT),
        "--watch prints text until you stop it: use it alone");
  }

  private void refuseUnless(boolean good, String sentence) {
    if (!good) {
      throw new ParameterException(spec.commandLine(), sentence);
    }
  }

  private void watch() {
    PrintWriter results = spec.commandLine().getOut();
    new Watching<FilmSheet>(
            this::film,
            film -> film,
            film -> print(film.findings(), As.TEXT, results),
            results,
            spec.commandLine().getErr())
        .run(plan, program.pause());
  }

  private void printLayouts(int asked) {
    FilmLayouts best = Production.layouts(plan, folder(), asked);
    PrintWriter results = spec.commandLine().getOut();
    if (form.as == As.TEXT) {
      LayoutsText.print(best, asked, results);
    } else {
      LayoutsText.table(best).print(form.as, results);
    }
  }

  private void print(List<Finding> findings, As as, PrintWriter out) {
    if (as == As.TEXT && all) {
      FindingsText.printAll(findings, out);
    } else if (as == As.TEXT) {
      FindingsText.printShort(findings, out);
    } else {
      table(findings).print(as, out);
    }
  }

  private static Table table(List<Finding> findings) {
    Table table =
        new Table("severity", "concerns", "panel", "place", "frame", "sentence", "remedy");
    for (Finding finding : findings) {
      table.add(
          finding.severity().name().toLowerCase(Locale.ROOT),
          finding.concerns().name().toLowerCase(Locale.ROOT),
          finding.panel(),
          finding.place(),
          finding.frame().isPresent() ? finding.frame().getAsLong() : "",
          finding.sentence(),
          finding.remedy());
    }
    return table;
  }

  /** Reads the lower-case words used on the command line. */
  static final class SeverityConverter implements ITypeConverter<Severity> {
    @Override
    public Severity convert(String value) {
      for (Severity severity : Severity.values()) {
        if (severity.name().toLowerCase(Locale.ROOT).equals(value)) {
          return severity;
        }
      }
      throw new TypeConversionException("'" + value + "' is not one of remark, warning, error");
    }
  }
}
