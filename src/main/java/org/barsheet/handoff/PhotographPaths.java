package org.barsheet.handoff;

import org.barsheet.exposure.FileNames;
import org.barsheet.exposure.Photograph;
import org.barsheet.timing.Shot;

/** Where the frames are kept, seen from the folder of the sheets. */
final class PhotographPaths {

  private static final String FOLDER = "photographs/";

  private PhotographPaths() {}

  /** {@code photographs/small-lamp 014.png}. */
  static String of(Photograph photograph) {
    return FOLDER + FileNames.ofPhotograph(photograph);
  }

  /** {@code photographs/small-lamp 014}: a file has an extension of its own. */
  static String bare(String name) {
    return FOLDER + FileNames.safe(name);
  }

  /** The plate of a shot: {@code photographs/panel 7 plate.png}. */
  static String ofPlate(Shot shot) {
    return FOLDER + FileNames.safe(plate(shot)) + ".png";
  }

  /**
   * The permanent name of a shot's plate, what the camera sees of the artwork while nothing moves:
   * {@code panel 7 plate}.
   */
  static String plate(Shot shot) {
    return "panel " + shot.panel().name() + " plate";
  }
}
