package org.barsheet.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.barsheet.input.NamesHere;
import org.barsheet.production.Watcher;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The program: one command for each thing a person wants to know or to have made. */
@Command(
    name = "barsheet",
    versionProvider = Version.class,
    mixinStandardHelpOptions = true,
    sortOptions = false,
    synopsisSubcommandLabel = "COMMAND",
    header = "Timing sheets for a frame-by-frame film, from a MIDI score and a director's plan.",
    description = {
      "",
      "From a MIDI file to a sheet the animator can work from:",
      "  barsheet about score.mid                   what is in the file?",
      "  barsheet begin score.mid --out plan.yaml   a first plan to fill in",
      "  barsheet desk plan.yaml                    fill it in, in the browser",
      "  barsheet check plan.yaml                   is it possible, and is anything doubtful?",
      "  barsheet show plan.yaml                    where is every panel, and for how long?",
      "  barsheet make plan.yaml                    write the workbook, the page and the cue files",
      "",
      "Results go to standard output, everything else to standard error.",
      "",
    },
    footer = {
      "",
      "Exit status: 0 done, 1 findings (check, adopt, photographs), 2 wrong usage, 3 bad input, 70"
          + " an internal error.",
    },
    subcommands = {
      MakeCommand.class,
      CheckCommand.class,
      AboutCommand.class,
      ShowCommand.class,
      FindCommand.class,
      BeatsCommand.class,
      FollowCommand.class,
      WhereCommand.class,
      CompareCommand.class,
      AdoptCommand.class,
      BeginCommand.class,
      DeskCommand.class,
      PhotographsCommand.class,
      PackCommand.class,
      CompletionCommand.class,
      HelpCommand.class,
    })
public final class Barsheet implements Runnable {

  private static final int HELP_WIDTH = 100;

  @Spec private CommandSpec spec = CommandSpec.create();

  private final Supplier<Watcher.Pause> pauses;

  Barsheet() {
    this(UntilStopped::listening);
  }

  /**
   * The program.
   *
   * @param pauses what to wait with between two looks at files that are watched
   */
  private Barsheet(Supplier<Watcher.Pause> pauses) {
    this.pauses = pauses;
  }

  Watcher.Pause pause() {
    return pauses.get();
  }

  /** Runs one command and ends with its exit status. */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(out, err, args));
  }

  /** Runs one command with these writers; returns the exit status. */
  static int run(PrintWriter out, PrintWriter err, String... args) {
    return run(new Barsheet(), out, err, args);
  }

  /** Runs one command that watches files with this pause. */
  static int run(PrintWriter out, PrintWriter err, Watcher.Pause pause, String... args) {
    return run(new Barsheet(() -> pause), out, err, args);
  }

  private static int run(Barsheet program, PrintWriter out, PrintWriter err, String... args) {
    CommandLine line =
        new CommandLine(program)
            .setOut(out)
            .setErr(err)
            .registerConverter(Path.class, Barsheet::path)
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setUsageHelpWidth(HELP_WIDTH)
            .setParameterExceptionHandler(Barsheet::wrongUsage)
            .setExecutionExceptionHandler(
                (fault, command, parsed) -> new Faults(command.getErr()).told(fault));
    try {
      return line.execute(args);
    } catch (Error outOfRoom) { // the library hands over exceptions only
      return new Faults(err).told(outOfRoom);
    } finally {
      out.flush();
      err.flush();
    }
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "name a command: " + commands());
  }

  private String commands() {
    List<String> names =
        spec.subcommands().entrySet().stream()
            .filter(command -> !command.getValue().getCommandSpec().helpCommand())
            .map(Map.Entry::getKey)
            .toList();
    int last = names.size() - 1;
    return String.join(", ", names.subList(0, last)) + " or " + names.get(last);
  }

  private static Path path(String name) {
    try {
      return Path.of(name);
    } catch (InvalidPathException impossible) {
      String remedy = NamesHere.remedy(name).map(words -> "; " + words).orElse("");
      throw new TypeConversionException("'" + name + "' can't be a file name" + remedy);
    }
  }

  private static int wrongUsage(ParameterException wrong, String[] args) {
    CommandLine command = wrong.getCommandLine();
    command
        .getErr()
        .println(command.getCommandSpec().qualifiedName() + ": " + UsageWords.of(wrong));
    command.getErr().println("  help: " + command.getCommandSpec().qualifiedName() + " --help");
    return ExitStatus.USAGE;
  }
}
