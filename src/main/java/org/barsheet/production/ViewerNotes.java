package org.barsheet.production;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.barsheet.cues.MusicRuler;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.production.noted.ViewerNote;
import org.barsheet.production.noted.ViewerNotesReader;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.TimingSheet;

/**
 * Notes that viewers wrote on the review page and saved, as findings of the film they come back to.
 */
final class ViewerNotes {

  private static final List<String> ENDINGS = List.of(".csv", ".json");

  private final TimingSheet timing;
  private final MusicRuler ruler;

  private ViewerNotes(TimingSheet timing) {
    this.timing = timing;
    this.ruler = new MusicRuler(timing.music(), timing.clock());
  }

  /**
   * A film with the notes that lie beside its plan or in the folder of its sheets, as {@code
   * <name>-notes.csv} and {@code <name>-notes.json}. They stand before the other notes: people
   * wrote them. A file of that name that cannot be read, be it damaged or somebody's own, is told
   * as a note too.
   */
  static FilmSheet addedTo(FilmSheet film, Path planFile, Path folder) {
    List<ViewerNote> notes = new ArrayList<>();
    List<Finding> written = new ArrayList<>();
    for (Path file : files(planFile, folder)) {
      try {
        notes.addAll(ViewerNotesReader.read(file));
      } catch (InputException notOurs) {
        written.add(unread(file, notOurs.problems().get(0)));
      }
    }
    ViewerNotes writer = new ViewerNotes(film.timing());
    written.addAll(
        notes.stream()
            .distinct()
            .sorted(Comparator.comparingLong(ViewerNote::frame))
            .map(writer::finding)
            .toList());
    List<Finding> all = new ArrayList<>(film.findings());
    long worse = all.stream().filter(each -> each.severity() != Severity.REMARK).count();
    all.addAll((int) worse, written);
    return film.withFindings(all);
  }

  private static List<Path> files(Path planFile, Path folder) {
    String name = Production.name(planFile) + "-notes";
    return Stream.of(planFile.resolveSibling(name), folder.resolve(name))
        .map(file -> file.toAbsolutePath().normalize())
        .distinct()
        .flatMap(file -> ENDINGS.stream().map(ending -> file.resolveSibling(name + ending)))
        .filter(Files::isRegularFile)
        .toList();
  }

  private static Finding unread(Path file, Problem first) {
    String place = first.position().isEmpty() ? "" : first.position() + ": ";
    return new Finding(
        Severity.REMARK,
        Concerns.DIRECTOR,
        "",
        "",
        OptionalLong.empty(),
        file.getFileName() + " is ignored: " + place + first.sentence(),
        first.remedy());
  }

  private Finding finding(ViewerNote note) {
    String panel = panelAt(note.frame());
    boolean moved = !note.panel().isEmpty() && !note.panel().equals(panel);
    String now = panel.isEmpty() ? "the film ends before it" : "panel " + panel + " is there now";
    return new Finding(
        Severity.REMARK,
        Concerns.DIRECTOR,
        panel,
        panel.isEmpty() ? "" : ruler.locateFrame(note.frame()).toString(),
        panel.isEmpty() ? OptionalLong.empty() : OptionalLong.of(note.frame()),
        "viewer's note: " + note.text(),
        moved ? "it was written on panel " + note.panel() + "; " + now : "");
  }

  /** The panel shown on a frame, or "" past the end of the film. */
  private String panelAt(long frame) {
    return timing.shotAt(frame).map(shot -> shot.panel().name()).orElse("");
  }
}
