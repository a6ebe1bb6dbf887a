package org.barsheet.workbook;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.shooting.ArtworkPlate;
import org.barsheet.shooting.CameraView;
import org.barsheet.shooting.SetUp;
import org.barsheet.shooting.SetUp.Plate;
import org.barsheet.shooting.SetUp.Run;
import org.barsheet.shooting.SetUp.Standing;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.shooting.WorkTime;
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

/** What is photographed, set-up by set-up in the order of work, to tick off as it is done. */
final class ShootingWorksheet {

  static final String NAME = "Shooting";

  private static final int SET_UP = 0;
  private static final int TAKE = 1;
  private static final int NAMES = 2;
  private static final int PICTURES = 3;
  private static final int STANDING = 4;
  private static final int PANELS = 5;
  private static final int HOURS = 6;
  private static final int DAY = 7;
  private static final int DONE = 8;
  private static final int NOTES = 9;
  private static final int ROW_NAME = 10;

  private static final List<Column> COLUMNS =
      List.of(
          Column.words("set-\nup", 28),
          Column.words("take, from the top down", 150, 3),
          Column.words("named", 104, 2),
          Column.numbers("pictures", 46),
          Column.words("field;\nseen open meanwhile", 100, 2),
          Column.words("for panels", 52),
          Column.numbers("hours", 38),
          Column.words("day", 80),
          Column.toFillIn("done", 30, 0),
          Column.toFillIn("notes", 60, 1),
          Column.rowName());

