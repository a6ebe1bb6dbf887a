package org.barsheet.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.barsheet.clock.FrameRate;
import org.barsheet.desk.Desk;
import org.barsheet.production.Production;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Opens a plan in the browser. */
@Command(
    name = "desk",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header =
        "Opens the plan in your browser, to make and change it with the music in front of you.",
    description = {
      "",
      "The plan's file stays the truth: what you change in the browser is written into it, and what"
          + " you change in the file shows in the browser. Only this computer can open the page."
          + " Ctrl-C closes the desk.",
      "",
    },
    footer = {
      "",
      "Examples:",
      "  barsheet desk plan.yaml",
      "  barsheet desk score.mid                  begins a plan, score.yaml beside it",
    })
final class DeskCommand implements Callable<Integer> {

  private static final FrameRate FIRST_RATE = FrameRate.parse("24");

  @ParentCommand private Barsheet program = new Barsheet();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "PLAN", description = "The director's plan, or a score (.mid).")
  private Path given = Path.of("");

  @Override
  public Integer call() {
    Desk.run(plan(), program.pause(), this::tell, this::tellFault);
    return ExitStatus.DONE;
  }

  /** The plan, begun where there is only a score. */
  private Path plan() {
    if (!given.toString().toLowerCase(Locale.ROOT).matches(".*\\.midi?")) {
      return given;
    }
    String name = Production.name(given);
    Path plan = given.resolveSibling(name + ".yaml");
    if (!Files.exists(plan)) {
      Production.begin(given, plan, name, FIRST_RATE);
      spec.commandLine().getErr().println("began " + plan + " at " + FIRST_RATE + " fps");
    }
    return plan;
  }

  private void tellFault(Throwable fault) {
    PrintWriter err = spec.commandLine().getErr();
    err.println("Internal error. Your files are unchanged. Please report it: " + fault);
    err.flush();
  }

  private void tell(Desk.Opened opened) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(opened.address());
    out.flush();
    PrintWriter err = spec.commandLine().getErr();
    err.println(
        opened.already()
            ? "the desk is open already: open this address"
            : "open this address in a browser on this computer; Ctrl-C closes the desk");
    if (Terminal.isWatched()) {
      opener().ifPresent(words -> open(words, opened.address()));
    }
  }

  /** What opens an address here; nothing where there is no screen to open it on. */
  private static Optional<List<String>> opener() {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.contains("windows")) {
      return Optional.of(List.of("rundll32", "url.dll,FileProtocolHandler"));
    }
    if (system.contains("mac")) {
      return Optional.of(List.of("open"));
    }
    boolean screen = System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
    return screen ? Optional.of(List.of("xdg-open")) : Optional.empty();
  }

  private static void open(List<String> opener, String address) {
    List<String> words = new ArrayList<>(opener);
    words.add(address);
    try {
      new ProcessBuilder(words)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException noOpener) {
      // The address is printed; a person opens it.
    }
  }
}
