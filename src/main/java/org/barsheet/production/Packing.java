package org.barsheet.production;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.barsheet.exposure.FileNames;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.Handoff;
import org.barsheet.handoff.HandoffFile;
import org.barsheet.handoff.Placeholders;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Plan;
import org.barsheet.plan.read.PlanReader;

/**
 * Gathers what a film is made from and what was made of it: the files the plan names, the
 * photographs taken, the viewers' notes, and of the sheets folder what {@code make} writes there.
 * Nothing else that lies beside them goes in.
 */
final class Packing {

  private static final List<String> NOTES = List.of("-notes.csv", "-notes.json", "-taken.json");

  private final Path planFile;
  private final Path home;
  private final SortedMap<String, Path> files = new TreeMap<>();
  private final List<Path> missing = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private Packing(Path planFile) {
    this.planFile = planFile;
    this.home = whole(planFile.resolveSibling(""));
  }

  /**
   * Packs a film.
   *
   * @param planFile the plan, as seen from the working folder, so that a whole path in the plan can
   *     be told from one that is seen from the plan's folder
   * @param film what the plan makes
   * @param folder with the sheets made last
   * @param zip where to
   */
  static Packed pack(Path planFile, FilmSheet film, Path folder, Path zip) {
    Packing packing = new Packing(planFile);
    packing.addNamed(film.plan());
    packing.addPhotographs(film);
    packing.addSheets(film, folder);
    if (!packing.problems.isEmpty()) {
      throw new InputException(packing.problems);
    }
    Pack.write(zip, packing.files);
    return new Packed(List.copyOf(packing.files.keySet()), packing.missing);
  }

  private static Path whole(Path file) {
    return file.toAbsolutePath().normalize();
  }

  private void addNamed(Plan plan) {
    plan.clips().folder().filter(folder -> !isInside(folder)).ifPresent(this::refuse);
    for (Path file : PlanReader.filesOf(planFile)) {
      if (!isInside(file)) {
        refuse(file);
      } else if (Files.isRegularFile(file)) {
        add(file);
      } else {
        missing.add(file);
      }
    }
    if (problems.isEmpty()) {
      Clips.filesOf(plan).stream().filter(Files::isRegularFile).forEach(this::add);
    }
    for (String ending : NOTES) {
      Path notes = planFile.resolveSibling(Production.name(planFile) + ending);
      if (Files.isRegularFile(notes)) {
        add(notes);
      }
    }
  }

  private void addPhotographs(FilmSheet film) {
    List<String> planned =
        Placeholders.files(film).stream()
            .map(file -> file.path().replaceFirst(".*/", "").replaceFirst("\\.png$", ""))
            .toList();
    film.taken().kept(planned).forEach(this::add);
  }

  /** Whether a file the plan names will be found beside a copy of the plan elsewhere. */
  private boolean isInside(Path named) {
    boolean wholePath = named.isAbsolute() && !planFile.isAbsolute();
    return !wholePath && whole(named).startsWith(home);
  }

  private void refuse(Path file) {
    String sentence = "a copy elsewhere won't find " + file;
    String remedy = "Move it into the plan's folder and write its path from there.";
    problems.add(Problem.ofFile(planFile.toString(), sentence, remedy));
  }

  private void add(Path file) {
    files.put(slashed(home.relativize(whole(file))), file);
  }

  /** The sheets lie where {@code make} looks for them, wherever they lie now. */
  private void addSheets(FilmSheet film, Path folder) {
    String there = Production.defaultFolder(Path.of(Production.name(planFile))).toString();
    for (String name : sheetNames(film, folder)) {
      Path file = folder.resolve(name);
      if (Files.isRegularFile(file)) {
        files.put(there + "/" + name, file);
      }
    }
  }

  private Set<String> sheetNames(FilmSheet film, Path folder) {
    String name = Production.name(planFile);
    Set<String> names = new LinkedHashSet<>();
    names.add(name + ".html");
    names.add(name + ".xlsx");
    names.add(FileNames.click(name));
    names.add(FileNames.guide(name));
    names.add(KeptPlaces.FILE);
    NOTES.forEach(ending -> names.add(name + ending));
    Stream.of(Handoff.documents(film, name), Placeholders.files(film))
        .flatMap(List::stream)
        .map(HandoffFile::path)
        .forEach(names::add);
    names.addAll(keptWorkbooks(folder, name));
    return names;
  }

  private static List<String> keptWorkbooks(Path folder, String name) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    String kept = Pattern.quote(name) + "-kept-\\d+\\.xlsx";
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(file -> file.matches(kept))
          .toList();
    } catch (IOException unreadable) {
      throw new InputException(
          Problem.ofFile(
              folder.toString(),
              "this folder cannot be read",
              "Check that you're allowed to open it."));
    }
  }

  private static String slashed(Path path) {
    return path.toString().replace('\\', '/');
  }
}
