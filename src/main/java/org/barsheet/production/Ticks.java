package org.barsheet.production;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidFilm.LaidReveal;
import org.barsheet.changes.LaidFilm.LaidShot;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.production.noted.PhoneTicks;
import org.barsheet.production.noted.WorkbookTicks;
import org.barsheet.ticks.Mark;
import org.barsheet.ticks.Taken;
import org.barsheet.ticks.Tick;
import org.barsheet.ticks.Tick.Source;
import org.barsheet.ticks.Ticked;
import org.barsheet.workbook.typed.TypedCells;

/**
 * What people ticked since the sheets were made: in the workbook, and on the phone, whose file lies
 * beside the plan or in the folder of the sheets.
 *
 * @param typed what was typed into the workbook
 * @param phone what the phone says
 * @param film the run that wrote the workbook, where it can be read
 */
record Ticks(TypedCells typed, List<Ticked> phone, Optional<LaidFilm> film) {

  private static final String ENDING = "-taken.json";

  static Ticks of(Path planFile, Path folder, Optional<LaidFilm> film) {
    return new Ticks(
        TypedCells.read(folder.resolve(Production.name(planFile) + ".xlsx")),
        files(planFile, folder).map(PhoneTicks::read).toList(),
        film);
  }

  /** Files from the phone, there or not, without those that are the same. */
  static Stream<Path> files(Path planFile, Path folder) {
    String name = Production.name(planFile) + ENDING;
    return Stream.of(planFile.resolveSibling(name), folder.resolve(name))
        .map(file -> file.toAbsolutePath().normalize())
        .distinct()
        .filter(Files::isRegularFile);
  }

  private Map<String, String> earlier() {
    return film.map(LaidFilm::photographs).orElse(Map.of());
  }

  private Ticked all(List<String> names) {
    List<Tick> ticks = new ArrayList<>();
    List<Ticked.Note> notes = new ArrayList<>();
    List<Ticked.Unread> unread = new ArrayList<>();
    List<Ticked> sources = new ArrayList<>(phone);
    sources.add(0, WorkbookTicks.read(typed, names, film));
    for (Ticked source : sources) {
      ticks.addAll(source.ticks());
      notes.addAll(source.notes());
      unread.addAll(source.unread());
    }
    return new Ticked(ticks, notes.stream().distinct().toList(), unread, earlier());
  }

  /** A film with what was taken of it. */
  FilmSheet addedTo(FilmSheet sheet) {
    List<String> names =
        List.copyOf(earlier().isEmpty() ? sheet.ticks().likenesses().keySet() : earlier().keySet());
    Ticked ticked = all(names).and(faulty(sheet));
    return sheet.withTicks(Taken.of(sheet.shooting(), sheet.plan(), ticked));
  }

  /** What was looked at and has to be taken again. */
  private static List<Tick> faulty(FilmSheet sheet) {
    Set<String> names = sheet.ticks().likenesses().keySet();
    return sheet.taken().again().stream()
        .filter(names::contains)
        .map(
            name ->
                new Tick(name, Mark.AGAIN, Source.PHOTOGRAPH, Optional.empty(), Optional.empty()))
        .toList();
  }

  /**
   * The same plan, in which reveals of which every photograph is ticked count as photographed. One
   * that asks for another number of photographs now is to be planned anew.
   */
  Plan held(Plan plan) {
    if (earlier().isEmpty()) {
      return plan;
    }
    Set<String> taken = new HashSet<>();
    Set<String> again = new HashSet<>();
    for (Tick tick : all(List.copyOf(earlier().keySet())).ticks()) {
      (tick.mark() == Mark.TAKEN ? taken : again).add(tick.photograph());
    }
    taken.removeAll(again);
    return plan.withPanels(plan.panels().stream().map(panel -> held(panel, taken)).toList());
  }

  private Panel held(Panel panel, Set<String> taken) {
    List<Reveal> reveals =
        panel.reveals().stream()
            .map(reveal -> isWhole(panel, reveal, taken) ? reveal.ticked() : reveal)
            .toList();
    return reveals.equals(panel.reveals()) ? panel : panel.with(panel.cue(), reveals);
  }

  private boolean isWhole(Panel panel, Reveal reveal, Set<String> taken) {
    List<LaidReveal> before =
        film.orElseThrow().shots().stream()
            .filter(shot -> shot.panel().equals(panel.name()))
            .map(LaidShot::reveals)
            .flatMap(List::stream)
            .filter(laid -> laid.opening().equals(reveal.opening()))
            .toList();
    if (before.size() != 1) {
      return false;
    }
    List<String> shown =
        before.get(0).exposures().stream().map(one -> one.photograph()).distinct().toList();
    long moved = shown.stream().filter(name -> !name.endsWith(" 000")).count();
    List<String> toTake = shown.stream().filter(earlier()::containsKey).toList();
    return moved == reveal.photographs() && !toTake.isEmpty() && taken.containsAll(toTake);
  }
}
