package org.barsheet.production.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.edit.EditedFile;

/** Writes a plan's changed files. */
public final class PlanFiles {

  private PlanFiles() {}

  /**
   * Writes them and keeps those before: all that lie in one folder, or none.
   *
   * @return the files as they were, under the names they are kept by
   * @throws InputException if one cannot be written, or changed since it was read
   */
  public static List<Path> write(List<EditedFile> files) {
    return write(files, files);
  }

  /**
   * Writes them and keeps some of those before: all that lie in one folder, or none.
   *
   * @param kept those of the files that are kept as they were
   * @return their names
   * @throws InputException if one cannot be written, or changed since it was read
   */
  public static List<Path> write(List<EditedFile> files, Collection<EditedFile> kept) {
    Map<Path, List<EditedFile>> byFolder = new LinkedHashMap<>();
    for (EditedFile file : files) {
      Path folder = Objects.requireNonNull(real(file).getParent());
      byFolder.computeIfAbsent(folder, none -> new ArrayList<>()).add(file);
    }
    List<Path> names = new ArrayList<>();
    byFolder.forEach((folder, own) -> names.addAll(write(folder, own, kept)));
    return names;
  }

  /** The file itself, where the plan is named by a link. */
  private static Path real(EditedFile file) {
    try {
      return file.file().toRealPath();
    } catch (IOException gone) {
      throw changed(file);
    }
  }

  private static List<Path> write(
      Path folder, List<EditedFile> files, Collection<EditedFile> keeping) {
    List<Path> kept = new ArrayList<>();
    try (OutputFolder out = OutputFolder.open(folder)) {
      for (EditedFile file : files) {
        if (keeping.contains(file)) {
          kept.add(keep(file, out));
        }
        out.write(name(real(file)), to -> to.write(file.after()), place -> isAsRead(file));
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

  private static Path keep(EditedFile file, OutputFolder out) {
    Path before = KeptName.beside(real(file));
    out.write(
        name(before),
        to -> to.write(file.before()),
        place -> !Files.exists(place, LinkOption.NOFOLLOW_LINKS) && isAsRead(file));
    return Files.isSymbolicLink(file.file()) ? before : file.file().resolveSibling(name(before));
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
        Problem.ofFile(file.file().toString(), "this file changed while it was read", "try again"));
  }
}