  private static final double ROW_POINTS = 14;
  private static final double HEADING_POINTS = 26;
  private static final double COLUMN_HEADING_POINTS = 26;

  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));
  private static final Look SET_UP_LOOK =
      Look.BODY.wrapped().inBold().on(Ink.BAND).edged(Edges.NONE.top(Line.HEAVY).bottom(Line.HAIR));

  private final Book book;
  private final ShootingPlan shooting;
  private final SheetFrame frame;
  private final SheetPen pen;
  private int row = SheetFrame.FIRST_ROW;

  /** The cautions printed last: they are not repeated where the next set-up has the same. */
  private List<String> told = List.of();

  private ShootingWorksheet(Book book) {
    this.book = book;
    this.shooting = book.film().shooting();
    this.frame = book.frame(NAME, book.landscape(), COLUMNS, fact());
    this.pen = frame.pen();
  }

  private String fact() {
    return SheetWords.count(shooting.setUpCount(), "set-up")
        + "   "
        + SheetWords.count(shooting.pictures(), "picture");
  }

  static void write(Book book) {
    new ShootingWorksheet(book).write();
  }

  private void write() {
    frame.heading(COLUMN_HEADING_POINTS);
    shooting.setUps().forEach(this::setUp);
    if (!shooting.atRest().isEmpty()) {
      atRest();
    }
    int last = Math.max(SheetFrame.FIRST_ROW, row - 1);
    totals();
    book.name("Shooting_table", new Address(NAME, SheetFrame.HEADING_ROW, SET_UP), last, ROW_NAME);
    book.name("Shooting_done", new Address(NAME, SheetFrame.FIRST_ROW, DONE), last, DONE);
    book.name("Shooting_notes", new Address(NAME, SheetFrame.FIRST_ROW, NOTES), last, NOTES);
    frame.finish("on one piece of paper openings only ever get more open: keep to the order");
  }

  private void setUp(SetUp setUp) {
    keepTogether(setUp);
    heading(setUp);
    setUp.runs().forEach(run -> run(setUp, run));
    if (!setUp.cautions().equals(told)) {
      cautions(setUp);
      told = setUp.cautions();
    }
  }

  /** A set-up that fits on a page is not parted. */
  private void keepTogether(SetUp setUp) {
    double needed = HEADING_POINTS + 2 * ROW_POINTS;
    for (Run run : setUp.runs()) {
      int lines = frame.columns().lines(STANDING, standing(run), WORDS);
      needed += run.plates().size() * ROW_POINTS;
      needed += Math.max(ROW_POINTS, TextWidth.height(lines, WORDS.points()));
    }
    double room = book.landscape().height();
    boolean fits = pen.pointsOnPage() + pen.rowPoints() + needed <= room;
    if (row > SheetFrame.FIRST_ROW && !fits && SheetFrame.TITLE_POINTS + needed <= room) {
      pen.breakPage(SheetFrame.TITLE_POINTS + COLUMN_HEADING_POINTS);
    }
  }

  private void heading(SetUp setUp) {
    pen.row(row++, HEADING_POINTS);
    pen.blanks(SET_UP, ROW_NAME, SET_UP_LOOK);
    pen.number(SET_UP, setUp.number(), SET_UP_LOOK.size(13).in(Ink.QUAY).left());
    pen.joined(TAKE, NAMES, modelOf(setUp), SET_UP_LOOK);
    pen.number(PICTURES, setUp.pictures(), SET_UP_LOOK.number(Look.WHOLE));
    pen.joined(STANDING, PANELS, setUp.view().map(this::view).orElse(""), SET_UP_LOOK.size(8));
    time(setUp.time(), SET_UP_LOOK);
    pen.rowName(ROW_NAME, "set-up " + setUp.name());
  }

  /** The whole artwork, a picture for each state that some panel stands on. */
  private void atRest() {
    pen.row(row++, HEADING_POINTS);
    pen.blanks(SET_UP, ROW_NAME, SET_UP_LOOK);
    pen.number(SET_UP, shooting.setUpCount(), SET_UP_LOOK.size(13).in(Ink.QUAY).left());
    pen.joined(
        TAKE,
        NAMES,
        "the whole artwork at rest: take each in its turn (hours counted last)",
        SET_UP_LOOK);
    pen.number(PICTURES, shooting.atRest().size(), SET_UP_LOOK.number(Look.WHOLE));
    time(shooting.atRestTime(), SET_UP_LOOK);
    pen.rowName(ROW_NAME, "set-up artwork at rest");
    for (ArtworkPlate plate : shooting.atRest()) {
      pen.row(row++, ROW_POINTS);
      pen.blanks(SET_UP, DONE, WORDS);
      boolean blownUp = plate.enlargement().orElse(0) > 1;
      pen.text(
          TAKE,
          "artwork plate, "
              + shooting.turnOf(plate).words()
              + (blownUp ? "; ! blown up in its narrowest panel" : ""),
          WORDS);
      pen.text(NAMES, plate.name(), WORDS);
      pen.number(PICTURES, 1, WORDS.number(Look.WHOLE));
      pen.text(STANDING, plate.open().isEmpty() ? "nothing" : open(plate.open()), WORDS);
      pen.label(PANELS, String.join(", ", plate.panels()), WORDS.left());
      toFillIn("plate " + plate.name());
    }
  }

  private static String modelOf(SetUp setUp) {
    return setUp.model().name()
        + (setUp.model().backing().isEmpty() ? "" : ", backing " + setUp.model().backing())
        + (setUp.model().light().isEmpty() ? "" : ", light " + setUp.model().light())
        + (setUp.closedAgain()
            ? "\n! put in a fresh piece: "
                + String.join(", ", setUp.openBefore())
                + (setUp.openBefore().size() == 1 ? " stands" : " stand")
                + " open on the one before"
            : "");
  }

  private String view(CameraView view) {
    boolean cropped = view.narrowestWide() < view.field().wide();
    String field =
        "field "
            + squares(view.field().wide())
            + " squares"
            + (cropped ? " (crop to " + squares(view.narrowestWide()) + ")" : "")
            + ", "
            + centimetres(view.millimetresWide())
            + " × "
            + centimetres(view.millimetresHigh())
            + " cm";
    if (view.distanceMillimetres().isEmpty()) {
      return field;
    }
    boolean blownUp = view.enlargement().orElse(0) > 1;
    return field
        + "\ncamera "
        + Math.round(view.distanceMillimetres().getAsDouble())
        + " mm away (thin lens, nominal)"
        + (blownUp ? "\n! blown up in its narrowest panel" : "");
  }

  private static String squares(double squares) {
    return SheetWords.plain(SheetWords.hundredths(squares));
  }

  private static String centimetres(double millimetres) {
    return SheetWords.plain(SheetWords.rounded(millimetres / 10, 1));
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

  private void run(SetUp setUp, Run run) {
    for (Plate plate : run.plates()) {
      if (plate.kind() == Plate.Kind.CLOSED) {
        plate(plate, run);
      }
    }
    moved(setUp, run);
    for (Plate plate : run.plates()) {
      if (plate.kind() != Plate.Kind.CLOSED) {
        plate(plate, run);
      }
    }
  }

  private void plate(Plate plate, Run run) {
    pen.row(row++, ROW_POINTS);
    pen.blanks(SET_UP, DONE, WORDS);
    pen.text(TAKE, plate.kind().words() + " plate", WORDS);
    pen.text(NAMES, plate.name(), WORDS);
    pen.number(PICTURES, 1, WORDS.number(Look.WHOLE));
    if (plate.kind() == Plate.Kind.CLOSED) {
      pen.text(STANDING, standing(run), WORDS);
    }
    toFillIn("plate " + plate.name());
  }

  private void moved(SetUp setUp, Run run) {
    String name = run.movement().name();
    pen.row(row++, ROW_POINTS);
    pen.blanks(SET_UP, DONE, WORDS);
    if (setUp.runs().size() > 1) {
      pen.text(SET_UP, setUp.label(run), WORDS.inBold().in(Ink.QUAY));
    }
    pen.text(TAKE, name + ", picture by picture", WORDS.inBold());
    pen.text(
        NAMES,
        run.movement().pictures().get(1).picture().name() + " to " + lastNumber(run),
        WORDS.inBold());
    pen.number(PICTURES, run.moved(), WORDS.inBold().number(Look.WHOLE));
    pen.label(PANELS, String.join(", ", run.panels()), WORDS.left());
    if (setUp.runs().size() > 1 && run.hours().isPresent()) {
      pen.number(HOURS, run.hours().getAsDouble(), WORDS.number(Look.HUNDREDTHS));
    }
    toFillIn("movement " + name);
  }

  private static String lastNumber(Run run) {
    String last = run.movement().pictures().get(run.moved()).picture().name();
    return last.substring(last.lastIndexOf(' ') + 1);
  }

  private void toFillIn(String rowName) {
    pen.toFillIn(DONE, Look.TO_FILL_IN.centred());
    pen.toFillIn(NOTES, Look.TO_FILL_IN);
    pen.rowName(ROW_NAME, rowName);
  }

  /** What stands open beside the movement; what is closed is not worth a word. */
  private static String standing(Run run) {
    return open(run.standing());
  }

  private static String open(List<Standing> standing) {
    return standing.stream()
        .filter(one -> one.open() > 0)
        .map(ShootingWorksheet::words)
        .collect(Collectors.joining(", "));
  }

  private static String words(Standing one) {
    long percent = Math.round(100 * one.open());
    return percent >= 100 ? one.opening() : one.opening() + " " + percent + " %";
  }

  private void cautions(SetUp setUp) {
    pen.row(row++, ROW_POINTS);
    Look look = Look.PENCIL.size(8).wrapped();
    pen.text(SET_UP, "!", look.inBold().centred());
    pen.joined(TAKE, NOTES, String.join(" ", setUp.cautions()), look);
  }

  private void totals() {
    Look look = Look.BODY.wrapped().inBold().edged(Edges.NONE.top(Line.HEAVY));
    pen.row(row, 20);
    pen.blanks(SET_UP, ROW_NAME, look);
    pen.joined(
        TAKE, NAMES, "everything, " + SheetWords.count(shooting.setUpCount(), "set-up"), look);
    pen.number(PICTURES, shooting.pictures(), look.number(Look.WHOLE));
    time(shooting.time(), look);
    shooting
        .time()
        .flatMap(WorkTime::ends)
        .ifPresent(ends -> pen.joined(STANDING, PANELS, "done on " + ends, look));
    row++;
    paragraph(
        SheetWords.count(shooting.moved(), "picture")
            + " of movements and "
            + SheetWords.count(shooting.plates(), "plate")
            + ". Taken for each reveal apart, the movements alone would be "
            + SheetWords.count(shooting.movedApart(), "picture")
            + ".");
    paragraph(
        shooting.fewest()
            ? "No order that never closes an opening has fewer set-ups."
            : "A model has very many movements: its order follows the story and may not be the shortest.");
    paragraph(
        shooting.time().isPresent()
            ? "Hours are the plan's own rates; days follow one another, without days of rest."
            : "Give the plan its rates (shoot: pictures-an-hour, minutes-a-set-up), and hours stand here.");
    shooting.setUps().stream()
        .flatMap(setUp -> setUp.runs().stream())
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
