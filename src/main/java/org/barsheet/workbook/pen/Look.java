package org.barsheet.workbook.pen;

import java.util.Optional;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/**
 * How a cell looks. Looks are values: two cells with equal looks share one style of the file.
 *
 * @param points size of its letters
 * @param bold whether they are bold
 * @param ink their color
 * @param fill color of the cell, where it is not paper
 * @param across where the text stands between left and right
 * @param upright where it stands between top and bottom
 * @param wraps whether long text goes on in further lines
 * @param edges lines around it
 * @param format how a number is written, in the spreadsheet's own notation
 * @param quoted whether the cell is marked as text, so that a later edit does not make a formula of
 *     it
 */
public record Look(
    double points,
    boolean bold,
    Ink ink,
    Optional<Ink> fill,
    HorizontalAlignment across,
    VerticalAlignment upright,
    boolean wraps,
    Edges edges,
    String format,
    boolean quoted) {

  private static final String GENERAL = "General";

  /** Nine points, ink on paper, at the left, in the middle of the row. */
  public static final Look BODY =
      new Look(
          9,
          false,
          Ink.INK,
          Optional.empty(),
          HorizontalAlignment.LEFT,
          VerticalAlignment.CENTER,
          false,
          Edges.NONE,
          GENERAL,
          false);

  /** The title of a sheet. */
  static final Look TITLE = BODY.size(16).inBold();

  /** Secondary text. */
  public static final Look PENCIL = BODY.in(Ink.PENCIL);

  /** How whole numbers are written: with the room of a space at their right. */
  public static final String WHOLE = "0_ ";

  /** Whole numbers with the room of a space at their left. */
  public static final String INSET_WHOLE = "_ 0";

  /** Percent to one decimal, but all of it as 100: 99.6 is not yet all. */
  public static final String PERCENT = "[=100]0_ ;0.0_ ";

  /** Numbers to two decimals. */
  public static final String HUNDREDTHS = "0.00_ ";

  /** Numbers to three decimals. */
  public static final String THOUSANDTHS = "0.000_ ";

  /** Numbers to three decimals at most. */
  public static final String UP_TO_THOUSANDTHS = "0.###_ ";

  /** The title of one of several tables on a sheet. */
  public static final Look SECTION = BODY.size(11).inBold().atBottom();

  /** Over a column. */
  static final Look HEADING = BODY.inBold().in(Ink.PAPER).on(Ink.QUAY).atBottom().wrapped();

  /** A cell people fill in. */
  public static final Look TO_FILL_IN = BODY.on(Ink.BAND).edged(Edges.box(Line.THIN)).wrapped();

  public Look size(double to) {
    return new Look(to, bold, ink, fill, across, upright, wraps, edges, format, quoted);
  }

  public Look inBold() {
    return new Look(points, true, ink, fill, across, upright, wraps, edges, format, quoted);
  }

  public Look in(Ink color) {
    return new Look(points, bold, color, fill, across, upright, wraps, edges, format, quoted);
  }

  public Look on(Ink color) {
    Optional<Ink> filled = color == Ink.PAPER ? Optional.empty() : Optional.of(color);
    return new Look(points, bold, ink, filled, across, upright, wraps, edges, format, quoted);
  }

  public Look left() {
    return across(HorizontalAlignment.LEFT);
  }

  public Look right() {
    return across(HorizontalAlignment.RIGHT);
  }

  public Look centered() {
    return across(HorizontalAlignment.CENTER);
  }

  private Look across(HorizontalAlignment to) {
    return new Look(points, bold, ink, fill, to, upright, wraps, edges, format, quoted);
  }

  public Look atTop() {
    return upright(VerticalAlignment.TOP);
  }

  Look atBottom() {
    return upright(VerticalAlignment.BOTTOM);
  }

  private Look upright(VerticalAlignment to) {
    return new Look(points, bold, ink, fill, across, to, wraps, edges, format, quoted);
  }

  public Look wrapped() {
    return new Look(points, bold, ink, fill, across, upright, true, edges, format, quoted);
  }

  public Look unwrapped() {
    return new Look(points, bold, ink, fill, across, upright, false, edges, format, quoted);
  }

  public Look edged(Edges with) {
    return new Look(points, bold, ink, fill, across, upright, wraps, with, format, quoted);
  }

  /** A number at the right, in one of the formats above. */
  public Look number(String as) {
    return right().format(as);
  }

  private Look format(String as) {
    return new Look(points, bold, ink, fill, across, upright, wraps, edges, as, quoted);
  }

  Look asText() {
    return new Look(points, bold, ink, fill, across, upright, wraps, edges, format, true);
  }
}
