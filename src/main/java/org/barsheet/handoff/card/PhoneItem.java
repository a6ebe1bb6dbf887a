package org.barsheet.handoff.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.barsheet.artwork.Measure;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Support;
import org.barsheet.shooting.ArtworkPlate;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.Setup.Plate;
import org.barsheet.shooting.Step;
import org.barsheet.shooting.StepWords;
import org.barsheet.shooting.Stretch;
import org.barsheet.shooting.WorkDay;
import org.barsheet.ticks.Mark;
import org.barsheet.ticks.TakenPhotograph;

/**
 * What the card for the phone shows at a time: a photograph, or a setup.
 *
 * @param photograph its permanent name; of a setup {@code setup 2}
 * @param setup number of the setup
 * @param title the movement, or what is set up
 * @param panels {@code for panels 4, 6}, or ""
 * @param number its number in the movement, or what it is
 * @param of last number of the movement, or ""
 * @param likeness as {@code timing.json} has it; "" of a setup
 * @param mark what is known of it: {@code taken}, {@code again} or ""
 * @param before what is done to the paper first, a line each, or ""
 * @param degrees angle of a flap, where one turns
 * @param mirrored whether its crease is at the right or at the bottom
 * @param caution what to mind
 * @param rows label, value, and how it is shown: {@code hand} for what the hand goes by, {@code
 *     strong}, or ""
 */
