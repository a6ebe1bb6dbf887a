package org.barsheet.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barsheet.artwork.KeyColor;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.InputFile;
import org.barsheet.paper.Ink.Align;
import org.barsheet.paper.Ink.Words;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Rect;
import org.barsheet.shooting.CameraView;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.Step;
import org.barsheet.shooting.Take;

/**
 * Slates: held before the camera at the start of a movement, each half a sheet of paper. Gray steps
 * and the backing's color show whether light and camera are as they were.
 */
final class Slates {

  private static final double MARGIN = 12;
  private static final double CODE = 60;
  private static final int STEPS = 11;
  private static final double PATCH_HEIGHT = 16;

  private final FilmSheet film;
  private final double width;
  private final double height;

  Slates(FilmSheet film) {
    this.film = film;
    this.width = film.plan().film().paper().width();
    this.height = film.plan().film().paper().height();
  }

  List<PaperPage> pages() {
    List<List<Ink>> slates = new ArrayList<>();
    for (Setup setup : film.shooting().setups()) {
      setup.cards().forEach(card -> slates.add(slate(setup, card)));
    }
    List<PaperPage> pages = new ArrayList<>();
    for (int first = 0; first < slates.size(); first += 2) {
      List<Ink> page = new ArrayList<>(slates.get(first));
      if (first + 1 < slates.size()) {
        slates.get(first + 1).forEach(ink -> page.add(ink.moved(0, height / 2)));
      }
      page.add(new Ink.Line(Stroke.TRIM, 0, height / 2, width, height / 2));
      String name = "slates " + (pages.size() + 1);
      pages.add(new PaperPage(name, film.plan().title() + ": slates", width, height, page));
    }
    return pages;
  }

  /** The slate of a card: one movement, or photographs at rest in a row. */
  private List<Ink> slate(Setup setup, List<Step> card) {
    List<String> taken = card.stream().flatMap(step -> step.take().taken().stream()).toList();
    Take first = card.get(0).take();
    Sequence sequence =
        first instanceof Setup.Run run
            ? Sequence.of(run.movement())
            : new Sequence("artwork at rest", taken.get(0), taken.get(taken.size() - 1));
    List<Ink> inks = new ArrayList<>();
    double room = width - 2 * MARGIN - CODE - 4;
    String label = setup.label(first);
    inks.add(Words.plain(MARGIN, 17, film.plan().title()).within(room));
    inks.add(Words.bold(MARGIN, 40, 56, "Setup " + label).within(room));
    inks.add(Words.bold(MARGIN, 56, 30, sequence.name()).within(room));
    inks.add(Words.bold(MARGIN, 70, 30, sequence.range()).within(room));
    List<String> facts = facts(setup, first, taken.size());
    for (int line = 0; line < facts.size(); line++) {
      inks.add(Words.plain(MARGIN, 79 + 5 * line, facts.get(line)).within(room));
    }
    code(inks, label, sequence);
    strip(inks, setup.model(), 102);
    return inks;
  }

  private void code(List<Ink> inks, String label, Sequence sequence) {
    String version = film.inputs().stream().findFirst().map(InputFile::version).orElse("");
    SequenceCode code = new SequenceCode(film.plan().title(), label, sequence, version);
    inks.addAll(code.drawn(width - MARGIN - CODE, 12, CODE));
    double middle = width - MARGIN - CODE / 2;
    inks.add(new Words("plan " + version, middle, 12 + CODE + 4, 8, false, Align.MIDDLE, 0, true));
  }

  private static List<String> facts(Setup setup, Take take, int photographs) {
    List<String> facts = new ArrayList<>();
    List<String> plates =
        take instanceof Setup.Run run
            ? run.plates().stream().map(plate -> plate.kind().words()).toList()
            : List.of();
    facts.add(
        photographs
            + (photographs == 1 ? " photograph" : " photographs")
            + (plates.isEmpty() ? "" : ", plates with them: " + String.join(", ", plates)));
    Artwork.Model model = setup.model();
    facts.add(
        "model "
            + model.name()
            + (model.light().isEmpty() ? "" : " · light " + model.light())
            + (model.backing().isEmpty() ? "" : " · backing " + model.backing()));
    setup.view().ifPresent(view -> facts.add(field(view)));
    return facts;
  }

  private static String field(CameraView view) {
    double fieldWidth = Math.round(view.millimetersWide());
    double fieldHeight = Math.round(view.millimetersHigh());
    return "field " + Millimeters.of(fieldWidth, fieldHeight);
  }

  /** Gray steps from white to black, the backing's color beside them, each with its value. */
  private void strip(List<Ink> inks, Artwork.Model model, double y) {
    double patch = (width - 2 * MARGIN) / (STEPS + 2.5);
    for (int step = 0; step < STEPS; step++) {
      int level = (int) Math.round(255 * (1 - (double) step / (STEPS - 1)));
      double x = MARGIN + step * patch;
      inks.add(new Ink.Patch(gray(level), x, y, patch, PATCH_HEIGHT));
      inks.add(
          new Words(
              Integer.toString(level),
              x + patch / 2,
              y + PATCH_HEIGHT + 4,
              8,
              false,
              Align.MIDDLE,
              0,
              false));
    }
    PieceDrawing.around(Stroke.SIZE, new Rect(MARGIN, y, STEPS * patch, PATCH_HEIGHT))
        .forEach(inks::add);
    inks.add(
        Words.plain(
            MARGIN,
            y + PATCH_HEIGHT + 9,
            "Gray levels (sRGB, 255 is paper white). Compare photographs by them; printers differ, so"
                + " they measure nothing."));
    KeyColor.hexOf(model.backing()).ifPresent(hex -> backing(inks, model, hex, y, patch));
  }

  private static String gray(int level) {
    return String.format(Locale.ROOT, "%02X", level).repeat(3);
  }

  private void backing(List<Ink> inks, Artwork.Model model, String hex, double y, double patch) {
    double wide = 2 * patch;
    double x = width - MARGIN - wide;
    inks.add(new Ink.Patch(hex, x, y, wide, PATCH_HEIGHT));
    String value = "#" + hex;
    inks.add(
        new Words(value, x + wide / 2, y + PATCH_HEIGHT + 4, 8, false, Align.MIDDLE, 0, false));
    String words = model.backing().startsWith("#") ? "backing" : "backing " + model.backing();
    inks.add(new Words(words, x + wide / 2, y - 2, 8, false, Align.MIDDLE, 0, false));
  }
}
