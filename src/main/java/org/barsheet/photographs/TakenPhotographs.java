package org.barsheet.photographs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.barsheet.exposure.FileNames;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.pixels.Reduced;
import org.barsheet.pixels.SmallJpeg;

/**
 * The photographs in the folder beside a plan.
 *
 * @param folder they are in
 * @param files of photographs by the names of their files without endings
 * @param reports on sequences, in the order of their names
 */
public record TakenPhotographs(Path folder, Map<String, Path> files, List<SequenceReport> reports) {

  /** None taken yet. */
  public static final TakenPhotographs NONE =
      new TakenPhotographs(Path.of(""), Map.of(), List.of());

  private static final int SMALL = 960;
  private static final String ENDING = "(?i)\\.(jpe?g|png)$";

  public TakenPhotographs {
    files = Map.copyOf(files);
    reports = List.copyOf(reports);
  }

  /**
   * What a folder holds; nothing where there is none.
   *
   * @param sequences names of those there may be
   * @throws InputException if a report is damaged
   */
  public static TakenPhotographs in(Path folder, Collection<String> sequences) {
    if (!Files.isDirectory(folder)) {
      return NONE;
    }
    Map<String, Path> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      all.filter(Files::isRegularFile)
          .sorted()
          .forEach(
              file -> {
                String name = String.valueOf(file.getFileName());
                String stem = name.replaceFirst(ENDING, "");
                if (!stem.equals(name)) {
                  files.putIfAbsent(stem, file);
                }
              });
    } catch (IOException unreadable) {
      return NONE;
    }
    List<SequenceReport> reports = new ArrayList<>();
    for (String sequence : sequences) {
      Path report = folder.resolve(SequenceReport.fileName(sequence));
      if (Files.isRegularFile(report)) {
        reports.add(SequenceReport.read(report));
      }
    }
    return new TakenPhotographs(folder, files, reports);
  }

  /**
   * Every file that is kept of some photographs: themselves, their small and evened copies, and the
   * reports on their sequences.
   *
   * @param stems names of their files without endings
   */
  public List<Path> kept(Collection<String> stems) {
    List<Path> kept = new ArrayList<>();
    for (String stem : stems) {
      if (files.containsKey(stem)) {
        kept.add(files.get(stem));
        kept.add(folder.resolve("small").resolve(stem + ".jpg"));
        kept.add(folder.resolve("evened").resolve(stem + ".jpg"));
      }
    }
    reports.forEach(report -> kept.add(folder.resolve(SequenceReport.fileName(report.sequence()))));
    return kept.stream().filter(Files::isRegularFile).toList();
  }

  /** Whether a photograph was taken. */
  public boolean has(String photograph) {
    return file(photograph).isPresent();
  }

  /** Its file, where it was taken. */
  public Optional<Path> file(String photograph) {
    return Optional.ofNullable(files.get(FileNames.ofPhotograph(photograph)));
  }

  /** What is known of a photograph, where it was looked at. */
  public Optional<SequenceReport.Photo> report(String photograph) {
    return reports.stream()
        .flatMap(report -> report.photographs().stream())
        .filter(one -> one.name().equals(photograph))
        .findFirst();
  }

  /** Permanent names of what has to be taken again, in the order of the plan. */
  public List<String> again() {
    return reports.stream()
        .flatMap(report -> report.photographs().stream())
        .filter(SequenceReport.Photo::isToTakeAgain)
        .map(SequenceReport.Photo::name)
        .toList();
  }

  /**
   * A JPEG of it at most 480 pixels wide: the one made when it was looked at, or made now where its
   * file is another one; nothing where it is not there or cannot be read.
   */
  public Optional<byte[]> small(String photograph) {
    return file(photograph).flatMap(file -> small(photograph, file));
  }

  private Optional<byte[]> small(String photograph, Path file) {
    Path made = folder.resolve(SequenceReport.smallName(photograph));
    try {
      boolean isOf =
          report(photograph).isPresent()
              && report(photograph).get().bytes() == Files.size(file)
              && Files.isRegularFile(made);
      return Optional.of(isOf ? GivenFile.bytes(made, Limit.NOTES) : madeNow(file));
    } catch (IOException | InputException | UnreadablePhotographException unreadable) {
      return Optional.empty();
    }
  }

  private static byte[] madeNow(Path file) throws UnreadablePhotographException {
    PhotoFacts facts = PhotographReader.facts(file);
    return SmallJpeg.of(Reduced.of(PhotographReader.decode(file, facts), SMALL));
  }
}