record PhoneItem(
    String photograph,
    int setup,
    String title,
    String panels,
    String number,
    String of,
    String likeness,
    String mark,
    String before,
    OptionalDouble degrees,
    boolean mirrored,
    String caution,
    List<List<String>> rows) {

  private static final Map<String, String> LABELS =
      Map.of(
          "step", "step",
          "height", "height of the edge",
          "thread", "thread pulled",
          "angle", "angle",
          "way", "way",
          "width", "width",
          "light", "light",
          "done", "done");

  /** Everything of a day, in order. */
  static List<PhoneItem> of(FilmSheet film, WorkDay day) {
    List<PhoneItem> items = new ArrayList<>();
    for (Stretch stretch : day.stretches()) {
      Setup setup = film.shooting().setups().get(stretch.setup() - 1);
      if (stretch.step().isEmpty()) {
        items.add(setup(film, setup));
      } else {
        for (String name : stretch.taken()) {
          items.add(photograph(film, setup, stretch.step().get(), name));
        }
      }
    }
    return items;
  }

  private static PhoneItem setup(FilmSheet film, Setup setup) {
    List<List<String>> rows = new ArrayList<>();
    setup
        .view()
        .ifPresent(
            view -> {
              rows.add(
                  List.of(
                      "field",
                      Math.round(view.millimetersWide())
                          + " × "
                          + Math.round(view.millimetersHigh())
                          + " mm",
                      "strong"));
              view.distanceMillimeters()
                  .ifPresent(
                      mm ->
                          rows.add(
                              List.of("lens to model, about", Math.round(mm) + " mm", "hand")));
            });
    film.plan()
        .workshop()
        .camera()
        .ifPresent(
            camera ->
                rows.add(List.of("lens", Amounts.tenth(camera.lensMillimeters()) + " mm", "")));
    add(rows, "lamps", setup.model().light());
    add(rows, "backing", setup.model().backing());
    boolean still = setup.runs().isEmpty();
    return new PhoneItem(
        "setup " + setup.name(),
        setup.number(),
        still ? "the whole artwork" : "model " + setup.model().name(),
        "",
        "set up",
        "",
        "",
        "",
        "",
        OptionalDouble.empty(),
        false,
        String.join(" ", setup.cautions()),
        rows);
  }

  private static void add(List<List<String>> rows, String label, String value) {
    if (!value.isEmpty()) {
      rows.add(List.of(label, value, ""));
    }
  }

  private static PhoneItem photograph(FilmSheet film, Setup setup, Step step, String name) {
    boolean first = step.take().taken().get(0).equals(name);
    if (step.take() instanceof Setup.Run run) {
      for (MovedPhotograph photograph : run.movement().photographs()) {
        if (photograph.photograph().name().equals(name)) {
          return moved(film, setup, step, run, photograph);
        }
      }
      Plate.Kind kind =
          run.plates().stream()
              .filter(plate -> plate.name().equals(name))
              .map(Plate::kind)
              .findFirst()
              .orElseThrow();
      return item(
          film,
          setup,
          step,
          name,
          kind.words() + " plate",
          "",
          "",
          OptionalDouble.empty(),
          false,
          List.of(List.of("plate", kind.purpose(), "")));
    }
    List<List<String>> rows = new ArrayList<>();
    add(rows, "open", StepWords.open(step));
    boolean blownUp =
        step.take() instanceof ArtworkPlate plate && plate.enlargement().orElse(0) > 1;
    add(rows, "!", blownUp ? "enlarged in its narrowest panel" : "");
    return item(
        film,
        setup,
        step,
        name,
        "at rest",
        "",
        first ? String.join("\n", StepWords.first(step)) : "",
        OptionalDouble.empty(),
        false,
        rows);
  }

  private static PhoneItem moved(
      FilmSheet film, Setup setup, Step step, Setup.Run run, MovedPhotograph photograph) {
    List<CardColumn> columns = CardColumn.of(run.movement());
    List<List<String>> rows = new ArrayList<>();
    boolean closed = photograph.photograph().number() == 0;
    for (CardColumn column : columns.subList(1, columns.size())) {
      String cell = closed ? "" : column.cell().apply(photograph);
      if (!cell.isEmpty()) {
        boolean hand = column.isHandled(photograph, columns);
        String label =
            column.name().equals("step") && column.unit().equals("mm")
                ? "the edge travels"
                : LABELS.getOrDefault(column.name(), column.name());
        rows.add(List.of(label, cell + unit(column.unit()), hand ? "hand" : "strong"));
      }
    }
    if (closed) {
      rows.add(List.of("plate", Plate.Kind.CLOSED.purpose(), ""));
      add(rows, "open", StepWords.open(step));
    }
    add(rows, "held by", photograph.measures().heldBy().map(Support::kind).orElse(""));
    boolean turns = run.movement().measure() instanceof Measure.Turn;
    List<MovedPhotograph> all = run.movement().photographs();
    return item(
        film,
        setup,
        step,
        photograph.photograph().name(),
        photograph.photograph().digits(),
        all.get(all.size() - 1).photograph().digits(),
        closed ? String.join("\n", StepWords.first(step)) : "",
        turns
            ? OptionalDouble.of(photograph.measures().set().doubleValue())
            : OptionalDouble.empty(),
        isMirrored(film, run),
        rows);
  }

  private static String unit(String unit) {
    return unit.equals("deg") ? "°" : " " + unit;
  }

  private static boolean isMirrored(FilmSheet film, Setup.Run run) {
    Opening opening =
        film.plan().workshop().opening(run.movement().openings().get(0)).orElseThrow();
    return opening.motion() instanceof Opening.Hinged hinged
        && (hinged.hinge() == Opening.Side.RIGHT || hinged.hinge() == Opening.Side.BOTTOM);
  }

  private static PhoneItem item(
      FilmSheet film,
      Setup setup,
      Step step,
      String name,
      String number,
      String of,
      String before,
      OptionalDouble degrees,
      boolean mirrored,
      List<List<String>> rows) {
    List<String> panels = step.take().panels();
    Optional<TakenPhotograph> known = film.ticks().photograph(name);
    return new PhoneItem(
        name,
        setup.number(),
        step.take().name(),
        (panels.size() == 1 ? "for panel " : "for panels ") + String.join(", ", panels),
        number,
        of,
        known.map(TakenPhotograph::likeness).orElse(""),
        known.flatMap(TakenPhotograph::mark).map(Mark::word).orElse(""),
        before,
        degrees,
        mirrored,
        setup.cautions().get(0),
        rows);
  }
}
