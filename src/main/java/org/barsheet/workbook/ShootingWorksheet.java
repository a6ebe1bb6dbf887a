package org.barsheet.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.exposure.Movement;
import org.barsheet.shooting.ArtworkPlate;
import org.barsheet.shooting.CameraView;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.Setup.Plate;
import org.barsheet.shooting.Setup.Run;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.shooting.Step;
import org.barsheet.shooting.StepWords;
import org.barsheet.shooting.WorkTime;
import org.barsheet.ticks.DoneWords;
import org.barsheet.ticks.LeftWords;
import org.barsheet.ticks.Mark;
import org.barsheet.ticks.Taken;
import org.barsheet.ticks.TakenPhotograph;
import org.barsheet.workbook.pen.Address;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.SheetWords;
import org.barsheet.workbook.pen.TextWidth;

/** What is photographed, setup by setup in the order of work, to tick off as it is done. */
final class ShootingWorksheet {

  static final String NAME = "Shooting";

  private static final int SET_UP = 0;
  private static final int TAKE = 1;
  private static final int NAMES = 2;
  private static final int PHOTOGRAPHS = 3;
  private static final int STANDING = 4;
  private static final int CAMERA = 5;
  private static final int LAMPS = 6;
  private static final int PANELS = 7;
  private static final int HOURS = 8;
  private static final int DAY = 9;
  private static final int TAKEN = 10;
  private static final int DONE = 11;
  private static final int NOTES = 12;
  private static final int ROW_NAME = 13;

  private static final List<Column> COLUMNS =
      List.of(
          Column.words("setup", 32),
          Column.words("take, from the top down", 88, 2),
          Column.words("named", 86, 1),
          Column.numbers("photographs", 62),
          Column.words("first do this;\nseen open meanwhile", 138, 3),
          Column.words("field, distance\n(estimate), lens", 84),
          Column.words("lamps", 30),
          Column.words("for panels", 40, 1),
          Column.numbers("hours", 32),
          Column.words("day", 58),
          Column.words("taken", 34),
          Column.toFillIn("done", 30, 0),
          Column.toFillIn("notes", 56, 1),
          Column.rowName());

