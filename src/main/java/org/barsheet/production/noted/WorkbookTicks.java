package org.barsheet.production.noted;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidFilm.LaidReveal;
import org.barsheet.changes.LaidFilm.LaidShot;
import org.barsheet.ticks.DoneWords;
import org.barsheet.ticks.Mark;
import org.barsheet.ticks.Tick;
import org.barsheet.ticks.Tick.Source;
import org.barsheet.ticks.Ticked;
import org.barsheet.workbook.typed.TypedCells;

/** The ticks of a workbook: in <i>Shooting</i> row by row, in <i>Exposure</i> frame by frame. */
public final class WorkbookTicks {

  private static final String MOVEMENT = "movement ";
  private static final String PLATE = "plate ";
  private static final Pattern FRAME = Pattern.compile("panel (.+) frame (\\d{1,9})( held)?");

  private final List<String> names;
  private final Optional<LaidFilm> film;
  private final Map<String, Mark> marks = new LinkedHashMap<>();
  private final List<Ticked.Note> notes = new ArrayList<>();
  private final List<Ticked.Unread> unread = new ArrayList<>();

  /**
   * A reader of ticks.
   *
   * @param names the photographs of the run that wrote the workbook, in the order of work
   * @param film that run, where it can be read
   */
  private WorkbookTicks(List<String> names, Optional<LaidFilm> film) {
    this.names = names;
    this.film = film;
  }

  public static Ticked read(TypedCells typed, List<String> names, Optional<LaidFilm> film) {
    WorkbookTicks reader = new WorkbookTicks(names, film);
    typed.rows("Exposure").forEach(reader::frame);
    typed.rows("Shooting").forEach(reader::row);
    List<Tick> ticks = new ArrayList<>();
    reader.marks.forEach(
        (name, mark) ->
            ticks.add(new Tick(name, mark, Source.WORKBOOK, Optional.empty(), Optional.empty())));
    return new Ticked(ticks, reader.notes, reader.unread, Map.of());
  }

  private void row(String rowName, Map<String, String> cells) {
    List<String> its = photographs(rowName);
    String done = cells.getOrDefault("done", "");
    if (its.isEmpty()) {
      return;
    }
    Optional<Map<String, Mark>> said = DoneWords.read(done, its);
    said.ifPresent(marks::putAll);
    if (said.isEmpty()) {
      unread.add(
          new Ticked.Unread(
              "Shooting, "
                  + rowName
                  + ": '"
                  + done
                  + "' under done says no photographs of "
                  + its.get(0)
                  + (its.size() == 1 ? "" : " to " + digits(its.get(its.size() - 1))),
              "write √, 1-17, or again 12-17"));
    }
    String note = cells.getOrDefault("notes", "");
    if (!note.isBlank()) {
      notes.add(new Ticked.Note(its.get(0), note.strip()));
    }
  }

  private static String digits(String name) {
    return name.substring(name.lastIndexOf(' ') + 1);
  }

  private List<String> photographs(String rowName) {
    if (rowName.startsWith(PLATE)) {
      return names.stream().filter(rowName.substring(PLATE.length())::equals).toList();
    }
    if (!rowName.startsWith(MOVEMENT)) {
      return List.of();
    }
    String movement = Pattern.quote(rowName.substring(MOVEMENT.length()));
    Pattern moved = Pattern.compile(movement + " (?!000$)\\d{3,6}");
    return names.stream().filter(moved.asMatchPredicate()).toList();
  }

  /** A tick beside a frame is one of every photograph shown on it. */
  private void frame(String rowName, Map<String, String> cells) {
    Matcher frame = FRAME.matcher(rowName);
    String text = cells.getOrDefault("taken", "");
    if (film.isEmpty() || text.isEmpty() || !frame.matches()) {
      return;
    }
    for (LaidShot shot : film.get().shots()) {
      if (shot.panel().equals(frame.group(1))) {
        long at = shot.frames().start() + Long.parseLong(frame.group(2)) - 1;
        shot.reveals().forEach(reveal -> tick(reveal, at, text));
      }
    }
  }

  private void tick(LaidReveal reveal, long frame, String text) {
    reveal.exposures().stream()
        .filter(exposure -> exposure.frames().contains(frame))
        .map(exposure -> exposure.photograph())
        .filter(names::contains)
        .forEach(name -> DoneWords.read(text, List.of(name)).ifPresent(marks::putAll));
  }
}
