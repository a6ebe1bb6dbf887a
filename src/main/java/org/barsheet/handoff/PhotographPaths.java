package org.barsheet.handoff;

import org.barsheet.exposure.FileNames;

/** Where photographs are kept, seen from the folder of the sheets. */
final class PhotographPaths {

  private static final String FOLDER = "photographs/";

  private PhotographPaths() {}

  /** {@code photographs/small-lamp 014.png}, from a photograph's permanent name. */
  static String of(String photograph) {
    return bare(photograph) + ".png";
  }

  /** {@code photographs/small-lamp 014}: a file has an extension of its own. */
  static String bare(String photograph) {
    return FOLDER + FileNames.ofPhotograph(photograph);
  }
}
