package org.barsheet.production;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Plan;

/**
 * The files that {@code make} reads. None of them is replaced by what it writes.
 *
 * @param files there or not
 */
record ReadFiles(Set<Path> files) {

  static ReadFiles of(Plan plan, Extras extras) {
    Set<Path> files = new LinkedHashSet<>();
    files.add(plan.text().file());
    files.add(plan.music().score());
    plan.text().table().ifPresent(files::add);
    plan.music().recording().ifPresent(recording -> files.add(recording.file()));
    plan.panels().forEach(panel -> panel.drawing().ifPresent(files::add));
    files.addAll(Clips.filesOf(plan));
    extras.soundBank().ifPresent(files::add);
    return new ReadFiles(files);
  }

  /**
   * Makes sure that none of them would be replaced.
   *
   * @param written paths of what is to be written into a folder
   * @throws InputException naming all that would be
   */
  void refuseToReplace(Path folder, Stream<String> written) {
    Map<String, List<Path>> targets =
        written.map(folder::resolve).collect(Collectors.groupingBy(ReadFiles::bareName));
    List<Problem> problems =
        files.stream()
            .filter(file -> isOneOf(targets, file))
            .map(
                file ->
                    Problem.ofFile(
                        file.toString(),
                        "make reads this file and would overwrite it",
                        "name another folder with --out"))
            .toList();
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  /** Names that differ in case, or in how letters are composed, are one name on some disks. */
  private static String bareName(Path file) {
    String name = String.valueOf(file.getFileName());
    return Normalizer.normalize(name, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
  }

  /** Whether a file, or what it leads to where it is a link, is among some targets. */
  private static boolean isOneOf(Map<String, List<Path>> targets, Path file) {
    return Stream.of(place(file), whereItLeads(file))
        .anyMatch(
            place ->
                targets.getOrDefault(bareName(place), List.of()).stream()
                    .anyMatch(target -> isSame(place, target)));
  }

  private static boolean isSame(Path place, Path target) {
    try {
      return place.equals(place(target)) || Files.isSameFile(place, target);
    } catch (IOException oneIsNotThere) {
      return false;
    }
  }

  private static Path whereItLeads(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException notThere) {
      return file;
    }
  }

  /** Where a file is or would be, by the real path of its folder. */
  private static Path place(Path file) {
    Path absolute = file.toAbsolutePath();
    Path parent = absolute.getParent();
    return parent == null
        ? absolute
        : whereItLeads(parent).resolve(String.valueOf(absolute.getFileName()));
  }
}
