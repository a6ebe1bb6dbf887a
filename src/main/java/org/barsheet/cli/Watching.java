package org.barsheet.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.production.Watcher;
import org.barsheet.timing.Finding;
import org.barsheet.timing.LaidPanel;
import org.barsheet.timing.PanelChange;

/**
 * A command that is repeated after every save. The first result is printed whole, later ones by
 * what moved; a save that cannot be used is told, and the next one is waited for.
 *
 * @param <T> what the command makes
 */
final class Watching<T> {

  private final Supplier<T> work;
  private final Function<T, FilmSheet> film;
  private final Consumer<T> printWhole;
  private final PrintWriter out;
  private final PrintWriter err;
  private Optional<FilmSheet> last = Optional.empty();

  /**
   * A command to repeat.
   *
   * @param work what is done each time
   * @param film the film in its result
   * @param printWhole prints the first result
   */
  Watching(
      Supplier<T> work,
      Function<T, FilmSheet> film,
      Consumer<T> printWhole,
      PrintWriter out,
      PrintWriter err) {
    this.work = work;
    this.film = film;
    this.printWhole = printWhole;
    this.out = out;
    this.err = err;
  }

  /** Works until the pause says to end. */
  void run(Path plan, Watcher.Pause pause) {
    try (pause) {
      new Watcher(plan, saved -> step(plan, saved), pause).run();
    }
  }

  private void step(Path plan, Set<Path> saved) {
    try {
      T result = work.get();
      if (last.isEmpty()) {
        printWhole.accept(result);
      } else {
        printChanges(saved, last.get(), film.apply(result));
      }
      last = Optional.of(film.apply(result));
    } catch (InputException wrong) {
      wrong.problems().forEach(err::println);
      err.println("fix this and save again; nothing was changed");
    }
    out.flush();
    if (saved.isEmpty()) {
      err.println("watching " + plan + " and the files it names; Ctrl-C stops");
    }
  }

  private void printChanges(Set<Path> saved, FilmSheet before, FilmSheet now) {
    String files =
        saved.stream()
            .map(file -> String.valueOf(file.getFileName()))
            .collect(Collectors.joining(", "));
    List<String> moved =
        PanelChange.sentences(
            PanelChange.between(
                LaidPanel.of(before.timing().shots()), LaidPanel.of(now.timing().shots())));
    out.println(files + " saved: " + (moved.isEmpty() ? "nothing moved" : "panels moved"));
    moved.forEach(sentence -> out.println("  " + sentence));
    notIn(before, now).forEach(finding -> out.println("  new: " + FindingsText.line(finding)));
    notIn(now, before).forEach(finding -> out.println("  gone: " + FindingsText.line(finding)));
    out.println(FindingsText.totals(now.findings()));
  }

  /** Findings of one film that another does not have, wherever they are seen. */
  private static List<Finding> notIn(FilmSheet other, FilmSheet film) {
    return film.findings().stream()
        .filter(finding -> other.findings().stream().noneMatch(known -> isSame(known, finding)))
        .toList();
  }

  private static boolean isSame(Finding one, Finding other) {
    return one.severity() == other.severity()
        && one.panel().equals(other.panel())
        && one.sentence().equals(other.sentence());
  }
}
