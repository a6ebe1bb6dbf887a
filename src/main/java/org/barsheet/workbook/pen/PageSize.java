package org.barsheet.workbook.pen;

import org.apache.poi.ss.usermodel.PrintSetup;
import org.barsheet.plan.Film;

/**
 * A sheet of paper with margins of 12 mm.
 *
 * @param paper what it is
 * @param landscape whether it lies on its side
 */
public record PageSize(Film.Paper paper, boolean landscape) {

  private static final double POINTS_PER_MILLIMETER = 72 / 25.4;
  static final double MARGIN_MILLIMETERS = 12;

  /** The lower margin holds the footer. */
  static final double LOWER_MARGIN_MILLIMETERS = 15;

  static final double FOOTER_MILLIMETERS = 8;

  /** What programs lose to rounding of widths and heights. */
  private static final double SLACK_POINTS = 6;

  /** Width in points between the margins. */
  public double width() {
    double paperWidth = landscape ? paper.height() : paper.width();
    return (paperWidth - 2 * MARGIN_MILLIMETERS) * POINTS_PER_MILLIMETER - SLACK_POINTS;
  }

  /** Height in points between the margins. */
  public double height() {
    double paperHeight = landscape ? paper.width() : paper.height();
    double margins = MARGIN_MILLIMETERS + LOWER_MARGIN_MILLIMETERS;
    return (paperHeight - margins) * POINTS_PER_MILLIMETER - SLACK_POINTS;
  }

  /** The paper as the file format numbers it. */
  short code() {
    return paper == Film.Paper.A4 ? PrintSetup.A4_PAPERSIZE : PrintSetup.LETTER_PAPERSIZE;
  }
}
