package org.barsheet.photographs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;

/**
 * A folder of photographs in the order they were taken: by the time in their EXIF where every one
 * has it, else by their names as people count.
 *
 * @param photographs in that order
 * @param byTime whether times or names gave the order
 * @param skipped names of files that are no photographs
 */
public record TakenFolder(List<Taken> photographs, boolean byTime, List<String> skipped) {

  private static final Comparator<Taken> BY_NAME =
      Comparator.comparing(Taken::name, new NaturalOrder());

  public TakenFolder {
    photographs = List.copyOf(photographs);
    skipped = List.copyOf(skipped);
  }

  /**
   * Looks into a folder; folders in it are not looked into.
   *
   * @throws InputException naming every image in it that cannot be used
   */
  public static TakenFolder read(Path folder) {
    List<Taken> taken = new ArrayList<>();
    List<String> skipped = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    List<Path> files = files(folder);
    Set<String> readable = new HashSet<>();
    files.stream().filter(TakenFolder::isReadKind).forEach(file -> readable.add(stem(file)));
    for (Path file : files) {
      try {
        FileKind kind = PhotographReader.kind(file);
        boolean beside = !kind.isRead() && readable.contains(stem(file));
        if ((kind == FileKind.OTHER && !hasPhotographsName(file)) || beside) {
          skipped.add(String.valueOf(file.getFileName()));
        } else {
          taken.add(new Taken(file, PhotographReader.facts(file)));
        }
      } catch (UnreadablePhotographException unreadable) {
        String sentence = "the photograph " + unreadable.reason();
        problems.add(Problem.ofFile(file.toString(), sentence, unreadable.remedy()));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    boolean byTime =
        !taken.isEmpty() && taken.stream().noneMatch(one -> one.facts().taken().isEmpty());
    Comparator<Taken> order =
        byTime
            ? Comparator.comparing((Taken one) -> one.facts().taken()).thenComparing(BY_NAME)
            : BY_NAME;
    return new TakenFolder(taken.stream().sorted(order).toList(), byTime, skipped);
  }

  private static List<Path> files(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new InputException(
          Problem.ofFile(
              folder.toString(), "there is no such folder", "check the name and the folder"));
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> !String.valueOf(file.getFileName()).startsWith("."))
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    } catch (IOException unreadable) {
      throw new InputException(
          Problem.ofFile(
              folder.toString(),
              "this folder cannot be read",
              "check that you're allowed to open it"));
    }
  }

  private static boolean isReadKind(Path file) {
    try {
      return PhotographReader.kind(file).isRead();
    } catch (UnreadablePhotographException unreadable) {
      return false;
    }
  }

  private static boolean hasPhotographsName(Path file) {
    return String.valueOf(file.getFileName()).matches("(?i).*\\.(jpe?g|png)");
  }

  /** Cameras write a raw file and a JPEG of one name. */
  private static String stem(Path file) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return (dot > 0 ? name.substring(0, dot) : name).toLowerCase(Locale.ROOT);
  }

  /** Whether times and names tell two different orders. */
  public boolean isRenamed() {
    return byTime && !photographs.stream().sorted(BY_NAME).toList().equals(photographs);
  }
}
