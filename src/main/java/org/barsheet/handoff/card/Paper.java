package org.barsheet.handoff.card;

import org.barsheet.plan.Film;

/**
 * A sheet of paper, upright. A4 is 210 by 297 mm (ISO 216), Letter 8½ by 11 inches (ANSI Y14.1).
 *
 * @param name as style sheets call it
 * @param width width in millimeters
 * @param height height in millimeters
 */
record Paper(String name, double width, double height) {

  static Paper of(Film.Paper paper) {
    return paper == Film.Paper.A4 ? new Paper("A4", 210, 297) : new Paper("letter", 215.9, 279.4);
  }
}
