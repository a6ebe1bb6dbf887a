package org.barsheet.production;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.photographs.CheckedPhotograph;
import org.barsheet.photographs.CheckedSequence;
import org.barsheet.photographs.EvenedPhotograph;
import org.barsheet.photographs.PhotographReader;
import org.barsheet.photographs.PlannedPhotograph;
import org.barsheet.photographs.PlannedSequence;
import org.barsheet.photographs.PlannedSequences;
import org.barsheet.photographs.SequenceCheck;
import org.barsheet.photographs.SequenceReport;
import org.barsheet.photographs.Taken;
import org.barsheet.photographs.TakenFolder;
import org.barsheet.photographs.UnreadablePhotographException;
import org.barsheet.plan.Film;
import org.barsheet.production.publish.OutputFolder;

/** Takes in photographs: checks them, and copies them under their permanent names. */
final class Photographing {

  private final FilmSheet film;
  private final Path to;
  private final PhotographRequest request;

  private Photographing(FilmSheet film, Path planFile, PhotographRequest request) {
    this.film = film;
    this.to = folder(planFile);
    this.request = request;
  }

  /** Where a plan's photographs are kept: beside it. */
  static Path folder(Path planFile) {
    return planFile.resolveSibling("photographs");
  }

  /**
   * Takes them in.
   *
   * @throws InputException if one cannot be read, or the plan has no such photographs
   */
  static PhotographsTaken take(
      FilmSheet film, Path planFile, PhotographRequest request, Progress progress) {
    return new Photographing(film, planFile, request).take(progress);
  }

  private PhotographsTaken take(Progress progress) {
    PlannedSequence planned = planned();
    TakenFolder found = TakenFolder.read(request.folder());
    if (found.photographs().isEmpty()) {
      throw new InputException(
          Problem.ofFile(
              request.folder().toString(),
              "this folder has no photographs",
              "give a folder with JPEG or PNG photographs"));
    }
    progress.step("looking at the photographs");
    Film settings = film.plan().film();
    CheckedSequence checked =
        SequenceCheck.of(
            planned,
            found.photographs(),
            first(planned),
            film.plan().workshop().tolerances(),
            settings.width(),
            settings.height(),
            () -> {});
    if (checked.isUnclear() && !request.accept()) {
      return new PhotographsTaken(checked, found, to, List.of(), List.of(), List.of());
    }
    progress.step("copying the photographs");
    return copied(checked, found);
  }

  private PlannedSequence planned() {
    PlannedSequence whole = new PlannedSequences(film.plan(), film.shooting()).called(request.of());
    OptionalInt from = request.from();
    if (from.isEmpty()) {
      return whole;
    }
    return whole
        .from(from.getAsInt())
        .orElseThrow(
            () ->
                new InputException(
                    Problem.ofFile(
                        film.plan().text().file().toString(),
                        whole.name() + " has no photograph " + from.getAsInt(),
                        "give a number from 0 to " + (whole.photographs().size() - 1))));
  }

  /** Retakes are compared with the photograph that the whole movement was compared with. */
  private Optional<Taken> first(PlannedSequence planned) {
    if (request.from().isEmpty()) {
      return Optional.empty();
    }
    Path report = to.resolve(SequenceReport.fileName(planned.name()));
    if (!Files.isRegularFile(report)) {
      return Optional.empty();
    }
    return SequenceReport.read(report).photographs().stream()
        .limit(1)
        .map(photo -> to.resolve(photo.file()))
        .flatMap(file -> taken(file).stream())
        .findFirst();
  }

  private static Optional<Taken> taken(Path file) {
    try {
      return Optional.of(new Taken(file, PhotographReader.facts(file)));
    } catch (UnreadablePhotographException gone) {
      return Optional.empty();
    }
  }

  private PhotographsTaken copied(CheckedSequence checked, TakenFolder found) {
    List<Path> kept = new ArrayList<>();
    List<Path> inTheWay = new ArrayList<>();
    List<Path> copied = new ArrayList<>();
    List<String> done = new ArrayList<>();
    try (OutputFolder out = OutputFolder.open(to)) {
      List<Long> bytes = new ArrayList<>();
      for (CheckedPhotograph one : checked.photographs()) {
        Path source = one.taken().file();
        bytes.add(Files.size(source));
        keep(one.planned(), source, out, kept, inTheWay);
        String name = one.planned().fileName() + one.taken().ending();
        out.write(name, to -> Files.copy(source, to));
        copied.add(to.resolve(name));
        out.write(
            SequenceReport.smallName(one.planned().name()), to -> to.write(one.small().jpeg()));
      }
      SequenceReport report = report(SequenceReport.of(checked, bytes));
      if (request.even()) {
        for (EvenedPhotograph one : evened(checked)) {
          out.write(one.fileName(), one::writeTo);
          done.add(one.done());
        }
      }
      out.write(SequenceReport.fileName(checked.name()), to -> to.write(report.json()));
      out.publish();
      removeOtherEndings(inTheWay, copied);
    } catch (IOException gone) {
      throw new InputException(
          Problem.ofFile(
              request.folder().toString(),
              "a photograph went away while it was copied",
              "try again"));
    }
    return new PhotographsTaken(checked, found, to, copied, kept, done);
  }

  private static List<EvenedPhotograph> evened(CheckedSequence checked) {
    return checked.photographs().stream()
        .map(
            one ->
                new EvenedPhotograph(
                    one, one.taken().facts().width(), one.taken().facts().height()))
        .toList();
  }

  private SequenceReport report(SequenceReport now) {
    Path file = to.resolve(SequenceReport.fileName(now.sequence()));
    return request.from().isPresent() && Files.isRegularFile(file)
        ? SequenceReport.read(file).with(now)
        : now;
  }

  /** Whatever has a photograph's name already gets another one, unless it is the same. */
  private void keep(
      PlannedPhotograph planned,
      Path source,
      OutputFolder out,
      List<Path> kept,
      List<Path> inTheWay)
      throws IOException {
    for (Path there : PhotographFiles.named(to, planned.fileName())) {
      if (Files.mismatch(there, source) >= 0) {
        Path free = PhotographFiles.keptBeside(there);
        out.write(
            String.valueOf(free.getFileName()),
            to -> Files.copy(there, to),
            place -> !Files.exists(place, LinkOption.NOFOLLOW_LINKS));
        kept.add(free);
        inTheWay.add(there);
      }
    }
  }

  /** A JPEG that takes the place of a PNG: the PNG is kept by its other name. */
  private static void removeOtherEndings(List<Path> inTheWay, List<Path> copied)
      throws IOException {
    for (Path there : inTheWay) {
      if (!copied.contains(there)) {
        Files.deleteIfExists(there);
      }
    }
  }
}