  private static final double ROW_POINTS = 14;
  private static final double HEADING_POINTS = 26;
  private static final double COLUMN_HEADING_POINTS = 26;

  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));
  private static final Look SET_UP_LOOK =
      Look.BODY.wrapped().inBold().on(Ink.BAND).edged(Edges.NONE.top(Line.HEAVY).bottom(Line.HAIR));

  private final Book book;
  private final ShootingPlan shooting;
  private final Taken taken;
  private final SheetFrame frame;
  private final SheetPen pen;
  private int row = SheetFrame.FIRST_ROW;

  /** The cautions printed last: they are not repeated where the next setup has the same. */
  private List<String> told = List.of();

  private ShootingWorksheet(Book book) {
    this.book = book;
    this.shooting = book.film().shooting();
    this.taken = book.film().ticks();
    this.frame = book.frame(NAME, book.landscape(), COLUMNS, fact());
    this.pen = frame.pen();
  }

  private String fact() {
    return SheetWords.count(shooting.setups().size(), "setup")
        + "   "
        + SheetWords.count(shooting.photographs(), "photograph")
        + (taken.isBegun() ? "   " + taken.done() + " taken" : "");
  }

  static void write(Book book) {
    new ShootingWorksheet(book).write();
  }

  private void write() {
    frame.heading(COLUMN_HEADING_POINTS);
    shooting.setups().forEach(this::setup);
    int last = Math.max(SheetFrame.FIRST_ROW, row - 1);
    totals();
    book.name("Shooting_table", new Address(NAME, SheetFrame.HEADING_ROW, SET_UP), last, ROW_NAME);
    book.name("Shooting_done", new Address(NAME, SheetFrame.FIRST_ROW, DONE), last, DONE);
    book.name("Shooting_notes", new Address(NAME, SheetFrame.FIRST_ROW, NOTES), last, NOTES);
    frame.finish("take everything in this order: flaps can only open further");
  }

  private void setup(Setup setup) {
    keepTogether(setup);
    heading(setup);
    setup.steps().forEach(step -> step(setup, step));
    if (!setup.cautions().equals(told)) {
      cautions(setup);
      told = setup.cautions();
    }
  }

  private void step(Setup setup, Step step) {
    if (step.take() instanceof Run run) {
      run(setup, step, run);
    } else if (step.take() instanceof ArtworkPlate plate) {
      atRest(setup, step, plate);
    }
  }

  /** A setup that fits on a page is not parted. */
  private void keepTogether(Setup setup) {
    double needed = HEADING_POINTS + 2 * ROW_POINTS;
    for (Step step : setup.steps()) {
      int lines = frame.columns().lines(STANDING, String.join("\n", StepWords.all(step)), WORDS);
      int plates = step.take() instanceof Run run ? run.plates().size() : 0;
      needed += plates * ROW_POINTS;
      needed += Math.max(2 * ROW_POINTS, TextWidth.height(lines, WORDS.points()));
    }
    double room = book.landscape().height();
    boolean fits = pen.pointsOnPage() + pen.rowPoints() + needed <= room;
    if (row > SheetFrame.FIRST_ROW && !fits && SheetFrame.TITLE_POINTS + needed <= room) {
      pen.breakPage(SheetFrame.TITLE_POINTS + COLUMN_HEADING_POINTS);
    }
  }

  private void heading(Setup setup) {
    pen.row(row++, HEADING_POINTS);
    pen.blanks(SET_UP, ROW_NAME, SET_UP_LOOK);
    pen.number(SET_UP, setup.number(), SET_UP_LOOK.size(13).in(Ink.QUAY).left());
    pen.joined(TAKE, NAMES, modelOf(setup), SET_UP_LOOK);
    pen.number(PHOTOGRAPHS, setup.photographs(), SET_UP_LOOK.number(Look.WHOLE));
    pen.joined(STANDING, PANELS, setup.view().map(this::view).orElse(""), SET_UP_LOOK.size(8));
    time(setup.time(), SET_UP_LOOK);
    List<String> names = taken.of(setup).stream().map(TakenPhotograph::name).toList();
    pen.text(TAKEN, taken.words(names), SET_UP_LOOK.size(8));
    pen.rowName(ROW_NAME, "setup " + setup.name());
  }

  /** The whole artwork as some panels stand on it. */
  private void atRest(Setup setup, Step step, ArtworkPlate plate) {
    begin(setup, step);
    boolean blownUp = plate.enlargement().orElse(0) > 1;
    pen.text(
        TAKE, "artwork at rest" + (blownUp ? "\n! enlarged in its narrowest panel" : ""), WORDS);
    pen.text(NAMES, plate.name(), WORDS);
    pen.number(PHOTOGRAPHS, 1, WORDS.number(Look.WHOLE));
    pen.label(PANELS, String.join(", ", plate.panels()), WORDS.left());
    toFillIn("plate " + plate.name(), List.of(plate.name()));
  }

  /** The first row of a step, with what is done to the paper before it. */
  private void begin(Setup setup, Step step) {
    blanks(setup);
    if (setup.cards().size() > 1) {
      pen.text(SET_UP, setup.label(step.take()), WORDS.inBold().in(Ink.QUAY));
    }
    pen.text(
        STANDING,
        String.join("\n", StepWords.all(step)),
        step.fresh().isEmpty() ? WORDS : WORDS.inBold());
  }

  /** An empty row that says what camera and lamps do. */
  private void blanks(Setup setup) {
    pen.row(row++, ROW_POINTS);
    pen.blanks(SET_UP, DONE, WORDS);
    pen.text(CAMERA, CameraWords.of(setup, book.film().plan()), WORDS.size(8));
    pen.text(LAMPS, setup.model().light(), WORDS.size(8));
  }

  private static String modelOf(Setup setup) {
    boolean still = setup.runs().isEmpty();
    return (still ? "the whole artwork at rest" : setup.model().name())
        + (setup.model().backing().isEmpty() || still ? "" : ", backing " + setup.model().backing())
        + (setup.model().light().isEmpty() ? "" : ", light " + setup.model().light())
        + (setup.closedAgain() ? "\n! fresh flaps: " + String.join(", ", setup.openBefore()) : "");
  }

  private String view(CameraView view) {
    boolean cropped = view.narrowestWide() < view.field().width();
    String field =
        "field "
            + squares(view.field().width())
            + " squares"
            + (cropped ? " (crop to " + squares(view.narrowestWide()) + ")" : "")
            + ", "
            + centimeters(view.millimetersWide())
            + " × "
            + centimeters(view.millimetersHigh())
            + " cm";
    if (view.distanceMillimeters().isEmpty()) {
      return field;
    }
    boolean blownUp = view.enlargement().orElse(0) > 1;
    return field
        + "\ncamera "
        + Math.round(view.distanceMillimeters().getAsDouble())
        + " mm away (estimate)"
        + (blownUp ? "\n! enlarged in its narrowest panel" : "");
  }

  private static String squares(double squares) {
    return SheetWords.plain(SheetWords.hundredths(squares));
  }

  private static String centimeters(double millimeters) {
    return SheetWords.plain(SheetWords.rounded(millimeters / 10, 1));
  }

  private void time(Optional<WorkTime> time, Look look) {
    if (time.isEmpty()) {
      return;
    }
    pen.number(HOURS, time.get().hours(), look.number(Look.HUNDREDTHS));
    pen.text(DAY, days(time.get()), look);
  }

  /** {@code days 2 to 3} with the date it begins on: as much as is known. */
  private static String days(WorkTime time) {
    if (time.firstDay().isEmpty()) {
      return "";
    }
    int first = time.firstDay().getAsInt();
    int last = time.lastDay().orElse(first);
    String days = first == last ? "day " + first : "days " + first + " to " + last;
    String from = first == last ? "\n" : "\nfrom ";
    return days + time.begins().map(begins -> from + begins).orElse("");
  }

  private void run(Setup setup, Step step, Run run) {
    begin(setup, step);
    run.plates().stream().filter(plate -> plate.kind() == Plate.Kind.CLOSED).forEach(this::plate);
    moved(setup, run);
    nights(setup, run);
    for (Plate plate : run.plates()) {
      if (plate.kind() != Plate.Kind.CLOSED) {
        blanks(setup);
        plate(plate);
      }
    }
  }

  private void plate(Plate plate) {
    pen.text(TAKE, plate.kind().words() + " plate", WORDS);
    pen.text(NAMES, plate.name(), WORDS);
    pen.number(PHOTOGRAPHS, 1, WORDS.number(Look.WHOLE));
    toFillIn("plate " + plate.name(), List.of(plate.name()));
  }

  private void moved(Setup setup, Run run) {
    String name = run.movement().name();
    blanks(setup);
    pen.text(TAKE, name + ", photograph by photograph", WORDS.inBold());
    pen.text(
        NAMES,
        run.movement().photographs().get(1).photograph().name() + " to " + lastNumber(run),
        WORDS.inBold());
    pen.number(PHOTOGRAPHS, run.moved(), WORDS.inBold().number(Look.WHOLE));
    pen.label(PANELS, String.join(", ", run.panels()), WORDS.left());
    if (setup.steps().size() > 1 && run.hours().isPresent()) {
      pen.number(HOURS, run.hours().getAsDouble(), WORDS.number(Look.HUNDREDTHS));
    }
    toFillIn("movement " + name, run.taken().subList(1, 1 + run.moved()));
  }

  /** What must be left alone where a night parts a movement. */
  private void nights(Setup setup, Run run) {
    shooting.days().stream()
        .flatMap(day -> day.stretches().stream())
        .filter(stretch -> stretch.setup() == setup.number() && stretch.goesOn())
        .filter(stretch -> stretch.step().get().take().equals(run))
        .forEach(
            stretch -> {
              pen.row(row++, ROW_POINTS);
              pen.blanks(SET_UP, ROW_NAME, WORDS);
              pen.joined(TAKE, NOTES, StepWords.night(stretch), WORDS.inBold());
            });
  }

  private static String lastNumber(Run run) {
    List<Movement.MovedPhotograph> moved = run.movement().moved();
    return moved.get(moved.size() - 1).photograph().digits();
  }

  /** The boxes of a row. What is ticked stands in it under the names photographs have now. */
  private void toFillIn(String rowName, List<String> photographs) {
    pen.text(TAKEN, taken.words(photographs), WORDS.size(8));
    pen.toFillIn(DONE, Look.TO_FILL_IN.centered());
    pen.toFillIn(NOTES, Look.TO_FILL_IN);
    pen.rowName(ROW_NAME, rowName);
    Map<String, Mark> marks = taken.inWorkbook(photographs);
    String typed = pen.written(DONE);
    Optional<Map<String, Mark>> read = DoneWords.read(typed, photographs);
    boolean changed = !taken.lost().isEmpty() || !taken.renamed().isEmpty();
    if (changed && !read.filter(marks::equals).isPresent()) {
      pen.label(DONE, DoneWords.of(marks, photographs), Look.TO_FILL_IN.centered());
    }
  }

  private void cautions(Setup setup) {
    pen.row(row++, ROW_POINTS);
    Look look = Look.PENCIL.size(8).wrapped();
    pen.text(SET_UP, "!", look.inBold().centered());
    pen.joined(TAKE, NOTES, String.join(" ", setup.cautions()), look);
  }

  private void totals() {
    Look look = Look.BODY.wrapped().inBold().edged(Edges.NONE.top(Line.HEAVY));
    pen.row(row, 20);
    pen.blanks(SET_UP, ROW_NAME, look);
    pen.joined(
        TAKE, NAMES, "everything, " + SheetWords.count(shooting.setups().size(), "setup"), look);
    pen.number(PHOTOGRAPHS, shooting.photographs(), look.number(Look.WHOLE));
    time(shooting.time(), look);
    shooting
        .time()
        .flatMap(WorkTime::ends)
        .ifPresent(ends -> pen.joined(STANDING, PANELS, "done on " + ends, look));
    row++;
    paragraph(
        "Take "
            + SheetWords.count(shooting.moved(), "photograph")
            + " of movements and "
            + SheetWords.count(shooting.plates(), "plate")
            + ". With separate photographs for every reveal, the movements alone would need "
            + SheetWords.count(shooting.movedApart(), "photograph")
            + ".");
    if (taken.isBegun()) {
      paragraph(LeftWords.of(taken));
    }
    paragraph(
        shooting.fewest()
            ? "These are the fewest setups possible without closing a flap, and the fewest fresh flaps."
            : "One model has too many movements to try every order. More setups or fresh flaps than needed are possible.");
    paragraph("Under done write √ for all of a row, 1-17 for some, again 12-17 for a retake.");
    paragraph(
        shooting.time().isPresent()
            ? "Hours use the plan's rates; days are counted without rest days."
            : "Add your rates to the plan (shoot: photographs-per-hour, minutes-per-setup) to see hours here.");
    shooting.setups().stream()
        .flatMap(setup -> setup.runs().stream())
        .flatMap(run -> run.plates().stream())
        .map(Plate::kind)
        .distinct()
        .sorted()
        .forEach(kind -> paragraph(kind.words() + " plate: " + kind.purpose() + "."));
    Cautions.ALL.stream().limit(4).forEach(this::paragraph);
  }

  private void paragraph(String words) {
    pen.row(row++, ROW_POINTS);
    pen.joined(TAKE, NOTES, words, Look.BODY.wrapped());
  }
}
