package org.barsheet.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.barsheet.adoption.Carried;
import org.barsheet.production.Adopted;
import org.barsheet.production.Production;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Moves a plan onto a new version of its score. */
@Command(
    name = "adopt",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Rewrites a plan for a new version of its score, so everything stays on its music.",
    description = {
      "",
      "For when the composer sends a new version. Moves returns, bars, marks, pins and places counted",
      "into panels to where their music is now. Nothing else in the plan changes, and the old plan is",
      "kept beside it. What can't be carried over is left for you to decide. Reads the old version from",
      "its sheets, so the old file may be gone.",
      "",
    },
    footer = {
      "",
      "Examples:",
      "  barsheet adopt plan.yaml new.mid --preview     what would change?",
      "  barsheet adopt plan.yaml new.mid",
      "",
      "Ends with status 1 if something is left to decide.",
    })
final class AdoptCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "PLAN", description = "The director's plan.")
  private Path plan = Path.of("");

  @Parameters(index = "1", paramLabel = "SCORE", description = "The new version of its score.")
  private Path score = Path.of("");

  @Option(names = "--preview", description = "Print what would change and write nothing.")
  private boolean preview;

  @Option(
      names = "--timecodes",
      description = "Move timecodes with the music too; by default they stay as they are.")
  private boolean timecodes;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder of the sheets made from the old version; by default PLAN's name with -sheets.")
  private Optional<Path> out = Optional.empty();

  @Mixin private FormatOption form = new FormatOption();

  @Override
  public Integer call() {
    Path folder = out.orElseGet(() -> Production.defaultFolder(plan));
    Adopted adopted = Production.adopt(plan, score, folder, timecodes, !preview);
    PrintWriter results = spec.commandLine().getOut();
    if (form.as == As.TEXT) {
      printText(adopted.carried(), results);
    } else {
      table(adopted.carried()).print(form.as, results);
    }
    results.flush();
    tell(adopted, spec.commandLine().getErr());
    boolean asked = adopted.carried().stream().anyMatch(Carried::isAsked);
    return asked ? ExitStatus.FINDINGS : ExitStatus.DONE;
  }

  private static void printText(List<Carried> carried, PrintWriter results) {
    Table places = new Table("place", "before", "now");
    for (Carried one : carried) {
      places.add(one.of(), with(one.before(), one.beforeAt()), nowOf(one));
    }
    places.print(As.TEXT, results);
    carried.stream()
        .filter(Carried::isAsked)
        .forEach(
            one -> {
              results.println();
              results.println(one.of() + ": " + one.question() + ".");
              results.println("  " + choice(one.nearest()));
            });
  }

  private static String with(String words, String bar) {
    return bar.isEmpty() ? words : words + " (" + bar + ")";
  }

  private static String nowOf(Carried one) {
    if (one.isAsked()) {
      return "?";
    }
    boolean same = !one.isChanged() && one.beforeAt().equals(one.nowAt());
    String words = same ? "the same" : with(one.now(), one.nowAt());
    return one.otherNotes() ? words + ", different notes" : words;
  }

  private static String choice(List<String> nearest) {
    return nearest.isEmpty()
        ? "Write another place."
        : "Write another place; nearest: " + String.join(", ", nearest) + ".";
  }

  private static Table table(List<Carried> carried) {
    Table table =
        new Table(
            "place", "before", "before_at", "now", "now_at", "other_notes", "question", "nearest");
    for (Carried one : carried) {
      table.add(
          one.of(),
          one.before(),
          one.beforeAt(),
          one.now(),
          one.nowAt(),
          one.otherNotes(),
          one.question(),
          String.join("; ", one.nearest()));
    }
    return table;
  }

  private void tell(Adopted adopted, PrintWriter err) {
    long changed = adopted.carried().stream().filter(Carried::isChanged).count();
    long asked = adopted.carried().stream().filter(Carried::isAsked).count();
    String counts =
        Figures.count(changed, "change")
            + (asked == 0 ? "" : ", " + asked + " left for you to decide");
    if (preview) {
      err.println(counts + ". Nothing written.");
    } else if (adopted.kept().isEmpty()) {
      err.println(plan + " stays as it is: " + counts + ".");
    } else {
      String kept = String.join(", ", adopted.kept().stream().map(Path::toString).toList());
      err.println(plan + " rewritten: " + counts + ". The old plan: " + kept);
    }
  }
}
