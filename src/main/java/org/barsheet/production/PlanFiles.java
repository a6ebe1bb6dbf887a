package org.barsheet.production;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.edit.EditedFile;
import org.barsheet.production.publish.KeptName;
import org.barsheet.production.publish.OutputFolder;

/** Writes a plan's changed files and keeps those before. */
final class PlanFiles {

  private PlanFiles() {}

  /**
   * Writes them: all that lie in one folder, or none.
   *
   * @return the files as they were, under the names they are kept by
   * @throws InputException if one cannot be written, or changed since it was read
   */
  static List<Path> write(List<EditedFile> files) {
    Map<Path, List<EditedFile>> byFolder = new LinkedHashMap<>();
    for (EditedFile file : files) {
      Path folder = Objects.requireNonNull(real(file).getParent());
      byFolder.computeIfAbsent(folder, none -> new ArrayList<>()).add(file);
    }
    List<Path> kept = new ArrayList<>();
    byFolder.forEach((folder, own) -> kept.addAll(write(folder, own)));
    return kept;
  }

  /** The file itself, where the plan is named by a link. */
  private static Path real(EditedFile file) {
    try {
      return file.file().toRealPath();
    } catch (IOException gone) {
      throw changed(file);
    }
  }

  private static List<Path> write(Path folder, List<EditedFile> files) {
    List<Path> kept = new ArrayList<>();
    try (OutputFolder out = OutputFolder.open(folder)) {
      for (EditedFile file : files) {
        String name = name(real(file));
        Path before = KeptName.beside(real(file));
        kept.add(
            Files.isSymbolicLink(file.file()) ? before : file.file().resolveSibling(name(before)));
        out.write(
            name(before),
            to -> to.write(file.before()),
            place -> !Files.exists(place, LinkOption.NOFOLLOW_LINKS) && isAsRead(file));
        out.write(name, to -> to.write(file.after()), place -> isAsRead(file));
      }
      List<Path> published = out.publish();
      Optional<EditedFile> left =
          files.stream()
              .filter(file -> !published.contains(folder.resolve(name(real(file)))))
              .findFirst();
      if (left.isPresent()) {
        throw changed(left.get());
      }
    }
    return kept;
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  private static boolean isAsRead(EditedFile file) {
    try {
      return file.isBefore(Files.readAllBytes(file.file()));
    } catch (IOException gone) {
      return false;
    }
  }

  private static InputException changed(EditedFile file) {
    return new InputException(
        Problem.ofFile(
            file.file().toString(), "this file changed while it was read", "run adopt again"));
  }
}
