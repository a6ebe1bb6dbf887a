package org.barsheet.workbook;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.barsheet.artwork.ArtworkMap;
import org.barsheet.artwork.ArtworkMeasures;
import org.barsheet.artwork.ArtworkMeasures.OpeningMeasure;
import org.barsheet.artwork.ColorWords;
import org.barsheet.artwork.KeyColor;
import org.barsheet.artwork.ModelScale;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Rect;
import org.barsheet.workbook.pen.Address;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.SheetPlaces;
import org.barsheet.workbook.pen.SheetWords;

/**
 * How large everything is, on the artwork, on its models and in the photograph; and a map to scale.
 */
final class ArtworkWorksheet {

  static final String NAME = "Artwork";

  private static final int OPENING = 0;
  private static final int MODEL = 1;
  private static final int SQUARES = 2;
  private static final int CENTIMETERS = 6;
  private static final int INCHES = 8;
  private static final int TIMES = 10;
  private static final int MODEL_CENTIMETERS = 11;
  private static final int MODEL_INCHES = 13;
  private static final int PIXELS = 15;
  private static final int CLOSEST_PIXELS = 17;
  private static final int CLOSEST = 19;
  private static final int ROW_NAME = 20;

  private static final List<Column> COLUMNS =
      List.of(
          Column.words("opening", 84, 2),
          Column.words("model", 60, 1),
          Column.numbers("squares\nleft", 37),
          Column.numbers("\ntop", 31),
          Column.numbers("\nwide", 31),
          Column.numbers("\nhigh", 31),
          Column.numbers("cm\nwide", 33),
          Column.numbers("\nhigh", 33),
          Column.numbers("inches\nwide", 36),
          Column.numbers("\nhigh", 33),
          Column.numbers("model,\ntimes", 36),
          Column.numbers("there cm\nwide", 42),
          Column.numbers("\nhigh", 33),
          Column.numbers("inches\nwide", 36),
          Column.numbers("\nhigh", 33),
          Column.numbers("pixels\nwide", 36),
          Column.numbers("\nhigh", 33),
          Column.numbers("closest\nwide", 38),
          Column.numbers("\nhigh", 33),
          Column.words("in\npanel", 32),
          Column.rowName());

  private static final double ROW_POINTS = 14;
  private static final double MAP_ROW_POINTS = 12;
  private static final double MILLIMETERS_PER_POINT = 25.4 / 72;
  private static final double MILLIMETERS_PER_INCH = 25.4;
  private static final double MILLIMETERS_PER_CENTIMETER = 10;

  /** Room on the map's page for its own title and the signs' meanings. */
  private static final double AROUND_MAP_POINTS = 84;

  private static final Look WORDS = Look.BODY.wrapped().edged(Edges.NONE.bottom(Line.HAIR));
  private static final Look NUMBERS = WORDS.number(Look.HUNDREDTHS);

  private final Book book;
  private final Plan plan;
  private final ArtworkMeasures measures;
  private final SheetFrame frame;
  private final SheetPen pen;
  private int row = SheetFrame.FIRST_ROW;

  private ArtworkWorksheet(Book book) {
    this.book = book;
    this.plan = book.film().plan();
    this.measures = ArtworkMeasures.of(plan);
    this.frame = book.frame(NAME, book.landscape(), COLUMNS, fact(plan.workshop().artwork()));
    this.pen = frame.pen();
  }

  private static String fact(Artwork artwork) {
    return SheetWords.plain(artwork.squaresWide())
        + " by "
        + SheetWords.plain(artwork.squaresHigh())
        + " squares of "
        + SheetWords.plain(artwork.squareMillimeters())
        + " mm";
  }

  static void write(Book book) {
    new ArtworkWorksheet(book).write();
  }

  private void write() {
    frame.heading(26);
    measures.openings().forEach(this::opening);
    int last = Math.max(SheetFrame.FIRST_ROW, row - 1);
    book.name(
        "Artwork_openings", new Address(NAME, SheetFrame.HEADING_ROW, OPENING), last, ROW_NAME);
    models();
    backings();
    facts();
    map();
    frame.finish(
        "pixels are the film's: first with the whole artwork in frame, then in the closest panel");
  }

  private void opening(OpeningMeasure one) {
    Opening opening = one.opening();
    Rect rect = opening.rect();
    pen.row(row++, ROW_POINTS);
    pen.text(OPENING, opening.name(), WORDS.inBold());
    pen.text(MODEL, opening.model(), WORDS);
    pair(SQUARES, rect.left(), rect.top(), NUMBERS);
    pair(SQUARES + 2, rect.width(), rect.height(), NUMBERS);
    ModelScale artwork =
        new ModelScale(one.scale().model(), plan.workshop().artwork().squareMillimeters());
    lengths(CENTIMETERS, INCHES, rect, artwork);
    pen.number(TIMES, one.scale().enlarged(), NUMBERS.inBold());
    lengths(MODEL_CENTIMETERS, MODEL_INCHES, rect, one.scale());
    pixels(PIXELS, rect, measures.pixelsPerSquare());
    if (one.closest().isPresent()) {
      pixels(CLOSEST_PIXELS, rect, one.closestPixelsPerSquare());
      pen.label(CLOSEST, one.closest().get().name(), WORDS.in(Ink.QUAY).left());
      book.index()
          .shotOf(one.closest().get().name())
          .ifPresent(shot -> pen.link(CLOSEST, SheetPlaces.ofShot(shot)));
    } else {
      pen.blanks(CLOSEST_PIXELS, ROW_NAME, WORDS);
    }
    pen.rowName(ROW_NAME, opening.name());
  }

