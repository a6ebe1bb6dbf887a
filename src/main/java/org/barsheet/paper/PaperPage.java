package org.barsheet.paper;

import java.util.List;

/**
 * A page to print at true size.
 *
 * @param name unique among the pages made together: "bakers-lamp flap"
 * @param title of the drawing, for those who see none
 * @param width in millimeters
 * @param height in millimeters
 */
public record PaperPage(String name, String title, double width, double height, List<Ink> inks) {
  public PaperPage {
    inks = List.copyOf(inks);
  }
}
