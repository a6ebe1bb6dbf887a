package org.barsheet.production;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.barsheet.changes.Changes;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidIssue;
import org.barsheet.handoff.TimingJsonReader;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.production.publish.LastSheets;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.revision.MusicChange;
import org.barsheet.revision.MusicChanges;

/**
 * Two versions laid side by side.
 *
 * @param film what moved in the film; nothing where two scores are compared
 * @param parts parts that only one score has, in sentences
 * @param bars the bars of two scores, bars of the same fate together
 */
public record VersionComparison(
    Optional<Changes> film, List<String> parts, List<MusicChange> bars) {

  public VersionComparison {
    parts = List.copyOf(parts);
    bars = List.copyOf(bars);
  }

  static VersionComparison of(Path before, Path now) {
    if (isScore(before) != isScore(now)) {
      throw new InputException(
          Problem.ofFile(
              (isScore(before) ? now : before).toString(),
              "a score can only be compared with a score",
              "give two MIDI files, or two plans, folders or timing.json files"));
    }
    return isScore(before) ? scores(before, now) : films(before, now);
  }

  /** What differs from an issue. */
  static VersionComparison since(Path sheets, Path now, String name) {
    List<LaidIssue> issues = laid(sheets).issued();
    LaidFilm then =
        issues.stream()
            .filter(issue -> issue.name().equals(name))
            .map(LaidIssue::film)
            .findFirst()
            .orElseThrow(() -> unknown(sheets, name, issues));
    Changes changes = Changes.between(then, laid(now));
    return new VersionComparison(Optional.of(changes), List.of(), List.of());
  }

  private static InputException unknown(Path sheets, String name, List<LaidIssue> issues) {
    List<String> names = issues.stream().map(LaidIssue::name).toList();
    return new InputException(
        Problem.ofFile(
            sheets.toString(),
            "nothing was sent out as '" + name + "'",
            names.isEmpty()
                ? "name it when you send it out: barsheet make PLAN --issue \"" + name + "\""
                : "it was sent out as: " + String.join(", ", names)));
  }

  private static VersionComparison scores(Path before, Path now) {
    Music was = Production.music(before, TempoRequest.DEFAULT);
    Music is = Production.music(now, TempoRequest.DEFAULT);
    return new VersionComparison(
        Optional.empty(), MusicChanges.parts(was, is), MusicChanges.between(was, is));
  }

  private static VersionComparison films(Path before, Path now) {
    Changes changes = Changes.between(laid(before), laid(now));
    return new VersionComparison(Optional.of(changes), List.of(), List.of());
  }

  private static LaidFilm laid(Path path) {
    if (Files.isDirectory(path)) {
      return read(path.resolve(EarlierSheets.TIMING));
    }
    return ending(path, ".json") ? read(path) : Production.film(path, Progress.SILENT).laidDown();
  }

  private static LaidFilm read(Path timing) {
    Path parent = timing.getParent();
    Path folder = parent == null ? Path.of("") : parent;
    return LastSheets.read(folder, String.valueOf(timing.getFileName()), TimingJsonReader::read)
        .orElseGet(() -> TimingJsonReader.read(timing));
  }

  private static boolean isScore(Path path) {
    return ending(path, ".mid")
        || ending(path, ".midi")
        || ending(path, ".smf")
        || ending(path, ".rmi")
        || ending(path, ".kar");
  }

  private static boolean ending(Path path, String ending) {
    return path.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }
}