  private void pair(int column, double one, double other, Look look) {
    pen.number(column, one, look.edged(look.edges().left(Line.HAIR)));
    pen.number(column + 1, other, look);
  }

  private void lengths(int centimeters, int inches, Rect rect, ModelScale scale) {
    double width = scale.millimeters(rect.width());
    double height = scale.millimeters(rect.height());
    pair(
        centimeters,
        width / MILLIMETERS_PER_CENTIMETER,
        height / MILLIMETERS_PER_CENTIMETER,
        NUMBERS);
    pair(inches, width / MILLIMETERS_PER_INCH, height / MILLIMETERS_PER_INCH, NUMBERS);
  }

  private void pixels(int column, Rect rect, double perSquare) {
    pair(
        column,
        SheetWords.rounded(rect.width() * perSquare, 0),
        SheetWords.rounded(rect.height() * perSquare, 0),
        WORDS.number(Look.WHOLE));
  }

  private void section(String title) {
    pen.row(row++, 26);
    Look look = Look.SECTION.edged(Edges.NONE.bottom(Line.HEAVY));
    pen.blanks(OPENING, ROW_NAME, look);
    pen.text(OPENING, title, look);
  }

  private void models() {
    section("Models");
    for (Artwork.Model model : plan.workshop().artwork().models()) {
      double square = ModelScale.of(model, plan.workshop().artwork()).squareMillimeters();
      pen.row(row++, ROW_POINTS);
      pen.text(OPENING, model.name(), WORDS.inBold());
      pen.joined(
          MODEL,
          ROW_NAME - 1,
          (model.enlarged() == 1
                  ? "the artwork's own size"
                  : SheetWords.plain(model.enlarged()) + " times as large")
              + ": one square is "
              + SheetWords.plain(SheetWords.hundredths(square / MILLIMETERS_PER_CENTIMETER))
              + " cm, "
              + SheetWords.plain(SheetWords.hundredths(square / MILLIMETERS_PER_INCH))
              + " in"
              + named("; backing ", model.backing())
              + named("; light ", model.light())
              + named("; ", openingsOf(model)),
          WORDS);
    }
  }

  private static String named(String before, String name) {
    return name.isEmpty() ? "" : before + name;
  }

  private String openingsOf(Artwork.Model model) {
    return plan.workshop().openings().stream()
        .filter(opening -> opening.model().equals(model.name()))
        .map(Opening::name)
        .collect(Collectors.joining(", "));
  }

  private void backings() {
    List<KeyColor> candidates = KeyColor.candidates(plan.workshop().artwork().palette());
    if (candidates.isEmpty()) {
      return;
    }
    section("Backing to key out, the best first");
    for (KeyColor candidate : candidates) {
      pen.row(row++, ROW_POINTS);
      pen.text(OPENING, candidate.word(), WORDS.inBold());
      pen.joined(
          MODEL,
          ROW_NAME - 1,
          SheetWords.plain(SheetWords.rounded(candidate.distance(), 1))
              + " steps from the palette's nearest color, "
              + ColorWords.named(candidate.nearest())
              + (candidate.isTooNear() ? ": too close" : ""),
          WORDS);
    }
    paragraph(
        "More steps (8-bit Cb and Cr, ITU-R BT.709) key out more easily. Light, paper and camera"
            + " change colors, so try a sheet under the camera first.");
  }

  private void facts() {
    section("The photograph");
    paragraph(
        "With the whole artwork in frame, one square is "
            + SheetWords.plain(SheetWords.hundredths(measures.pixelsPerSquare()))
            + " pixels.");
    OptionalDouble narrowest = measures.narrowestField();
    if (narrowest.isPresent()) {
      paragraph(
          "The camera has "
              + SheetWords.plain(SheetWords.thousandths(measures.headroom().orElseThrow()))
              + " pixels for each of the film's: a photograph of the whole artwork can be cropped to "
              + SheetWords.plain(SheetWords.hundredths(narrowest.getAsDouble()))
              + " squares wide before it is enlarged.");
    } else {
      paragraph("Add a camera to the plan to see the narrowest field that isn't enlarged.");
    }
  }

  private void paragraph(String words) {
    pen.row(row++, ROW_POINTS);
    pen.joined(OPENING, ROW_NAME - 1, words, Look.BODY.wrapped());
  }

  private void map() {
    pen.breakPage(SheetFrame.TITLE_POINTS);
    double height = book.landscape().height() - SheetFrame.TITLE_POINTS - AROUND_MAP_POINTS;
    ArtworkMap map =
        ArtworkMap.within(
            plan.workshop().artwork(),
            plan.workshop().openings(),
            book.landscape().width() * MILLIMETERS_PER_POINT,
            height * MILLIMETERS_PER_POINT);
    section(
        "Map, 1 : "
            + SheetWords.plain(map.denominator())
            + " on paper; the SVG file is true to scale");
    int first = row;
    int rows = (int) Math.ceil(map.height() / MILLIMETERS_PER_POINT / MAP_ROW_POINTS);
    for (int i = 0; i < rows; i++) {
      pen.row(row++, MAP_ROW_POINTS);
    }
    MapShapes.draw(
        book.drawing(NAME),
        pen.area(
            first,
            MAP_ROW_POINTS,
            map.width() / MILLIMETERS_PER_POINT,
            map.height() / MILLIMETERS_PER_POINT),
        map.width(),
        map.height(),
        map.marks());
    paragraph(String.join("; ", map.legend()));
  }
}
